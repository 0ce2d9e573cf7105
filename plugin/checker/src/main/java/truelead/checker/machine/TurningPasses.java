package truelead.checker.machine;

import java.util.List;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Setting;

/** Makes the passes of turning and threading cycles of one block each, G90 and G92 of lathes. */
final class TurningPasses {

	/** What is remembered before the first pass. */
	static final Object NOTHING = List.of(Point.UNKNOWN, 0.0);

	private final MachineState state;
	private final Motion motion;
	private final Output out;
	private Point end = Point.UNKNOWN;
	/** What the radius at the beginning of a thread is greater than at its end, mm; 0 for a parallel thread. */
	private double taper;

	TurningPasses(MachineState state, Motion motion, Output out) {
		this.state = state;
		this.motion = motion;
		this.out = out;
	}

	/** What later blocks depend on. */
	Object memory() {
		return List.of(end, taper);
	}

	/**
	 * A pass of turning from where the tool stands: across to the words' X, along to their Z, and back to where it began. A thread's lead
	 * is F, and R or I is what its radius at the beginning is greater than at its end. A block without a G code repeats the pass before it
	 * but for the words that it has.
	 */
	void pass(Words words, boolean threads) {
		Point from = state.place.here();
		Point said = motion.target(words);
		for (int axis = 0; axis < 3; axis += 2) {
			boolean repeats = words.gCount() == 0 && !words.has(Motion.LETTERS[axis]) && !words.has(Motion.INCREMENT_LETTERS[axis]);
			said = repeats ? said.with(axis, end.along(axis)) : said;
		}
		end = said;
		Point to = state.place.frame().apply(said);
		taper(words);
		Point in = from.with(0, to.x() + taper);
		Point away = to.with(0, from.x());
		double resolution = motion.resolution(words);
		Modal modal = state.modal();
		out.step(new Step.Move(words.block(), modal, true, from, in, resolution));
		out.step(threads ? new Step.Synchronised(words.block(), modal, 0, in, to, motion.feedAsLead(words), false, resolution)
				.with(words.computed()) : new Step.Move(words.block(), modal, false, in, to, resolution));
		out.step(new Step.Move(words.block(), modal, threads, to, away, resolution));
		out.step(new Step.Move(words.block(), modal, true, away, from, resolution));
	}

	/**
	 * Whether a block says a threading cycle as RS-274 lathes have it (from memory): pitch P along Z, with the crests I beside where the
	 * tool stands and the depth K beyond them.
	 */
	static boolean beside(Words words) {
		return words.has('P') && words.has('I') && words.has('K') && words.has('Z') && !words.has('X') && !words.has('U');
	}

	/** The last pass of such a cycle. */
	void cycle(Words words) {
		Point from = state.place.here();
		double side = state.mm(words, 'I');
		double depth = Math.abs(state.mm(words, 'K'));
		double wall = (side + Math.signum(side) * depth) * (state.profile.yes(ProfileKey.DIAMETER) ? 0.5 : 1);
		motion.checkKnown(words, 'I');
		motion.checkKnown(words, 'K');
		Point to = state.place.frame().apply(motion.target(words)).with(0, from.x() + wall);
		Setting lead = words.setting('P');
		Modal modal = state.modal();
		double resolution = motion.resolution(words);
		Point in = from.with(0, to.x());
		out.step(new Step.Move(words.block(), modal, true, from, in, resolution));
		out.step(new Step.Synchronised(words.block(), modal, 0, in, to, lead, false, resolution).with(words.computed()));
		out.step(new Step.Move(words.block(), modal, true, to, to.with(0, from.x()), resolution));
		out.step(new Step.Move(words.block(), modal, true, to.with(0, from.x()), from, resolution));
	}

	private void taper(Words words) {
		char letter = words.has('R') ? 'R' : 'I';
		if (words.has(letter)) {
			taper = state.mm(words, letter);
		} else if (words.gCount() > 0) {
			taper = 0;
		}
	}
}
