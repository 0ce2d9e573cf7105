package truelead.checker.thread;

import truelead.checker.program.LengthUnit;

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
	BSF(LengthUnit.INCH, 55, false),
	/** Straight pipe for mechanical joints, ASME B1.20.1. */
	NPSM(LengthUnit.INCH, 60, false),
	/** Straight pipe in couplings, ASME B1.20.1. */
	NPSC(LengthUnit.INCH, 60, false),
	/** Metric trapezoidal, ISO 2901. */
	TR(LengthUnit.MM, 30, 0.5),
	/** Trapezoidal in inches, ASME B1.5. */
	ACME(LengthUnit.INCH, 29, 0.5),
	/** Low trapezoidal in inches, ASME B1.8. */
	STUB_ACME(LengthUnit.INCH, 29, 0.3),
	/** Metric saw-tooth, flanks of 3 and 30 degrees, DIN 513-1. */
	SAW(LengthUnit.MM, 33, 0.75),
	/** Saw-tooth in inches, flanks of 7 and 45 degrees, ASME B1.9. */
	BUTTRESS(LengthUnit.INCH, 52, 0.6),
	/** Knuckle, rounded with flanks of 30 degrees, DIN 405-1. */
	RD(LengthUnit.MM, 30, 0.45),
	/** British Association, BS 93. */
	BA(LengthUnit.MM, 47.5, 0.6),
	/** Steel conduit, DIN 40430. */
	PG(LengthUnit.MM, 80, 0.475),
	/** Miniature screws below 1.4 mm, ISO 1501 and ASME B1.10. */
	MINIATURE(LengthUnit.MM, 60, 0.48),
	/** Whitworth form on a diameter in mm, as gas cylinders have, DIN 477-1. */
	W(LengthUnit.MM, 55, false);

	private final LengthUnit unit;
	private final double flankAngle;
	private final boolean taper;
	private final double depth;

	ThreadSystem(LengthUnit unit, double flankAngle, boolean taper) {
		this(unit, flankAngle, taper, flankAngle == 55 ? 0.640327 : 0.375 / Math.tan(Math.toRadians(flankAngle / 2)));
	}

	ThreadSystem(LengthUnit unit, double flankAngle, double depth) {
		this(unit, flankAngle, false, depth);
	}

	ThreadSystem(LengthUnit unit, double flankAngle, boolean taper, double depth) {
		this.unit = unit;
		this.flankAngle = flankAngle;
		this.taper = taper;
		this.depth = depth;
	}

	/** The unit of the system's tables. */
	public LengthUnit unit() {
		return unit;
	}

	/** The included angle of the form, radians. */
	public double flankAngle() {
		return Math.toRadians(flankAngle);
	}

	/** Whether the form's included angle is so many degrees. */
	public boolean hasFlanksOf(double degrees) {
		return flankAngle == degrees;
	}

	/** Whether the thread is cut on a taper of 1 in 16 on the diameter. */
	public boolean taper() {
		return taper;
	}

	/** Pipe threads are named for the bore of a pipe, not for a diameter that could be measured. */
	public boolean pipe() {
		return switch (this) {
			case NPT, NPTF, NPSM, NPSC, G, RP, RC, R -> true;
			default -> false;
		};
	}

	/**
	 * Depth of the full thread divided by the pitch, by which drills are told in percent: 3/4 of the triangle for 60 degrees (convention of
	 * the Unified drill tables, Machinery's Handbook), else the depth of the standard's own form (from memory but for Whitworth and Tr).
	 */
	public double depthOverPitch() {
		return depth;
	}

	/**
	 * Depth of the internal profile divided by the pitch, which a thread mill cuts: 5/8 of the triangle for 60 degrees (ISO 68-1), 0.8 for
	 * taper pipe of 60 degrees (ASME B1.20.1), else the depth of the standard's own form.
	 */
	public double profileOverPitch() {
		return flankAngle != 60 || this == MINIATURE ? depth : taper ? 0.8 : 5 * Math.sqrt(3) / 16;
	}

	/** Whether taps form it: the V of 60 degrees, and no pipe thread. */
	public boolean formable() {
		return flankAngle == 60 && !pipe() && this != MINIATURE;
	}

	/** Trapezoids, saw teeth and knuckles: forms whose cutters and taps are made for them alone, and clear little at their flanks. */
	public boolean movement() {
		return switch (this) {
			case TR, ACME, STUB_ACME, SAW, BUTTRESS, RD -> true;
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
