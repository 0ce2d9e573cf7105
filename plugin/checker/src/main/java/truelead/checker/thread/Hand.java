package truelead.checker.thread;

/** The hand of a thread: a right-hand thread goes in when turned clockwise. */
public enum Hand {
	RIGHT, LEFT
}
