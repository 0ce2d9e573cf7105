package truelead.checker.callout;

/** How a hole ends. */
public enum HoleEnd {
	THROUGH, BLIND
}
