package truelead.faults;

/** Turning that has nothing to do with threads: facing, the outside by moves, by passes or by a contour. */
final class TurnWork extends TurnOp {

	/** How far the outside is turned, mm: farther than any thread on it goes. */
	private static final double TURNED = 80;

	enum Style { FACE, MOVES, PASSES, CONTOUR }

	private final Style style;
	private final double bar;
	private final double finished;

	TurnWork(int id, Tool tool, int surfaceSpeed, Style style, double bar, double finished) {
		super(id, tool, 600);
		this.surfaceSpeed = surfaceSpeed;
		this.style = style;
		this.bar = bar;
		this.finished = finished;
	}

	@Override
	double across() {
		return bar + 4;
	}

	@Override
	double along() {
		return style == Style.FACE ? 0 : 2;
	}

	@Override
	void body(Scene scene) {
		Pen pen = scene.pen;
		Word f = feed(scene, 0.2);
		switch (style) {
			case FACE -> {
				scene.add(Word.g(1), pen.x(-1.6), f).mark(mark("feed"));
				scene.add(Word.g(0), pen.z(2));
			}
			case MOVES -> {
				for (double d : new double[] {(bar + finished) / 2, finished}) {
					scene.add(Word.g(0), pen.x(d));
					scene.add(Word.g(1), pen.z(-TURNED), f).mark(mark("feed"));
					scene.add(Word.g(0), pen.x(bar + 4));
					scene.add(Word.g(0), pen.z(2));
				}
			}
			case PASSES -> {
				scene.add(Word.g(90), pen.x((bar + finished) / 2), pen.z(-TURNED), f).mark(mark("feed"));
				scene.add(pen.x(finished));
				scene.add(Word.g(0), pen.x(bar + 4), pen.z(2));
			}
			case CONTOUR -> {
				int n = 100 + 10 * id;
				scene.add(Word.g(71), pen.length('U', 2), pen.length('R', 0.5)).keep();
				scene.add(Word.g(71), Word.whole('P', n), Word.whole('Q', n + 5), pen.length('U', 0.4), pen.length('W', 0.1), f).keep()
						.mark(mark("feed"));
				scene.add(Word.whole('N', n), Word.g(0), pen.x(finished - 2)).keep();
				scene.add(Word.g(1), pen.z(0));
				scene.add(pen.x(finished), pen.z(-1));
				scene.add(pen.z(-TURNED));
				scene.add(Word.whole('N', n + 5), pen.x(bar + 4)).keep();
				scene.add(Word.g(70), Word.whole('P', n), Word.whole('Q', n + 5)).keep();
			}
		}
	}
}
