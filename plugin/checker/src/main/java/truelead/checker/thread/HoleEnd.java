package truelead.checker.thread;

/** How a hole ends. */
public enum HoleEnd {
	THROUGH, BLIND
}
