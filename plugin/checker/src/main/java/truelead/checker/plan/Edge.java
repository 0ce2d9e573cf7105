package truelead.checker.plan;

/**
 * How the hole is started and its edge broken just over the thread's diameter: by a 90 degree spotting drill where one of that size is
 * made, else by a small one, and a countersink behind the drill. Lengths in mm.
 *
 * @param depth     the point of the 90 degree cone, for the chamfer
 * @param after     whether the edge is broken by a countersink behind the drill
 * @param spotSize  diameter of the spotting drill
 * @param spotDepth how deep it goes
 * @param feed      in a turn
 * @param size      diameter of the tool that breaks the edge
 */
record Edge(double depth, boolean after, double spotSize, double spotDepth, double feed, double size) {
	/** Diameter of the chamfer, a factor of D: between the 1 and 1.05 of DIN 76-1 (from memory). */
	private static final double CHAMFER = 1.03;
	/** Spotting drills are made up to 25 mm (common practice, no source). */
	private static final double LARGEST_SPOT = 25;
	/** The spotting drill where none of the size is made, mm; 5/8 in an inch program (common practice, no source). */
	private static final double SMALL_SPOT = 16;
	/** How deep it goes, mm (common practice, no source). */
	private static final double SMALL_SPOT_DEPTH = 4;

	static Edge of(Request request) {
		double diameter = request.thread().diameter();
		double depth = CHAMFER * diameter / 2;
		double step = request.unit().mm() == 1 ? 1 : request.unit().mm() / 16;
		double size = Math.ceil(1.2 * diameter / step - 1e-9) * step;
		if (size <= LARGEST_SPOT + 1e-9 || 1.2 * diameter <= LARGEST_SPOT) {
			return new Edge(depth, false, size, depth, Math.min(0.05, 0.02 * diameter), size);
		}
		double spot = request.unit().mm() == 1 ? SMALL_SPOT : 0.625 * request.unit().mm();
		return new Edge(depth, true, spot, SMALL_SPOT_DEPTH, 0.05, size);
	}

	/** The deepest that any of its tools goes. */
	double deepest() {
		return Math.max(depth, spotDepth);
	}

	String spotComment(Figure figure) {
		return "SPOT DRILL DIA " + figure.word(spotSize) + " 90 DEG" + (after ? "" : ", CHAMFERS TO " + figure.word(2 * depth));
	}

	String countersinkComment(Figure figure) {
		return "COUNTERSINK DIA " + figure.word(size) + " 90 DEG, CHAMFERS TO " + figure.word(2 * depth)
				+ ", LENGTH TO THE POINT OF ITS CONE";
	}
}
