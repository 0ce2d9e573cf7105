package truelead.checker.thread;

import truelead.checker.machine.LengthUnit;

/** The systems of threads that Truelead knows, each with the unit of its tables and its form. */
public enum ThreadSystem {
	/** ISO metric, ISO 68-1 and ISO 261. */
	METRIC(LengthUnit.MM, 60, false),
	/** Metric with a rounded root, ISO 5855. */
	MJ(LengthUnit.MM, 60, false),
	/** Unified, ASME B1.1. */
	UNIFIED(LengthUnit.INCH, 60, false),
	/** Unified with a rounded root, ASME B1.15. */
	UNJ(LengthUnit.INCH, 60, false),
	/** Taper pipe, ASME B1.20.1. */
	NPT(LengthUnit.INCH, 60, true),
	/** Dryseal taper pipe, ASME B1.20.3. */
	NPTF(LengthUnit.INCH, 60, true),
	/** Parallel pipe thread, not sealing on the thread, ISO 228-1. */
	G(LengthUnit.MM, 55, false),
	/** Parallel internal pipe thread, sealing on the thread, ISO 7-1. */
	RP(LengthUnit.MM, 55, false),
	/** Taper internal pipe thread, ISO 7-1. */
	RC(LengthUnit.MM, 55, true),
	/** Taper external pipe thread, ISO 7-1. */
	R(LengthUnit.MM, 55, true),
	/** Whitworth coarse, BS 84. */
	BSW(LengthUnit.INCH, 55, false),
	/** Whitworth fine, BS 84. */
	BSF(LengthUnit.INCH, 55, false);

	private final LengthUnit unit;
	private final int flankAngle;
	private final boolean taper;

	ThreadSystem(LengthUnit unit, int flankAngle, boolean taper) {
		this.unit = unit;
		this.flankAngle = flankAngle;
		this.taper = taper;
	}

	/** The unit of the system's tables. */
	public LengthUnit unit() {
		return unit;
	}

	/** The rounded 55 degree form of Whitworth, which pipe threads of ISO 228-1 and ISO 7-1 have too. */
	public boolean whitworthForm() {
		return flankAngle == 55;
	}

	/** The included angle of the form, radians. */
	public double flankAngle() {
		return Math.toRadians(flankAngle);
	}

	/** Whether the thread is cut on a taper of 1 in 16 on the diameter. */
	public boolean taper() {
		return taper;
	}

	/** Pipe threads are named for the bore of a pipe, not for a diameter that could be measured. */
	public boolean pipe() {
		return switch (this) {
			case NPT, NPTF, G, RP, RC, R -> true;
			default -> false;
		};
	}

	/** Metric or MJ: the pitch is written in mm, not as threads per inch. */
	public boolean metric() {
		return this == METRIC || this == MJ;
	}

	/** Depth of the fundamental triangle divided by the pitch: 0.866025 for 60 degrees, 0.960491 for 55 (ISO 68-1, ISO 228-1). */
	public double triangleHeight() {
		return 0.5 / Math.tan(flankAngle() / 2);
	}
}
