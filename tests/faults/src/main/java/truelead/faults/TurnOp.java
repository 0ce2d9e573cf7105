package truelead.faults;

/** One operation of a lathe program: the turret turns, the spindle is set, the tool works and goes home. */
abstract class TurnOp extends Op {
	/** Feed a minute, as for live tools, where the program is otherwise a turn; and the word that says so, before and behind it. */
	boolean otherMode;
	boolean modeBefore = true;
	boolean modeAfter = true;
	/** Surface speed in m/min under G96; 0 for a number of turns. */
	int surfaceSpeed;
	/** How far a cycle starts above the level that its R goes to, mm; 0 where it has no R. */
	double lift;
	/** The main spindle is stopped before live tools work. */
	boolean stopsFirst;

	TurnOp(int id, Tool tool, double speed) {
		super(id, tool, speed);
	}

	/** Diameter at which the tool starts, mm. */
	abstract double across();

	/** Height at which the tool starts, mm. */
	abstract double along();

	/** Angle of the first hole; negative for tools that do not live. */
	double angle() {
		return -1;
	}

	/** Whether feeds of this operation are a turn. */
	boolean revs(Scene scene) {
		return scene.job.perRev != otherMode;
	}

	Word feed(Scene scene, double perTurn) {
		boolean revs = revs(scene);
		return scene.feed(revs ? perTurn : perTurn * speed, revs);
	}

	@Override
	Place start() {
		return new Place(across(), 0);
	}

	@Override
	final void write(Scene scene) {
		Hand hand = scene.job.hand.orElseThrow();
		Job.Talk talk = scene.job.talk;
		if (!title().isEmpty() && (talk == Job.Talk.BEFORE || talk == Job.Talk.BOTH)) {
			scene.tape.add(Block.comment(title()).mark(mark("title")));
		}
		Block change = new Block();
		if (hand.sequence()) {
			change.with(Word.whole('N', 10 * (scene.job.ops.indexOf(this) + 1)));
		}
		change.with(hand.word(tool.number, hand.turret() != Hand.Turret.LATE)).keep().mark(mark("change"));
		if (talk == Job.Talk.BEHIND) {
			change.say(title());
		}
		scene.tape.add(change);
		for (String note : notes) {
			scene.tape.add(Block.comment(note).mark(mark("note")));
		}
		spin(scene, hand);
		approach(scene, hand);
		body(scene);
		home(scene, hand);
		if (stop) {
			scene.add(Word.m(1)).optional = true;
		}
	}

	private void spin(Scene scene, Hand hand) {
		double live = angle();
		if (live >= 0) {
			if (stopsFirst) {
				scene.add(Word.m(5));
			}
			scene.add(Word.m(45)).say(scene.dice.pick("C AXIS ON", ""));
			if (scene.dice.chance(0.5)) {
				scene.add(Word.g(28), Word.of('H', 0, 3));
			}
		}
		if (surfaceSpeed > 0 && !hand.limitAtHead()) {
			scene.add(Word.g(50), Word.whole('S', scene.dice.pick(1800, 2500, 3000)));
		}
		Block spin = new Block();
		boolean revs = revs(scene);
		if (otherMode ? modeBefore : hand.modeAtEachTool()) {
			spin.with(Word.g(revs ? 99 : 98)).mark(mark("mode"));
		}
		spin.with(Word.g(surfaceSpeed > 0 ? 96 : 97)).with(Word.whole('S', surfaceSpeed > 0 ? surfaceSpeed : speed)).with(Word.m(spindle))
				.mark(mark("start"));
		scene.tape.add(spin);
	}

	private void approach(Scene scene, Hand hand) {
		Pen pen = scene.pen;
		Block over = new Block(Word.g(0), pen.x(across()));
		if (angle() >= 0) {
			over.with(Word.of('C', angle(), 3));
		}
		if (hand.turret() == Hand.Turret.LATE) {
			over.with(hand.word(tool.number, true));
		}
		over.mark(mark("place"));
		Block down = over;
		scene.tape.add(over);
		if (scene.dice.chance(0.3)) {
			down = scene.add();
		}
		down.with(pen.z(along() + lift));
		if (coolant) {
			down.with(Word.m(8)).mark(mark("coolant"));
		}
	}

	private void home(Scene scene, Hand hand) {
		Pen pen = scene.pen;
		if (angle() >= 0) {
			scene.add(Word.m(46)).say(scene.dice.pick("C AXIS OFF", ""));
		}
		if (coolant && hand.coolantOffAtHome()) {
			scene.add(Word.m(9));
		}
		switch (hand.home()) {
			case BOTH -> scene.add(Word.g(28), Word.of('U', 0, 3), Word.of('W', 0, 3)).mark(mark("home"));
			case EACH -> {
				scene.add(Word.g(28), Word.of('U', 0, 3)).mark(mark("home"));
				scene.add(Word.g(28), Word.of('W', 0, 3)).mark(mark("home"));
			}
			case PLACE -> scene.add(Word.g(0), pen.x(scene.job.inch ? 203.2 : 200), pen.z(scene.job.inch ? 152.4 : 150)).mark(mark("home"));
			default -> scene.add(Word.g(0), pen.x(scene.job.inch ? 203.2 : 200), pen.z(scene.job.inch ? 152.4 : 150),
					hand.word(tool.number, false)).mark(mark("home"));
		}
		if (otherMode && modeAfter) {
			scene.add(Word.g(scene.job.perRev ? 99 : 98)).mark(mark("mode-back"));
		}
	}
}
