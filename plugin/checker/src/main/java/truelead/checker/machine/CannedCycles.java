package truelead.checker.machine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.chunk.PlaceRun;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Plane;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** The canned cycle in force: gathers its words, block by block, and makes a stroke at each place. */
final class CannedCycles {

	private static final String WORDS = "RQPFSIJKLXYZUVWHD";

	private final MachineState state;
	private final Place place;
	private final Motion motion;
	private final Output out;
	private final Meter meter;
	private final String repeatWords;
	private final TappingLead lead;
	private final CycleLevels levels;
	private final UnsureThread unsure;
	private Cycle cycle;
	/** What was in force before the block that said the cycle in force. */
	private Optional<Kept> before = Optional.empty();
	private boolean rigidByCycle;
	/** Whether the tapping cycle in force has not been at any place yet. */
	private boolean nowhere;

	CannedCycles(MachineState state, Motion motion, Output out, Meter meter) {
		this.state = state;
		this.place = state.place;
		this.motion = motion;
		this.out = out;
		this.meter = meter;
		this.repeatWords = state.profile.repeatWords();
		this.lead = new TappingLead(state);
		this.levels = new CycleLevels(state, motion);
		this.unsure = new UnsureThread(state, out);
	}

	/** Whether a cycle is in force. */
	boolean on() {
		return cycle != null;
	}

	/** All of a cycle that later blocks depend on; one that is not in force has no more than whether its end ends rigid tapping. */
	record Kept(Optional<Cycle> cycle, CycleLevels.Kept levels, TappingLead.Kept lead, boolean rigidByCycle, boolean nowhere) {

		/** Whether another one differs in no more than the blocks that say it. */
		boolean same(Kept other) {
			return cycle.get().said().equals(other.cycle.get().said()) && levels.equals(other.levels) && lead.said().isEmpty()
					&& lead.equals(other.lead) && rigidByCycle == other.rigidByCycle && nowhere == other.nowhere;
		}
	}

	Kept kept() {
		return on() ? new Kept(Optional.of(cycle), levels.kept(), lead.kept(), rigidByCycle, nowhere)
				: new Kept(Optional.empty(), CycleLevels.Kept.NONE, TappingLead.Kept.NONE, rigidByCycle, false);
	}

	/** Goes on with what was kept. */
	void resume(Kept kept) {
		cycle = kept.cycle().orElse(null);
		levels.resume(kept.levels());
		lead.resume(kept.lead());
		rigidByCycle = kept.rigidByCycle();
		nowhere = kept.nowhere();
	}

	/** All that later blocks depend on. */
	List<Object> memory() {
		return List.of(kept());
	}

	/** A block starts a cycle or changes to another one. */
	void start(Meaning started, int code, Words words, WordRef gWord) {
		int axis = state.cycleModal(code).plane().axis();
		checkPlaces();
		if (cycle == null) {
			levels.begin(axis);
		}
		before = cycle == null ? Optional.empty() : Optional.of(kept());
		Map<Character, Setting> kept = cycle == null ? Map.of() : cycle.words();
		Cycle.Kind kind = Cycle.Kind.of(started);
		lead.start(kind, code, words, cycle != null);
		BlockRef since = cycle != null && cycle.code() == code ? cycle.since() : words.block();
		cycle = new Cycle(kind, code, words.block(), since, gWord, kept);
		nowhere = kind.taps();
	}

	/** The cycle that a block has started, which is not in force any more. */
	Cycle give() {
		Cycle given = cycle;
		cycle = null;
		nowhere = false;
		return given;
	}

	/**
	 * A stroke of a cycle that was defined before, at the place of a block; R plane and bottom in programmed coordinates, mm, NaN where
	 * they are not said.
	 */
	void call(Cycle called, Optional<Setting> leadSaid, double r, double end, Words words) {
		cycle = called;
		lead.say(leadSaid);
		levels.define(r, end);
		stroke(words, true, 1);
		cycle = null;
		out.event(words.block(), Step.EventKind.CYCLE_CANCELLED, Optional.empty(), Setting.NONE);
	}

	/** The end of the cycle, by G80 or another motion; with it goes rigid tapping where the profile says so. */
	void cancel(BlockRef block, Optional<WordRef> word) {
		boolean rigidEnds = state.rigid.isPresent() && state.profile.yes(ProfileKey.RIGID_TAP_ENDS_WITH_CYCLE)
				&& (rigidByCycle || cycle == null);
		if (cycle != null) {
			checkPlaces();
			cycle = null;
			out.event(block, Step.EventKind.CYCLE_CANCELLED, word, Setting.NONE);
		}
		if (rigidEnds) {
			rigidByCycle = false;
			state.rigid = Optional.empty();
			state.rigidWord = Optional.empty();
			state.changed();
			out.event(block, Step.EventKind.RIGID_OFF, word, Setting.NONE);
		}
	}

	/** The words of a block under the cycle, and a stroke at every place that it says. */
	void block(Words words, boolean positioned) {
		levels.along(state.cycleModal(cycle.code()).plane().axis());
		gather(words);
		lead.read(cycle, words);
		if (!motion.axisWords(words) && !words.has('R')) {
			return;
		}
		int repeats = repeats(words);
		for (int repeat = 1; repeat <= repeats && (repeat == 1 || meter.next()); repeat++) {
			stroke(words, positioned, repeat);
		}
	}

