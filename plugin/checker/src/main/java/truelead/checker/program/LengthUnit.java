package truelead.checker.program;

/** The unit lengths are programmed in. */
public enum LengthUnit {
	MM(1.0), INCH(25.4);

	private final double mm;

	LengthUnit(double mm) {
		this.mm = mm;
	}

	/** Millimetres in one unit. */
	public double mm() {
		return mm;
	}
}
