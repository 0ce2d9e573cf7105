package truelead.checker.program;

/** The unit lengths are programmed in. */
public enum LengthUnit {
	MM(1.0), INCH(25.4);

	private final double mm;

	LengthUnit(double mm) {
		this.mm = mm;
	}

	/** So many mm make one of it: 25.4 an inch, by definition. */
	public double mm() {
		return mm;
	}
}
