package truelead.checker.thread;

/**
 * How deep the root of a parallel V thread outside lies below its major diameter: for 60 degrees between H x 5/4 and little less than the
 * sharp V (ISO 68-1), for 55 degrees about what the rounded form has (BS 84). Decimals of pitch and class come on top.
 */
public final class BoltRoot {

	/**
	 * Pitches on the diameter: the shallowest root a standard profile of 60 degrees has, 5/4 H; the deepest that any point cuts; the usual
	 * one, 17/12 H (ISO 68-1).
	 */
	private static final double SHALLOWEST = 1.0825;
	private static final double DEEPEST = 1.4;
	public static final double USUAL = 1.2269;
	/** The usual one of 55 degrees, pitches (BS 84, ISO 228-1). */
	private static final double WHITWORTH = 1.2807;
	/** How far roots lie from that, pitches (common practice, no source). */
	private static final double BESIDE = 0.1;

	private BoltRoot() {
	}

	/** Whether a thread is such a one, of which the others here hold. */
	public static boolean has(ThreadSpec thread) {
		return !thread.system().taper() && (thread.system().hasFlanksOf(60) || thread.system().hasFlanksOf(55));
	}

	/** The usual diameter at the root, mm; of M10x1.5 8.160. */
	public static double usual(ThreadSpec thread) {
		return usual(thread, thread.pitch());
	}

	/** The same, mm, where a thread of that diameter is cut by another pitch, mm. */
	public static double usual(ThreadSpec thread, double pitch) {
		return thread.diameter() - (whitworth(thread) ? WHITWORTH : USUAL) * pitch;
	}

	/** The largest diameter that a root may have, mm. */
	public static double most(ThreadSpec thread) {
		return thread.diameter() - (whitworth(thread) ? WHITWORTH - BESIDE : SHALLOWEST) * thread.pitch();
	}

	/** The smallest diameter that a root may have, mm. */
	public static double least(ThreadSpec thread) {
		return thread.diameter() - (whitworth(thread) ? WHITWORTH + BESIDE : DEEPEST) * thread.pitch();
	}

	/** How the usual one is found, for a person. */
	public static String source(ThreadSpec thread) {
		return whitworth(thread) ? "D - 1.2807 P, the form of 55 degrees" : "D - 1.2269 P, ISO 68-1";
	}

	private static boolean whitworth(ThreadSpec thread) {
		return thread.system().hasFlanksOf(55);
	}
}
