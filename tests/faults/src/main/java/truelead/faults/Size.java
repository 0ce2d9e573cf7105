package truelead.faults;

/**
 * One thread size; millimetres. {@code formHole} is 0 where the size is not formed; {@code drillName} is how the shop
 * calls the drill ({@code 6.8}, {@code #7}, {@code 27/64}); for NPT {@code diameter} is the diameter over the crests at the face.
 */
record Size(String name, Series series, double diameter, double pitch, double tpi,
			double drill, String drillName, double formHole, String formName) {

	/** Basic minor diameter: D - 5/4 H with H = 0.8660254 P (ISO 724, ASME B1.1); G: D - 1.280654 P (ISO 228-1). */
	double minor() {
		return series == Series.G ? diameter - 1.280654 * pitch : diameter - 1.0825318 * pitch;
	}

	/** Tolerance of the pitch diameter, grade 6, by the formula of ISO 965-1: 1.32 x 90 P^0.4 D^0.1 micrometres. */
	double pitchTolerance() {
		return 0.001 * 1.32 * 90 * Math.pow(pitch, 0.4) * Math.pow(diameter, 0.1);
	}

	boolean formed() {
		return formHole > 0;
	}

	boolean taper() {
		return series == Series.NPT;
	}
}
