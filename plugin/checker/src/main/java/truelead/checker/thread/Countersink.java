package truelead.checker.thread;

/** The countersink that breaks the edge of a hole before it is threaded: from D to 1.05 D at the surface (DIN 76-1, from memory). */
public final class Countersink {
	/** The largest countersink, a factor of D (DIN 76-1, from memory). */
	private static final double LARGEST = 1.05;

	private Countersink() {
	}

	/** The smallest diameter at the surface, mm. */
	public static double smallest(ThreadSpec spec) {
		return spec.diameter();
	}

	/** The largest diameter at the surface, mm. */
	public static double largest(ThreadSpec spec) {
		return LARGEST * spec.diameter();
	}
}
