package truelead.checker.thread;

import java.util.Locale;

/** The kinds of tool that a comment can name. */
public enum ToolKind {
	DRILL, CENTRE_DRILL, SPOT_DRILL, REAMER, BORING, COUNTERSINK, COUNTERBORE, END_MILL,
	/** A cutter that is wider than its neck and mills a groove in a wall: a T-slot cutter, one for a thread's relief. */
	GROOVE_CUTTER, THREAD_MILL, CUTTING_TAP, FORM_TAP,
	/** A tap of which the comment does not say whether it cuts or forms. */
	TAP,
	/** What cuts a thread outside as a tap does inside, and is turned back to come off. */
	DIE,
	/** A head with dies that open at the end of the thread, so that it is pulled back. */
	DIE_HEAD;

	/** Its name in messages and tables: {@code form tap}. */
	public String words() {
		return name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	/** Taps of every kind. */
	public boolean tap() {
		return this == CUTTING_TAP || this == FORM_TAP || this == TAP;
	}

	/** What is led as a tap and cuts outside, so that no hole belongs to it. */
	public boolean die() {
		return this == DIE || this == DIE_HEAD;
	}

	/** What makes holes of its own width for threads. */
	public boolean bores() {
		return this == DRILL || this == REAMER || this == BORING;
	}

	/** Taps, dies and thread mills. */
	public boolean threading() {
		return tap() || die() || this == THREAD_MILL;
	}
}
