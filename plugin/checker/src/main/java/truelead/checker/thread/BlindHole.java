package truelead.checker.thread;

/**
 * The shortest blind hole for a thread, all lengths in mm from the top face.
 *
 * @param threadDepth       full threads down to here
 * @param tapTipDepth       the tap's end: the lead below the full threads
 * @param fullDiameterDepth the drill's full diameter down to here: the bottom clearance below the tap
 * @param drillTipDepth     the tip of the drill
 */
public record BlindHole(double threadDepth, double tapTipDepth, double fullDiameterDepth, double drillTipDepth) {
	/** Pitches left below a cutting tap for chips (common practice, no source). */
	public static final double CLEARANCE_CUT = 2;
	/** Pitches left below a forming tap, which makes no chips (common practice, no source). */
	public static final double CLEARANCE_FORM = 1;

	/**
	 * The shortest hole.
	 *
	 * @param threadDepth full threads wanted, mm
	 * @param lead        the tap's lead, threads
	 * @param forming     for a forming tap
	 * @param drill       the drill's diameter, mm
	 * @param pointAngle  the drill's point, radians
	 */
	public static BlindHole shortest(ThreadSpec spec, double threadDepth, double lead, boolean forming, double drill, double pointAngle) {
		double tip = threadDepth + lead * spec.pitch();
		double full = tip + (forming ? CLEARANCE_FORM : CLEARANCE_CUT) * spec.pitch();
		return new BlindHole(threadDepth, tip, full, full + DrillPoint.length(drill, pointAngle));
	}
}
