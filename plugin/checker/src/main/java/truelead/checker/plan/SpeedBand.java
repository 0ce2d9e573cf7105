package truelead.checker.plan;

/**
 * Cutting speeds in use, m/min, from memory: sources differ by two to three times, so the plan starts low in the band.
 *
 * @param low  with plain high speed steel
 * @param high with coated tools and good coolant
 */
public record SpeedBand(double low, double high) {
	/** Above this hardness speeds fall to 0.4, HRC (from memory). */
	private static final double HARD = 35;
	/** A thread mill of carbide turns so many times faster at its edge than a tap (from memory). */
	private static final double MILL_FACTOR = 3;
	/** A taper tap cuts on its whole length: half the speed (common practice, no source). */
	private static final double TAPER = 0.5;

	/** The band for a method in a stock. */
	public static SpeedBand of(Method method, Request request) {
		SpeedBand cut = switch (request.group()) {
			case ALUMINIUM, MAGNESIUM, ZINC, PLASTIC -> new SpeedBand(15, 40);
			case BRASS, COPPER -> new SpeedBand(12, 30);
			case BRONZE, CAST_IRON -> new SpeedBand(8, 20);
			case STAINLESS -> new SpeedBand(5, 12);
			case TITANIUM -> new SpeedBand(3, 8);
			case NICKEL_ALLOY -> new SpeedBand(2, 5);
			case STEEL -> new SpeedBand(8, 20);
			case OTHER -> new SpeedBand(6, 15);
		};
		double taper = method.tap() && request.thread().system().taper() ? TAPER : 1;
		double factor = (method.tap() ? 1 : MILL_FACTOR) * (request.hardness() > HARD ? 0.4 : 1) * taper;
		return new SpeedBand(cut.low * factor, cut.high * factor);
	}

	/** What a drill of high speed steel starts with, m/min: twice what a tap does (common practice, no source). */
	public static double drilling(Request request) {
		return 2 * of(Method.SPIRAL_FLUTE, request).start();
	}

	/** Where the plan starts, m/min: a third into the band. */
	public double start() {
		return low + (high - low) / 3;
	}

	/** rev/min at a diameter in mm for a surface speed in m/min: 1000 v / (pi d). */
	public static double speed(double surface, double diameter) {
		return 1000 * surface / (Math.PI * diameter);
	}
}
