package truelead.speed;

/** An empty program: the measure of a start. */
public final class Nothing {

	private Nothing() {
	}

	/** Does nothing. */
	public static void main(String[] arguments) {
		// the start of Java itself is what is measured
	}
}
