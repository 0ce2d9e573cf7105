package truelead.checker.thread;

/** The kinds of tool that a comment can name. */
public enum ToolKind {
	DRILL, CENTRE_DRILL, SPOT_DRILL, REAMER, BORING, COUNTERSINK, COUNTERBORE, END_MILL, THREAD_MILL, CUTTING_TAP, FORM_TAP,
	/** A tap of which the comment does not say whether it cuts or forms. */
	TAP;

	/** Taps of every kind. */
	public boolean tap() {
		return this == CUTTING_TAP || this == FORM_TAP || this == TAP;
	}

	/** Taps and thread mills. */
	public boolean threading() {
		return tap() || this == THREAD_MILL;
	}
}
