package truelead.faults;

import java.util.HashMap;
import java.util.Map;

/** What an operation writes with: the job, the tape, the pen and the choices of wording, and the numbers of the subprograms. */
final class Scene {
	final Job job;
	final Tape tape = new Tape();
	final Pen pen;
	final Dice dice;
	final Map<String, Integer> subs = new HashMap<>();
	double speed = -1;
	int label = 100;

	Scene(Job job, Dice dice) {
		this.job = job;
		this.pen = new Pen(job.inch);
		this.dice = dice;
	}

	Block add(Word... words) {
		return tape.add(new Block(words));
	}

	Block line(String text) {
		return tape.add(Block.line(text));
	}

	void say(String comment) {
		tape.add(Block.comment(comment));
	}

	/** A feed in mm/min or mm/rev in the program's unit, with the fewest decimals that hold it within 0.4 percent. */
	Word feed(double mm, boolean perRev) {
		double value = job.inch ? mm / 25.4 : mm;
		int most = perRev ? (job.inch ? 4 : 3) : 3;
		return Word.of('F', value, Figures.decimals(value, perRev ? 2 : 0, most, 0.004));
	}

	/** A feed whose digits matter: more decimals, as one writes for a thread. */
	Word threadFeed(double mm, boolean perRev) {
		double value = job.inch ? mm / 25.4 : mm;
		int most = perRev ? value < 0.01 ? 6 : 4 : 3;
		return Word.of('F', value, Figures.decimals(value, 0, most, perRev ? 0.0004 : 0.002));
	}
}
