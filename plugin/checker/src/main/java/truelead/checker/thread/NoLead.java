package truelead.checker.thread;

/**
 * What can be said of a tap's advance where nothing names its thread: the finest pitch in the tables is 0.08 mm, the coarsest of taps 8 mm.
 * An advance far outside is that of no thread.
 */
public final class NoLead {

	/** A little beyond the finest and the coarsest of them, mm (a choice of ours). */
	private static final double FINEST = 0.07;
	private static final double COARSEST = 12;
	/** Leads that taps of a machine shop have, mm (common practice, no source). */
	private static final double USUAL_FROM = 0.2;
	private static final double USUAL_TO = 8;

	private NoLead() {
	}

	/** Whether an advance is that of no thread, and another reading of it would be that of a usual one; both mm a turn. */
	public static boolean unless(double advance, double otherwise) {
		return (advance < FINEST || advance > COARSEST) && otherwise >= USUAL_FROM && otherwise <= USUAL_TO;
	}
}
