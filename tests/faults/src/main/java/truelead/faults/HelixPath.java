package truelead.faults;

/** One pass of a thread mill in one hole: in, round, out; written about the hole's middle, millimetres. */
final class HelixPath {
	private final Scene scene;
	private final ThreadMilling op;
	private final Place middle;
	private final Pen pen;
	private final double turn;
	private final double rise;
	private final double from;

	HelixPath(Scene scene, ThreadMilling op, Place middle) {
		this.scene = scene;
		this.op = op;
		this.middle = middle;
		this.pen = scene.pen;
		this.turn = op.counter() ? 3 : 2;
		this.rise = op.down ? -op.advance : op.advance;
		double bottom = op.feature.surface - op.tip;
		this.from = op.down ? bottom + op.turns * op.feature.size.pitch() : bottom;
	}

	void pass(double cutTo, boolean last) {
		double radius = op.radius(cutTo);
		Word feed = scene.feed(scene.job.perRev ? op.feed / op.speed : op.feed, scene.job.perRev);
		double entry = op.straightEntry ? 0 : rise * op.entryRise;
		scene.add(Word.g(0), pen.z(from - entry)).mark(op.mark("depth"));
		if (op.feature.size.taper()) {
			taper(radius, feed);
			return;
		}
		boolean quarter = op.compensation != ThreadMilling.Compensation.NONE;
		if (op.straightEntry) {
			Block in = scene.add(Word.g(1), pen.x(middle.x() + radius), feed).mark(op.mark("in"));
			if (quarter) {
				compensate(in);
			}
		} else if (quarter) {
			quarterIn(radius, feed);
		} else {
			halfIn(radius, feed);
		}
		round(radius);
		if (quarter) {
			quarterOut(radius, last);
		} else if (op.earlyExit) {
			scene.add(Word.g(0), pen.z(op.feature.surface + 5)).mark(op.mark("out"));
			scene.add(Word.g(0), pen.x(middle.x()));
		} else {
			halfOut(radius);
		}
	}

	/** A half arc from the middle of the hole to its wall climbs a quarter of the pitch: it goes a quarter about the hole. */
	private void halfIn(double radius, Word feed) {
		Block in = new Block(Word.g(turn), pen.x(middle.x() + radius)).with(pen.z(from));
		arc(in, radius / 2, radius / 2, 0);
		scene.tape.add(in.with(feed).mark(op.mark("in"), op.mark("entry")));
	}

	private void halfOut(double radius) {
		Block out = new Block(Word.g(turn), pen.x(middle.x())).with(pen.z(end() + rise * 0.25));
		arc(out, radius / 2, -radius / 2, 0);
		scene.tape.add(out.mark(op.mark("out")));
	}

	private void quarterIn(double radius, Word feed) {
		double r = leadIn(radius);
		double side = op.counter() ? -1 : 1;
		Block on = new Block(Word.g(1), pen.x(middle.x() + radius - r), pen.y(middle.y() + side * r));
		if (!op.compensationOnArc) {
			compensate(on);
		}
		scene.tape.add(on.with(feed).mark(op.mark("on")));
		Block in = new Block(Word.g(turn), pen.x(middle.x() + radius), pen.y(middle.y())).with(pen.z(from));
		arc(in, r, 0, -side * r);
		if (op.compensationOnArc) {
			compensate(in);
		}
		scene.tape.add(in.mark(op.mark("in"), op.mark("entry")));
	}

	private void quarterOut(double radius, boolean last) {
		double r = leadIn(radius);
		double side = op.counter() ? 1 : -1;
		Block out = new Block(Word.g(turn), pen.x(middle.x() + radius - r), pen.y(middle.y() + side * r)).with(pen.z(end() + rise * 0.25));
		arc(out, r, -r, 0);
		scene.tape.add(out.mark(op.mark("out")));
		Block off = new Block(Word.g(1), pen.x(middle.x()), pen.y(middle.y()));
		if (op.cancelled || !last) {
			off.words.add(0, Word.g(40));
		}
		scene.tape.add(off.mark(op.mark("off-path")));
	}

	/** Radius of the lead-in: more than the cutter's own on a contour, half the path's on the centre line. */
	private double leadIn(double radius) {
		return op.compensation == ThreadMilling.Compensation.CONTOUR ? (op.cutter / 2 + radius) / 2 : radius / 2;
	}

	private void compensate(Block block) {
		block.words.add(0, Word.g(op.counter() ? 41 : 42));
		block.with(Word.whole('D', op.tool.d)).mark(op.mark("compensation"));
	}

