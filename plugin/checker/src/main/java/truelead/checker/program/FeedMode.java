package truelead.checker.program;

/** How F is read. */
public enum FeedMode {
	PER_MINUTE, PER_REVOLUTION, INVERSE_TIME
}
