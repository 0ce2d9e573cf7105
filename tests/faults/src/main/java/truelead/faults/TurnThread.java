package truelead.faults;

/** A thread that a single point cuts, outside or inside: two blocks of G76, passes of G92, or G32 with its own way back. */
final class TurnThread extends TurnOp {
	enum Style { CYCLE, ONE_BLOCK, PASSES, MOVES }

	final Size size;
	boolean inside;
	Style style = Style.CYCLE;
	double advance;
	double length;

	TurnThread(int id, Tool tool, double speed, Size size) {
		super(id, tool, speed);
		this.size = size;
		this.advance = size.pitch();
	}

	@Override
	double across() {
		return inside ? size.minor() - 2 : size.diameter() + 4;
	}

	@Override
	double along() {
		return Math.max(5, Math.ceil(3 * size.pitch()));
	}

	/** Height of an outside thread of metric or unified form, 0.6134 P (ISO 68-1: 17/24 H). */
	private double height() {
		return (inside ? 0.5413 : 0.6134) * size.pitch();
	}

	private Word lead(Scene scene) {
		return scene.threadFeed(advance, true);
	}

	@Override
	void body(Scene scene) {
		Pen pen = scene.pen;
		double last = inside ? size.diameter() : size.diameter() - 2 * height();
		switch (style) {
			case CYCLE -> {
				boolean inch = scene.job.inch;
				scene.add(Word.g(76), Word.said('P', scene.dice.pick("010060", "020060", "011060")), Word.whole('Q', inch ? 20 : 50),
						pen.length('R', 0.0254)).keep();
				scene.add(Word.g(76), pen.x(last), Word.of('Z', pen.unit(-length), pen.decimals),
						Word.whole('P', Math.rint(inch ? height() / 25.4 * 10_000 : height() * 1000)), Word.whole('Q', inch ? 80 : 250),
						lead(scene)).keep().mark(mark("cycle"));
			}
			case ONE_BLOCK -> scene.add(Word.g(76), pen.x(last), Word.of('Z', pen.unit(-length), pen.decimals), pen.length('K', height()),
					pen.length('D', 0.254), lead(scene), Word.whole('A', 60)).keep().mark(mark("cycle"));
			case PASSES -> {
				boolean first = true;
				for (double part : new double[] {0.35, 0.6, 0.8, 1}) {
					Block pass = scene.add();
					if (first) {
						pass.with(Word.g(92));
					}
					pass.with(pen.x(pass(last, part)));
					if (first) {
						pass.with(Word.of('Z', pen.unit(-length), pen.decimals)).with(lead(scene)).mark(mark("cycle"));
					}
					first = false;
				}
			}
			case MOVES -> {
				for (double part : new double[] {0.4, 0.75, 1}) {
					scene.add(Word.g(0), pen.x(pass(last, part)));
					scene.add(Word.g(32), pen.z(-length), lead(scene)).mark(mark("cycle"));
					scene.add(Word.g(0), pen.x(across()));
					scene.add(Word.g(0), pen.z(along()));
				}
			}
		}
	}

	private double pass(double last, double part) {
		return inside ? last - 2 * (1 - part) * height() : last + 2 * (1 - part) * height();
	}
}
