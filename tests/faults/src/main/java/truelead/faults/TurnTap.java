package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Tapping on a lathe: a cycle with or without a rigid-tap code, G32 in and out, feed in and out, and live taps on face and outside. */
final class TurnTap extends TurnOp {
	enum Form { CYCLE, RIGID, SYNCHRONISED, IN_AND_OUT }

	final Turned turned;
	Form form = Form.CYCLE;
	double advance;
	double tip;
	double plane;
	/** The cycle that a fault puts here; 0 for the right one. */
	double wrongCode;
	/** F as it would be under the other feed mode. */
	boolean wrongValue;
	boolean overridesLocked = true;
	boolean reversed = true;
	double outFactor = 1;
	List<Double> angles;

	TurnTap(int id, Tool tool, double speed, Turned turned) {
		super(id, tool, speed);
		this.turned = turned;
		this.angles = turned.angles;
		this.advance = turned.size.pitch();
		this.tip = turned.tip;
	}

	boolean cycle() {
		return form == Form.CYCLE || form == Form.RIGID;
	}

	@Override
	double across() {
		return switch (turned.at) {
			case CENTRE -> 0;
			case FACE -> turned.across;
			case SIDE -> turned.across + 2 * plane;
		};
	}

	@Override
	double along() {
		return turned.at == Turned.At.SIDE ? turned.along : plane;
	}

	@Override
	double angle() {
		return turned.live() ? angles.get(0) : -1;
	}

	/** F of G32 is the lead whatever the feed mode. */
	private Word threadFeed(Scene scene, double factor) {
		boolean revs = form == Form.SYNCHRONISED || revs(scene) != wrongValue;
		return scene.threadFeed(factor * (revs ? advance : advance * speed), revs);
	}

	@Override
	void body(Scene scene) {
		switch (form) {
			case CYCLE, RIGID -> cycle(scene);
			case SYNCHRONISED -> synchronised(scene);
			case IN_AND_OUT -> inAndOut(scene);
		}
	}

	private void cycle(Scene scene) {
		Pen pen = scene.pen;
		if (form == Form.RIGID) {
			scene.add(Word.m(29), Word.whole('S', speed)).mark(mark("rigid"));
		}
		List<Word> extras = new ArrayList<>(List.of(threadFeed(scene, 1)));
		if (turned.live()) {
			TurnHoles.write(scene, this, turned, wrongCode > 0 ? wrongCode : turned.at == Turned.At.SIDE ? 88 : 84, tip, angles, extras);
			return;
		}
		Block block = new Block(Word.g(wrongCode > 0 ? wrongCode : 84));
		if (lift > 0) {
			block.with(pen.length('R', -lift));
		}
		if (scene.dice.chance(0.2)) {
			block.with(pen.x(0));
		}
		block.with(Word.of('Z', pen.unit(-tip), pen.decimals));
		block.words.addAll(extras);
		scene.tape.add(block.mark(mark("cycle"), mark("hole-0")));
		if (!scene.job.hand.orElseThrow().endsByRapid()) {
			scene.add(Word.g(80)).mark(mark("cancel"));
		}
	}

	private void synchronised(Scene scene) {
		Pen pen = scene.pen;
		double code = scene.dice.chance(0.15) ? 33 : 32;
		scene.add(Word.g(code), pen.z(-tip), threadFeed(scene, 1)).mark(mark("cycle"), mark("hole-0"));
		if (scene.dice.chance(0.2)) {
			scene.add(Word.g(4), Word.of(scene.dice.pick('U', 'X'), 0.5, 1)).keep();
		}
		if (scene.dice.chance(0.4)) {
			scene.add(Word.m(5));
		}
		if (reversed) {
			scene.add(Word.m(7 - spindle)).mark(mark("reverse"));
		}
		Block out = scene.add(Word.g(code), pen.z(plane)).mark(mark("out"));
		if (scene.dice.chance(0.2)) {
			out.swap('Z', Word.of('W', Figures.round(pen.unit(plane) - pen.unit(-tip), pen.decimals), pen.decimals));
		}
		if (scene.dice.chance(0.6) || outFactor != 1) {
			out.with(threadFeed(scene, outFactor));
		}
		scene.add(Word.m(5)).mark(mark("off"));
	}

	private void inAndOut(Scene scene) {
		Pen pen = scene.pen;
		if (overridesLocked) {
			scene.add(Word.m(49)).mark(mark("lock"));
		}
		scene.add(Word.g(1), pen.z(-tip), threadFeed(scene, 1)).mark(mark("cycle"), mark("hole-0"));
		scene.add(Word.m(5));
		scene.add(Word.m(spindle == 3 ? 4 : 3)).mark(mark("reverse"));
		Block out = scene.add(Word.g(1), pen.z(plane)).mark(mark("out"));
		if (outFactor != 1) {
			out.with(threadFeed(scene, outFactor));
		}
		scene.add(Word.m(5)).mark(mark("off"));
		if (overridesLocked) {
			scene.add(Word.m(48));
		}
	}
}
