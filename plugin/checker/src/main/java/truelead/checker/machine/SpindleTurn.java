package truelead.checker.machine;

/** What the spindle does; UNKNOWN in a subprogram of its own or after a code that is not known. */
public enum SpindleTurn {
	STOPPED, CLOCKWISE, COUNTERCLOCKWISE, UNKNOWN;

	/** Whether it is known to turn. */
	public boolean turns() {
		return this == CLOCKWISE || this == COUNTERCLOCKWISE;
	}
}