	/**
	 * Whether blocks that say nothing but places make a hole each without a word more: the plane is XY and nothing is unknown that a thread
	 * depends on.
	 */
	boolean takesRows() {
		boolean sure = levels.hasBottom() && (!cycle.kind().taps() || lead.said().isEmpty() && !Double.isNaN(levels.bottom())
				&& state.unfollowed().isEmpty() && UnsureThread.sure(state.feed) && UnsureThread.sure(state.speed));
		return levels.axis() == 2 && state.cycleModal(cycle.code()).plane() == Plane.XY && sure;
	}

	/** Whether the block before one has said the cycle in force, and changed nothing by it but the place. */
	boolean saidAgainBefore(BlockRef block) {
		BlockRef said = cycle.start();
		boolean here = said.line() == block.line() - 1 && said.file() == block.file() && said.caller().equals(block.caller());
		return here && before.filter(kept -> kept.same(kept())).isPresent() && repeatWords.indexOf('P') < 0;
	}

	/** Strokes at the places of a row of blocks, of which the first is given. */
	void row(BlockRef block, PlaceRun run) {
		if (run.says()) {
			says(new SaidAgain(cycle.start(), block));
		}
		Modal modal = lead.modal(cycle);
		Point here = place.here();
		double mm = state.unit.mm();
		Point at = new Point(!Double.isNaN(run.x(0)) ? run.x(0) * mm : here.x(), !Double.isNaN(run.y(0)) ? run.y(0) * mm
				: here.y(), levels.r());
		rigidByCycle |= cycle.kind().taps();
		nowhere = false;
		Step.Row row = new Step.Row(new Step.Stroke(block, modal, cycle, at, levels.initial(), levels.r(), levels.bottom(), run.says(), 1,
				MachineState.resolution(run.decimals(0), state.unit)), run, run.count());
		out.step(row);
		if (run.says()) {
			says(new SaidAgain(block, row.block()));
		}
		place.moveTo(new Point(row.x(run.count() - 1), row.y(run.count() - 1), levels.behind(levels.initial(), levels.r())));
	}

	private void says(SaidAgain again) {
		Setting feed = again.setting(state.feed);
		if (feed != state.feed) {
			state.feed = feed;
			state.changed();
		}
		cycle = again.cycle(cycle);
	}

	private void gather(Words words) {
		Optional<Map<Character, Setting>> otherwise = levels.byDepthWord(words, cycle);
		if (otherwise.isPresent()) {
			say(otherwise.get());
			return;
		}
		Map<Character, Setting> changed = null;
		for (int i = 0; i < WORDS.length(); i++) {
			char letter = WORDS.charAt(i);
			boolean place = letter == 'X' || letter == 'Y' || letter == 'Z';
			if (words.has(letter) && (!place || letter == levels.letter())) {
				changed = changed == null ? new HashMap<>(cycle.words()) : changed;
				changed.put(letter, words.setting(letter));
			}
		}
		levels.read(words);
		if (changed != null) {
			say(changed);
		}
	}

	private void say(Map<Character, Setting> said) {
		cycle = new Cycle(cycle.kind(), cycle.code(), cycle.start(), cycle.since(), cycle.gWord(), said);
	}

	private int repeats(Words words) {
		for (int i = 0; i < repeatWords.length(); i++) {
			char letter = repeatWords.charAt(i);
			if (letter < 'A' || !words.has(letter) || letter == 'K' && lead.said().isPresent()
					|| letter == 'K' && (words.has('I') || words.has('J'))) {
				continue;
			}
			double count = words.value(letter);
			if (Double.isNaN(count)) {
				out.notFollowed(words.block(), words.why(letter).behind("how often the cycle is repeated is not known"),
						Optional.of(words.ref(letter)));
				return 1;
			}
			if (count == Math.rint(count) && count >= 0 && count < 1e5) {
				return (int) count;
			}
		}
		return 1;
	}

	/** Makes the holes of a pattern that a block of a mill's program says; false where it says none. */
	boolean pattern(Words words) {
		boolean pattern = HolePattern.is(words) && state.profile.is(ProfileKey.KIND, "milling") && levels.axis() == 2;
		List<Point> places = pattern ? HolePattern.places(words, motion.target(words), state.unit.mm()) : List.of();
		for (Point at : places) {
			stroke(words, at, false, 1);
		}
		return !places.isEmpty();
	}

	private void stroke(Words words, boolean positioned, int repeat) {
		motion.startSomewhere(words, state.cycleModal(cycle.code()).plane(), false);
		motion.turnRotary(words);
		stroke(words, motion.target(words), positioned, repeat);
	}

	private void stroke(Words words, Point to, boolean positioned, int repeat) {
		int axis = levels.axis();
		Modal modal = lead.modal(cycle);
		Point target = to.with(axis, levels.r());
		Point at = place.frame().apply(target);
		double end = place.frame().apply(target.with(axis, levels.bottom())).along(axis);
		double start = place.frame().apply(target.with(axis, levels.initial())).along(axis);
		double resolution = Motion.finer(motion.resolution(words), words.has('R') ? state.resolution(words, 'R') : 0);
		if (cycle.kind().taps()) {
			unsure.stroke(words, cycle, levels.hasBottom(), at, end, lead.said().orElse(state.feed));
			rigidByCycle = true;
			nowhere = false;
		} else {
			unsure.drilled(words, cycle, levels.hasBottom());
		}
		out.step(new Step.Stroke(words.block(), modal, cycle, at, start, at.along(axis), end, positioned, repeat, resolution));
		place.moveTo(at.with(axis, levels.behind(start, at.along(axis))));
	}

	private void checkPlaces() {
		if (cycle != null && nowhere) {
			unsure.nowhere(cycle);
			nowhere = false;
		}
	}
}
