package truelead.faults;

/** A boring bar that brings a drilled hole to the diameter to be threaded: passes by feed, by the cycle of one pass, or a contour. */
final class TurnBore extends TurnOp {
	enum Style { FEED, PASSES, CONTOUR }

	double from;
	double to;
	double depth;
	Style style = Style.FEED;

	TurnBore(int id, Tool tool, double speed) {
		super(id, tool, speed);
	}

	@Override
	double across() {
		return from - 1;
	}

	@Override
	double along() {
		return 2;
	}

	@Override
	void body(Scene scene) {
		Pen pen = scene.pen;
		Word f = feed(scene, 0.12);
		double rough = (from + to) / 2;
		switch (style) {
			case FEED -> {
				for (double d : new double[] {rough, to}) {
					scene.add(Word.g(0), pen.x(d));
					scene.add(Word.g(1), pen.z(-depth), f).mark(mark("cycle"));
					scene.add(Word.g(1), pen.x(d - 1));
					scene.add(Word.g(0), pen.z(2));
				}
			}
			case PASSES -> {
				scene.add(Word.g(90), pen.x(rough), pen.z(-depth), f).mark(mark("cycle"));
				scene.add(pen.x(to)).mark(mark("cycle"));
				scene.add(Word.g(0), pen.x(from - 1), pen.z(2));
			}
			case CONTOUR -> contour(scene, f);
		}
	}

	private void contour(Scene scene, Word f) {
		Pen pen = scene.pen;
		scene.add(Word.g(71), pen.length('U', 1), pen.length('R', 0.5)).keep();
		int n = 500 + 10 * id;
		scene.add(Word.g(71), Word.whole('P', n), Word.whole('Q', n + 5), pen.length('U', -0.3), pen.length('W', 0.1), f).keep();
		scene.add(Word.whole('N', n), Word.g(0), pen.x(to + 3)).keep();
		scene.add(Word.g(1), pen.z(0));
		scene.add(pen.x(to), pen.z(-1.5));
		scene.add(pen.z(-depth));
		scene.add(Word.whole('N', n + 5), pen.x(from - 1)).keep();
		scene.add(Word.g(70), Word.whole('P', n), Word.whole('Q', n + 5)).keep();
		scene.add(Word.g(0), pen.z(2));
	}
}