	/** R no smaller than half the chord, or I and J to the middle of the arc. */
	private void arc(Block block, double radius, double i, double j) {
		if (op.radiusWords) {
			block.with(Word.of('R', Figures.up(scene.job.inch ? radius / 25.4 : radius, pen.decimals), pen.decimals));
		} else {
			block.with(pen.length('I', i)).with(pen.length('J', j));
		}
	}

	private double end() {
		return from + op.turns * rise;
	}

	private void round(double radius) {
		switch (op.arcs) {
			case HALVES -> halves(radius);
			case LOOP -> loop(radius);
			case TURNS -> {
				Block all = new Block(Word.g(turn), pen.length('I', -radius), Word.of('J', 0, 1), pen.z(end()));
				if (op.turns > 1) {
					all.with(Word.whole('P', op.turns));
				}
				scene.tape.add(mark(all, 0));
			}
			default -> {
				for (int i = 0; i < op.turns; i++) {
					double extra = i == op.unevenTurn ? 0.2 * rise : 0;
					scene.tape.add(mark(new Block(Word.g(turn), pen.length('I', -radius), Word.of('J', 0, 1),
							pen.z(from + (i + 1) * rise + extra)), i));
				}
			}
		}
	}

	private void halves(double radius) {
		for (int i = 0; i < op.turns; i++) {
			double extra = i == op.unevenTurn ? 0.2 * rise : 0;
			Block away = new Block(Word.g(turn), pen.x(middle.x() - radius)).with(pen.z(from + (i + 0.5) * rise + extra));
			arc(away, radius, -radius, 0);
			scene.tape.add(mark(away, i));
			Block home = new Block(Word.g(turn), pen.x(middle.x() + radius)).with(pen.z(from + (i + 1) * rise));
			arc(home, radius, radius, 0);
			scene.tape.add(mark(home, i));
		}
	}

	private Block mark(Block block, int turnNumber) {
		return block.mark(op.mark("helix"), op.mark("helix-" + turnNumber), op.mark("cycle"));
	}

	/** One full circle a turn in a loop over the height. */
	private void loop(double radius) {
		String height = "#" + (110 + scene.dice.whole(0, 9));
		String count = "#" + (120 + scene.dice.whole(0, 9));
		int label = ++scene.label;
		scene.line(height + "=" + Figures.trim(pen.unit(from), pen.decimals));
		scene.line(count + "=0");
		scene.line(scene.job.rs274 ? "o" + label + " while [" + count + " LT " + op.turns + "]" : "WHILE [" + count + " LT "
				+ op.turns + "] DO1");
		String step = Figures.trim(Math.abs(scene.job.inch ? op.advance / 25.4 : op.advance), pen.decimals + 1);
		scene.line(height + "=[" + height + (op.down ? "-" : "+") + step + "]");
		scene.tape.add(mark(new Block(Word.g(turn), pen.length('I', -radius), Word.of('J', 0, 1), Word.said('Z', height)), 0));
		scene.line(count + "=[" + count + "+1]");
		scene.line(scene.job.rs274 ? "o" + label + " endwhile" : "END1");
		pen.height(end());
	}

	/** Quarter arcs whose radius grows upward by 1/32 of the height (ASME B1.20.1: taper 1 in 16 on diameter). */
	private void taper(double radiusAtSurface, Word feed) {
		double z = from;
		double r = radiusAt(radiusAtSurface, z);
		Block in = new Block(Word.g(turn), pen.x(middle.x() + r)).with(pen.z(z));
		arcIj(in, r / 2, 0);
		scene.tape.add(in.with(feed).mark(op.mark("in"), op.mark("entry")));
		int side = op.counter() ? 1 : -1;
		for (int i = 1; i <= 4 * op.turns; i++) {
			double before = Math.PI / 2 * (i - 1) * side;
			double after = Math.PI / 2 * i * side;
			z += rise / 4;
			double next = radiusAt(radiusAtSurface, z);
			Block arc = new Block(Word.g(turn), pen.x(middle.x() + next * Math.cos(after)),
					pen.y(middle.y() + next * Math.sin(after)), pen.z(z));
			arcIj(arc, -r * Math.cos(before), -r * Math.sin(before));
			scene.tape.add(mark(arc, (i - 1) / 4));
			r = next;
		}
		Block out = new Block(Word.g(turn), pen.x(middle.x())).with(pen.y(middle.y())).with(pen.z(z + rise / 4));
		arcIj(out, -r / 2, 0);
		scene.tape.add(out.mark(op.mark("out")));
	}

	private double radiusAt(double atSurface, double z) {
		return atSurface + (op.taperOff ? 0 : (z - op.feature.surface) / 32);
	}

	private void arcIj(Block block, double i, double j) {
		block.with(pen.length('I', i)).with(pen.length('J', j));
	}
}
