package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Tapping with a cutting or a forming tap, in any of the ways a program can say it. */
final class Tapping extends Op {
	/** A canned cycle; the cycle after a rigid-tap code; a synchronised move; feed in, reverse, feed out. */
	enum Form { CYCLE, RIGID, SYNCHRONISED, IN_AND_OUT }

	/** Where S stands besides the start of the operation. */
	enum Says { START, CYCLE, VARIABLE }

	final Feature feature;
	Form form = Form.CYCLE;
	Says says = Says.START;
	/** Feed per revolution for this tool, with the program otherwise per minute. */
	boolean perRev;
	double plane;
	double tip;
	double code = 84;
	double advance;
	double rigidSpeed;
	boolean relative;
	boolean modeBefore = true;
	boolean modeAfter = true;
	boolean overridesLocked;
	/** Rigid tapping is ended by a code of its own on machines that need one. */
	boolean rigidEnded = true;
	double outFactor = 1;
	List<Place> places;
	/** The F of the other feed mode, where a fault put it there. */
	boolean wrongValue;

	Tapping(int id, Tool tool, double speed, Feature feature) {
		super(id, tool, speed);
		this.feature = feature;
		this.advance = feature.size.pitch();
		this.rigidSpeed = speed;
		this.tip = feature.tip;
		this.places = feature.pattern.places();
		features.add(feature);
	}

	@Override
	Place start() {
		return places.get(0);
	}

	boolean moved() {
		return places != feature.pattern.places();
	}

	@Override
	void body(Scene scene) {
		boolean first = true;
		for (int offset : feature.offsets) {
			if (!first) {
				scene.add(Word.g(0), Word.g(offset), scene.pen.z(feature.surface + clearance(scene)));
				scene.add(Word.g(0), scene.pen.x(start().x()), scene.pen.y(start().y()));
			}
			switch (form) {
				case CYCLE, RIGID -> cycle(scene, first);
				case SYNCHRONISED -> synchronised(scene);
				case IN_AND_OUT -> inAndOut(scene);
			}
			first = false;
		}
	}

	/** mm/min, or mm/rev where that is the mode. */
	private double feed() {
		return advance * speed;
	}

	private boolean revs(Scene scene) {
		return wrongValue != (perRev || scene.job.perRev);
	}

	private void cycle(Scene scene, boolean first) {
		boolean revs = revs(scene);
		Word f = scene.threadFeed(revs ? advance : feed(), revs);
		boolean macro = feature.way == Feature.Way.MACRO && !moved() && !scene.job.rs274;
		if (says == Says.VARIABLE && first && !macro) {
			scene.line("#1=" + Figures.trim(speed, 0)).say(scene.dice.pick("RPM", "SPEED", "S TAP"));
			scene.add(Word.said('S', "#1"), Word.m(spindle)).mark(mark("start"));
		}
		if (says == Says.VARIABLE && !revs && !macro) {
			double value = scene.job.inch ? advance / 25.4 : advance;
			int decimals = Figures.decimals(value, 1, 5, 0.0004);
			f = Word.said('F', "[#1*" + Figures.trim(value, decimals) + "]");
		}
		if (perRev && modeBefore) {
			scene.add(Word.g(95)).mark(mark("mode"));
		}
		Block rigid = new Block(Word.m(29), Word.whole('S', rigidSpeed)).mark(mark("rigid"));
		List<Word> extras = new ArrayList<>();
		if (says == Says.CYCLE) {
			extras.add(Word.whole('S', speed));
		}
		extras.add(f);
		if (form == Form.RIGID && !macro) {
			scene.tape.add(rigid);
		}
		Strokes strokes = new Strokes(scene, this, feature, code, feature.surface - tip, feature.surface + plane,
			scene.pen.inch ? scene.pen.z() * 25.4 : scene.pen.z(), extras);
		strokes.highReturn = scene.dice.chance(0.4);
		strokes.relative = relative;
		boolean ends = form == Form.RIGID && rigidEnded && !scene.job.machine.map(Machine::rigidEndsWithCycle).orElse(true);
		if (macro) {
			strokes.macro(form == Form.RIGID ? new Block[] {rigid} : new Block[0]);
		} else {
			switch (moved() ? Feature.Way.LIST : feature.way) {
				case REPEAT -> strokes.repeat();
				case LOOP -> strokes.loop();
				case SUB -> strokes.sub();
				default -> strokes.list(places);
			}
		}
		if (ends) {
			scene.add(Word.m(28)).mark(mark("rigid-off"));
		}
		if (perRev && modeAfter) {
			scene.add(Word.g(94)).mark(mark("minutes"));
		}
	}

	private void synchronised(Scene scene) {
		Pen pen = scene.pen;
		double value = scene.job.inch ? advance / 25.4 : advance;
		Word k = Word.of('K', value, Figures.decimals(value, 1, value < 0.01 ? 6 : 4, 0.0004));
		int i = 0;
		for (Place at : places) {
			scene.add(Word.g(0), pen.x(at.x()), pen.y(at.y())).mark(mark("hole-" + i));
			scene.add(Word.g(0), pen.z(feature.surface + plane)).mark(mark("plane"));
			Block move = scene.add(Word.g(33.1), Word.of('Z', pen.unit(feature.surface - tip), pen.decimals), k);
			move.mark(mark("cycle"), mark("stroke-" + i++), mark("holes"));
		}
		scene.add(Word.g(0), pen.z(feature.surface + clearance(scene)));
	}

	private void inAndOut(Scene scene) {
		Pen pen = scene.pen;
		boolean revs = revs(scene);
		if (perRev && modeBefore) {
			scene.add(Word.g(95)).mark(mark("mode"));
		}
		if (overridesLocked) {
			scene.add(Word.m(49)).mark(mark("lock"));
		}
		int back = spindle == 3 ? 4 : 3;
		int i = 0;
		for (Place at : places) {
			scene.add(Word.g(0), pen.x(at.x()), pen.y(at.y())).mark(mark("hole-" + i));
			scene.add(Word.g(0), pen.z(feature.surface + plane)).mark(mark("plane"));
			Block in = scene.add(Word.g(1), pen.z(feature.surface - tip), scene.threadFeed(revs ? advance : feed(), revs));
			in.mark(mark("cycle"), mark("stroke-" + i++), mark("holes"));
			scene.add(Word.m(5));
			scene.add(Word.m(back)).mark(mark("reverse"));
			Block out = scene.add(Word.g(1), pen.z(feature.surface + plane));
			if (outFactor != 1) {
				out.with(scene.threadFeed(outFactor * (revs ? advance : feed()), revs));
			}
			out.mark(mark("out"));
			scene.add(Word.m(5));
			scene.add(Word.m(spindle));
		}
		scene.add(Word.g(0), pen.z(feature.surface + clearance(scene)));
		if (overridesLocked) {
			scene.add(Word.m(48)).mark(mark("unlock"));
		}
		if (perRev && modeAfter) {
			scene.add(Word.g(94)).mark(mark("minutes"));
		}
	}
}
