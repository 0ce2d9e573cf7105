package truelead.checker.drawing;

/** The solid part of a section: material, hole, flanks of the thread, the tool at the bottom. */
final class SectionBody {

	private static final double SIDE = 78;
	private static final int MOST_FLANKS = 40;

	private final HoleSection hole;
	private final SectionGeometry at;
	private final double paperBottom;

	SectionBody(HoleSection hole, SectionGeometry at, double paperBottom) {
		this.hole = hole;
		this.at = at;
		this.paperBottom = paperBottom;
	}

	void draw(Svg svg) {
		double minor = Double.isNaN(hole.drill()) ? hole.major() * 0.85 : hole.drill();
		double half = at.half(minor);
		double face = Double.isNaN(hole.wall()) ? paperBottom : at.y(hole.wall());
		// a drill of which the point is not known is drawn flat
		double full = Double.isNaN(hole.drillFull()) && !Double.isNaN(hole.drill()) ? hole.drillTip() : hole.drillFull();
		boolean known = !Double.isNaN(full);
		double shoulder = known ? Math.min(at.y(full), face) : at.top();
		double point = known && hole.drillTip() > full ? at.y(hole.drillTip()) : shoulder;
		material(svg, half, shoulder, point, face);
		double left = at.centre() - half;
		double right = at.centre() + half;
		if (known) {
			if (shoulder >= face - 0.01) {
				svg.line(left, at.top(), left, face, Svg.Line.THICK, false).line(right, at.top(), right, face, Svg.Line.THICK, false);
			} else {
				svg.path(Svg.Line.THICK, false, false, left, at.top(), left, shoulder, at.centre(), point, right, shoulder,
						right, at.top());
			}
		}
		svg.line(at.centre(), 8, at.centre(), Math.min(paperBottom + 8, Math.max(point, face) + 10), Svg.Line.CENTRE, false);
		countersink(svg, half);
		thread(svg, half);
		tool(svg);
	}

	private void material(Svg svg, double half, double shoulder, double point, double face) {
		double outerLeft = at.centre() - SIDE;
		double outerRight = at.centre() + SIDE;
		if (shoulder >= face - 0.01) {
			svg.area(0.14, false, outerLeft, at.top(), at.centre() - half, at.top(), at.centre() - half, face, outerLeft, face);
			svg.area(0.14, false, outerRight, at.top(), at.centre() + half, at.top(), at.centre() + half, face, outerRight, face);
		} else {
			double tip = Math.min(point, face);
			svg.area(0.14, false, outerLeft, at.top(), at.centre() - half, at.top(), at.centre() - half, shoulder, at.centre(), tip,
					at.centre() + half, shoulder, at.centre() + half, at.top(), outerRight, at.top(), outerRight, face, outerLeft, face);
		}
		svg.line(outerLeft, at.top(), at.centre() - half, at.top(), Svg.Line.THICK, false);
		svg.line(at.centre() + half, at.top(), outerRight, at.top(), Svg.Line.THICK, false);
		if (!Double.isNaN(hole.wall())) {
			svg.line(outerLeft, face, outerRight, face, Svg.Line.THICK, false);
		}
	}

	private void countersink(Svg svg, double half) {
		double wide = at.half(hole.countersink());
		if (wide > half) {
			double depth = (hole.countersink() - 2 * half / at.across()) / 2;
			for (int side = -1; side <= 1; side += 2) {
				svg.line(at.centre() + side * wide, at.top(), at.centre() + side * half, at.y(depth), Svg.Line.THICK, false);
			}
		}
	}

	/** Flanks to the full thread, then the run-out as a dashed line to the tool's end. */
	private void thread(Svg svg, double half) {
		if (Double.isNaN(hole.fullThread()) || hole.fullThread() <= 0 || Double.isNaN(hole.major())) {
			return;
		}
		double outer = at.half(hole.major());
		int flanks = (int) Math.max(2, Math.min(MOST_FLANKS, Math.round(hole.fullThread() / (hole.pitch() > 0 ? hole.pitch() : 1))));
		double step = hole.fullThread() / flanks;
		double[] xy = new double[flanks * 4 + 2];
		for (int side = -1; side <= 1; side += 2) {
			for (int i = 0; i < flanks; i++) {
				xy[i * 4] = at.centre() + side * half;
				xy[i * 4 + 1] = at.y(i * step);
				xy[i * 4 + 2] = at.centre() + side * outer;
				xy[i * 4 + 3] = at.y((i + 0.5) * step);
			}
			xy[flanks * 4] = at.centre() + side * half;
			xy[flanks * 4 + 1] = at.y(hole.fullThread());
			svg.path(Svg.Line.THIN, false, false, xy);
			if (hole.tapTip() > hole.fullThread()) {
				svg.line(at.centre() + side * outer, at.y(hole.fullThread()), at.centre() + side * half, at.y(hole.tapTip()),
						Svg.Line.DASHED, false);
			}
		}
	}

	private void tool(Svg svg) {
		if (Double.isNaN(hole.tapTip()) || hole.tapTip() <= 0) {
			return;
		}
		double nose = at.half(Double.isNaN(hole.drill()) ? hole.major() * 0.7 : hole.drill() * 0.8);
		double y = at.y(hole.tapTip());
		svg.line(at.centre() - nose, y, at.centre() + nose, y, Svg.Line.THICK, hole.hits());
		if (hole.hits()) {
			double top = at.y(hole.drillFull());
			svg.area(0.35, true, at.centre() - nose, top, at.centre() + nose, top, at.centre() + nose, y, at.centre() - nose, y);
		}
	}
}
