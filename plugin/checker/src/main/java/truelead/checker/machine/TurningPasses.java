package truelead.checker.machine;

import java.util.List;

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
	 * A pass of turning from where the tool stands: across to the words' X, along to their Z, and back to where it began. A thread's lead is F, and R or I is what
	 * its radius at the beginning is greater than at its end. A block without a G code repeats the pass before it but for the words that it has.
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
		Point in = from.with(0, to.x() + (threads ? taper : 0));
		Point away = to.with(0, from.x());
		double resolution = motion.resolution(words);
		Modal modal = state.modal();
		out.step(new Step.Move(words.block(), modal, true, from, in, resolution));
		out.step(threads ? new Step.Synchronised(words.block(), modal, 0, in, to, motion.feedAsLead(words), false, resolution)
				: new Step.Move(words.block(), modal, false, in, to, resolution));
		out.step(new Step.Move(words.block(), modal, threads, to, away, resolution));
		out.step(new Step.Move(words.block(), modal, true, away, from, resolution));
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
