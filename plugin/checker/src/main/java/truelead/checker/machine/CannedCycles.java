package truelead.checker.machine;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
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
	private static final char[] LETTERS = {'X', 'Y', 'Z'};
	private static final char[] INCREMENTS = {'U', 'V', 'W'};

	private final MachineState state;
	private final Place place;
	private final Motion motion;
	private final Output out;
	private final Meter meter;
	private final String repeatWords;
	private Cycle cycle;
	private Meaning meaning = Meaning.NONE;
	private double initial;
	private double rLevel;
	private double bottom;
	/** Axis that the levels lie along; a change of the plane makes them void. */
	private int levelAxis;
	private boolean hasR;
	private boolean hasBottom;
	/** Whether the bottom was said by I, see {@link #heightsByDepthWord}. */
	private boolean depthWord;
	private boolean rigidByCycle;
	/** Whether the tapping cycle in force has not been at any place yet. */
	private boolean nowhere;
	/** Whether F of the tapping cycle in force is its lead a turn, whatever the feed mode. */
	private boolean pitchFeed;
	/** K of a tapping cycle where it is the lead a turn and no count. */
	private Optional<Setting> lead = Optional.empty();

	CannedCycles(MachineState state, Motion motion, Output out, Meter meter) {
		this.state = state;
		this.place = state.place;
		this.motion = motion;
		this.out = out;
		this.meter = meter;
		this.repeatWords = state.profile.repeatWords();
	}

	/** Whether a cycle is in force. */
	boolean on() {
		return cycle != null;
	}

	/** All of a cycle that later blocks depend on; one that is not in force has no more than whether its end ends rigid tapping. */
	record Kept(Optional<Cycle> cycle, Meaning meaning, double initial, double rLevel, double bottom, int levelAxis, boolean hasR, boolean hasBottom,
			boolean depthWord, boolean pitchFeed, Optional<Setting> lead, boolean rigidByCycle, boolean nowhere) {
	}

	Kept kept() {
		return on() ? new Kept(Optional.of(cycle), meaning, initial, rLevel, bottom, levelAxis, hasR, hasBottom, depthWord, pitchFeed, lead, rigidByCycle, nowhere)
				: new Kept(Optional.empty(), Meaning.NONE, 0, 0, 0, 0, false, false, false, false, Optional.empty(), rigidByCycle, false);
	}

	/** Goes on with what was kept. */
	void resume(Kept kept) {
		cycle = kept.cycle().orElse(null);
		meaning = kept.meaning();
		initial = kept.initial();
		rLevel = kept.rLevel();
		bottom = kept.bottom();
		levelAxis = kept.levelAxis();
		hasR = kept.hasR();
		hasBottom = kept.hasBottom();
		depthWord = kept.depthWord();
		pitchFeed = kept.pitchFeed();
		lead = kept.lead();
		rigidByCycle = kept.rigidByCycle();
		nowhere = kept.nowhere();
	}

	/** All that later blocks depend on. */
	List<Object> memory() {
		return List.of(Optional.ofNullable(cycle), meaning, initial, rLevel, bottom, levelAxis, hasR, hasBottom, depthWord, rigidByCycle, lead, nowhere);
	}

	/** A block starts a cycle or changes to another one. */
	void start(Meaning started, int code, Words words, WordRef gWord) {
		int axis = state.cycleModal(code).plane().axis();
		checkPlaces();
		if (cycle == null) {
			initial = place.programmed().along(axis);
			levelAxis = axis;
			hasR = false;
			hasBottom = false;
			depthWord = false;
			lead = Optional.empty();
		}
		Map<Character, Setting> kept = cycle == null ? Map.of() : cycle.words();
		Cycle.Kind kind = Cycle.Kind.of(started);
		meaning = started;
		pitchFeed = kind.taps() && (words.synchronous() || state.profile.is(ProfileKey.TAPPING_FEED, "pitch"));
		lead = kind.taps() ? lead : Optional.empty();
		cycle = new Cycle(kind, code, words.block(), gWord, kept);
		nowhere = kind.taps();
	}

	/** The cycle that a block has started, which is not in force any more. */
	Cycle give() {
		Cycle given = cycle;
		cycle = null;
		nowhere = false;
		return given;
	}

	/** A stroke of a cycle that was defined before, at the place of a block; R plane and bottom in programmed coordinates, mm, NaN where they are not said. */
	void call(Cycle called, Optional<Setting> leadSaid, double r, double end, Words words) {
		cycle = called;
		lead = leadSaid;
		levelAxis = 2;
		initial = place.programmed().along(levelAxis);
		rLevel = Double.isNaN(r) ? initial : r;
		bottom = end;
		hasBottom = !Double.isNaN(end);
		stroke(words, levelAxis, true, 1);
		cycle = null;
		out.event(words.block(), Step.EventKind.CYCLE_CANCELLED, Optional.empty(), Setting.NONE);
	}

	/** The end of the cycle, by G80 or another motion; with it goes rigid tapping where the profile says so. */
	void cancel(BlockRef block, Optional<WordRef> word) {
		boolean rigidEnds = state.rigid.isPresent() && state.profile.yes(ProfileKey.RIGID_TAP_ENDS_WITH_CYCLE) && (rigidByCycle || cycle == null);
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
		Modal modal = state.cycleModal(cycle.code());
		int axis = modal.plane().axis();
		if (axis != levelAxis) {
			levelAxis = axis;
			initial = place.programmed().along(axis);
			hasR = false;
			hasBottom = false;
			depthWord = false;
		}
		gather(words, axis);
		readLead(words);
		if (!motion.axisWords(words) && !words.has('R')) {
			return;
		}
		int repeats = repeats(words);
		for (int repeat = 1; repeat <= repeats && (repeat == 1 || meter.next()); repeat++) {
			stroke(words, axis, positioned, repeat);
		}
	}

	/** A tapping cycle without F whose K is no whole number has its lead a turn there, as has one that calls its R plane ER (from memory). */
	private void readLead(Words words) {
		if (words.has('F')) {
			lead = Optional.empty();
		}
		boolean count = words.has('K') && words.value('K') == Math.rint(words.value('K')) && !(words.has('R') && words.ref('R').written().toUpperCase(Locale.ROOT).startsWith("E"));
		if (cycle.kind().taps() && words.has('K') && !words.has('F') && !words.has('I') && !words.has('J') && !count) {
			lead = Optional.of(words.setting('K'));
		}
	}

	/** Whether blocks that say nothing but places make a hole each without a word more: the plane is XY and nothing is unknown that a thread depends on. */
	boolean takesRows() {
		boolean sure = !cycle.kind().taps() || lead.isEmpty() && hasBottom && !Double.isNaN(bottom) && state.unfollowed().isEmpty() && sure(state.feed) && sure(state.speed);
		return levelAxis == 2 && state.cycleModal(cycle.code()).plane() == Plane.XY && sure;
	}

	private static boolean sure(Setting setting) {
		return !setting.isSet() || setting.known();
	}

	/** Strokes at the places of a row of blocks, of which the first is given. */
	void row(BlockRef block, PlaceRun run) {
		Modal modal = state.cycleModal(cycle.code());
		Point here = place.here();
		double mm = state.unit.mm();
		Point at = new Point(!Double.isNaN(run.x(0)) ? run.x(0) * mm : here.x(), !Double.isNaN(run.y(0)) ? run.y(0) * mm : here.y(), rLevel);
		rigidByCycle |= cycle.kind().taps();
		nowhere = false;
		Step.Row row = new Step.Row(new Step.Stroke(block, modal, cycle, at, initial, rLevel, bottom, false, 1,
				MachineState.resolution(run.decimals(0), state.unit)), run, run.count());
		out.step(row);
		place.moveTo(new Point(row.x(run.count() - 1), row.y(run.count() - 1), upAgain(initial, rLevel)));
	}

	private double upAgain(double start, double atR) {
		return state.returnToInitial && !(initial < rLevel) ? start : atR;
	}

	private void gather(Words words, int axis) {
		if (heightsByDepthWord(words, axis)) {
			return;
		}
		Map<Character, Setting> changed = null;
		for (int i = 0; i < WORDS.length(); i++) {
			char letter = WORDS.charAt(i);
			boolean place = letter == 'X' || letter == 'Y' || letter == 'Z';
			if (words.has(letter) && (!place || letter == LETTERS[axis])) {
				changed = changed == null ? new HashMap<>(cycle.words()) : changed;
				changed.put(letter, words.setting(letter));
			}
		}
		levels(words, axis);
		if (changed != null) {
			cycle = new Cycle(cycle.kind(), cycle.code(), cycle.start(), cycle.gWord(), changed);
		}
	}

	/**
	 * Some controls have the R plane in the axis word and the bottom in I, absolute, and R for other things or not at all (from memory): so are read an
	 * I below the axis word in a cycle of drilling or tapping that names no other plane; elsewhere I is the size of a first peck, above zero.
	 */
	private boolean heightsByDepthWord(Words words, int axis) {
		char letter = LETTERS[axis];
		if (state.absolute && cycle.kind() == Cycle.Kind.PECK_DRILL && words.has(letter) && words.has('I') && words.value('I') < 0 && wholeCount(words, 'J') && !words.has('R') && !words.has('Q')) {
			// so deep a peck, and so many (from memory)
			rLevel = state.mm(words, letter);
			bottom = rLevel + state.mm(words, 'I') * words.value('J');
			hasR = true;
			hasBottom = true;
			return true;
		}
		boolean other = words.has('R') && !rigidFlag(words, letter) || hasR && !depthWord || words.has('Q') || words.has('J');
		boolean drills = cycle.kind().taps() || cycle.kind() == Cycle.Kind.DRILL || cycle.kind() == Cycle.Kind.PECK_DRILL;
		if (!state.absolute || !drills || other || !words.has('I') || !words.has(letter) || !(words.value('I') < Math.min(0, words.value(letter)))) {
			return false;
		}
		Map<Character, Setting> changed = new HashMap<>(cycle.words());
		for (char plain : new char[] {'F', 'S', 'P', 'K', 'L'}) {
			if (words.has(plain)) {
				changed.put(plain, words.setting(plain));
			}
		}
		changed.put('R', words.setting(letter));
		changed.put(letter, words.setting('I'));
		rLevel = state.mm(words, letter);
		bottom = state.mm(words, 'I');
		hasR = true;
		hasBottom = true;
		depthWord = true;
		cycle = new Cycle(cycle.kind(), cycle.code(), cycle.start(), cycle.gWord(), changed);
		return true;
	}

	private static boolean wholeCount(Words words, char letter) {
		return words.has(letter) && words.value(letter) >= 1 && words.value(letter) == Math.rint(words.value(letter));
	}

	/** Whether R says how a tap is held, 0 or 1, since a plane that it could be would lie below the axis word. */
	private boolean rigidFlag(Words words, char axis) {
		double r = words.value('R');
		return cycle.kind().taps() && (r == 0 || r == 1 && words.value(axis) > r);
	}

	/** R and bottom in programmed coordinates, mm: both absolute, or R from the initial level and the bottom from R. */
	private void levels(Words words, int axis) {
		if (words.has('R')) {
			motion.checkKnown(words, 'R');
			double r = state.mm(words, 'R');
			boolean fromInitial = !state.absolute || state.profile.is(ProfileKey.CYCLE_R, "from-initial");
			rLevel = fromInitial ? initial + r : r;
			hasR = true;
		} else if (!hasR) {
			rLevel = initial;
		}
		char letter = LETTERS[axis];
		if (words.has(letter)) {
			motion.checkKnown(words, letter);
			double depth = state.mm(words, letter) * half(axis);
			bottom = words.incremental(letter, !state.absolute) ? rLevel + depth : depth;
			hasBottom = true;
		} else if (state.profile.yes(ProfileKey.INCREMENTAL_WORDS) && words.has(INCREMENTS[axis])) {
			bottom = rLevel + state.mm(words, INCREMENTS[axis]) * half(axis);
			hasBottom = true;
		} else if (!hasBottom) {
			bottom = Double.NaN;
		}
	}

	private double half(int axis) {
		return axis == 0 && state.profile.yes(ProfileKey.DIAMETER) ? 0.5 : 1;
	}

	private int repeats(Words words) {
		for (int i = 0; i < repeatWords.length(); i++) {
			char letter = repeatWords.charAt(i);
			if (letter < 'A' || !words.has(letter) || letter == 'K' && lead.isPresent() || letter == 'K' && (words.has('I') || words.has('J'))) {
				continue;
			}
			double count = words.value(letter);
			if (Double.isNaN(count)) {
				out.notFollowed(words.block(), words.why(letter).behind("how often the cycle is repeated is not known"), Optional.of(words.ref(letter)));
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
		boolean pattern = HolePattern.is(words) && state.profile.is(ProfileKey.KIND, "milling") && levelAxis == 2;
		List<Point> places = pattern ? HolePattern.places(words, motion.target(words), state.unit.mm()) : List.of();
		for (Point at : places) {
			stroke(words, 2, at, false, 1);
		}
		return !places.isEmpty();
	}

	private void stroke(Words words, int axis, boolean positioned, int repeat) {
		motion.startSomewhere(words, state.cycleModal(cycle.code()).plane(), false);
		motion.turnRotary(words);
		stroke(words, axis, motion.target(words), positioned, repeat);
	}

	private void stroke(Words words, int axis, Point to, boolean positioned, int repeat) {
		Modal modal = lead.isPresent() ? state.leadModal(lead, Optional.empty(), Optional.empty()) : pitchFeed ? state.pitchModal(cycle.code()) : state.cycleModal(cycle.code());
		Point target = to.with(axis, rLevel);
		Point at = place.frame().apply(target);
		double end = place.frame().apply(target.with(axis, bottom)).along(axis);
		double start = place.frame().apply(target.with(axis, initial)).along(axis);
		double resolution = Motion.finer(motion.resolution(words), words.has('R') ? state.resolution(words, 'R') : 0);
		if (cycle.kind().taps()) {
			checkTapping(words, at, end);
			rigidByCycle = true;
			nowhere = false;
		}
		out.step(new Step.Stroke(words.block(), modal, cycle, at, start, at.along(axis), end, positioned, repeat, resolution));
		place.moveTo(at.with(axis, upAgain(start, at.along(axis))));
	}

	/** A tapping cycle that ends without a place, as one with K0 whose places are lost, threads nothing, or at places that are not understood. */
	private void checkPlaces() {
		if (cycle != null && nowhere) {
			out.notFollowed(cycle.start(), "no place that is understood follows this tapping cycle before it ends: nothing is threaded by it", Optional.of(cycle.gWord()));
			nowhere = false;
		}
	}

	/** A thread that could not be evaluated is never passed over in silence. */
	private void checkTapping(Words words, Point at, double end) {
		if (!hasBottom) {
			out.notFollowed(words.block(), "the tapping cycle has no depth: no block since its G code says one", Optional.of(cycle.gWord()));
		} else if (Double.isNaN(end)) {
			out.notFollowed(words.block(), "the depth of the thread is not known", Optional.of(cycle.gWord()));
		} else if (Double.isNaN(at.distanceInPlane(at, state.cycleModal(cycle.code()).plane()))) {
			out.notFollowed(words.block(), "the place of the thread is not known", Optional.of(cycle.gWord()));
		}
		state.unfollowed().ifPresent(statement -> out.notFollowed(words.block(),
				"whether this thread is made, and how often, depends on " + statement + ", which is not followed", Optional.of(cycle.gWord())));
		unknown(words, lead.orElse(state.feed), "the feed of the thread is not known");
		unknown(words, state.speed, "the speed of the spindle is not known");
	}

	private void unknown(Words words, Setting setting, String what) {
		if (!sure(setting)) {
			out.notFollowed(words.block(), setting.why().behind(what), setting.word().or(() -> Optional.of(cycle.gWord())));
		}
	}
}
