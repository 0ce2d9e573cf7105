package truelead.faults;

/** Milling that has nothing to do with threads: facing, a pocket entered by a helical ramp, a contour with compensation. */
final class Clearing extends Op {
	enum Work { FACE, POCKET, CONTOUR }

	private final Work work;
	private final double x;
	private final double y;
	private final double feed;
	private final double lead;

	Clearing(int id, Tool tool, double speed, double feed, Work work, double x, double y, double lead) {
		super(id, tool, speed);
		this.feed = feed;
		this.work = work;
		this.x = x;
		this.y = y;
		this.lead = lead;
	}

	@Override
	Place start() {
		return work == Work.FACE ? new Place(x - tool.diameter, y) : new Place(x, y);
	}

	@Override
	void body(Scene scene) {
		Pen pen = scene.pen;
		Word f = scene.feed(scene.job.perRev ? feed / speed : feed, scene.job.perRev);
		switch (work) {
			case FACE -> {
				scene.add(Word.g(0), pen.z(0));
				scene.add(Word.g(1), pen.x(x + 120), f).mark(mark("feed"));
				scene.add(Word.g(0), pen.y(y + tool.diameter * 0.7));
				scene.add(Word.g(1), pen.x(x - tool.diameter));
			}
			case POCKET -> pocket(scene, f);
			case CONTOUR -> contour(scene, f);
		}
	}

	private void pocket(Scene scene, Word f) {
		Pen pen = scene.pen;
		double r = tool.diameter * 0.4;
		scene.add(Word.g(0), pen.z(1));
		scene.add(Word.g(1), pen.x(x + r), f).mark(mark("feed"));
		double z = 1;
		double turn = scene.dice.pick(2, 3);
		while (z > -6 + 1e-9) {
			z = Math.max(-6, z - lead);
			scene.add(Word.g(turn), pen.length('I', -r), Word.of('J', 0, 1), pen.z(z)).keep();
		}
		scene.add(Word.g(turn), pen.length('I', -r), Word.of('J', 0, 1)).keep();
		for (int i = 1; i <= 3; i++) {
			double half = r + i * tool.diameter * 0.4;
			scene.add(Word.g(1), pen.x(x + half), pen.y(y + half));
			scene.add(Word.g(1), pen.x(x - half));
			scene.add(Word.g(1), pen.y(y - half));
			scene.add(Word.g(1), pen.x(x + half));
			scene.add(Word.g(1), pen.y(y + half));
		}
	}

	private void contour(Scene scene, Word f) {
		Pen pen = scene.pen;
		double w = 30;
		scene.add(Word.g(0), pen.z(2));
		scene.add(Word.g(1), pen.z(-5), f).mark(mark("feed"));
		scene.add(Word.g(1), Word.g(41), pen.x(x + tool.diameter), pen.y(y + tool.diameter), Word.whole('D', tool.d));
		scene.add(Word.g(1), pen.y(y + w));
		scene.add(Word.g(2), pen.x(x + tool.diameter + 5), pen.y(y + w + 5), pen.length('I', 5), pen.length('J', 0));
		scene.add(Word.g(1), pen.x(x + w + 20));
		scene.add(Word.g(1), pen.y(y + tool.diameter));
		scene.add(Word.g(1), pen.x(x + 10));
		scene.add(Word.g(1), Word.g(40), pen.x(x), pen.y(y));
	}
}
