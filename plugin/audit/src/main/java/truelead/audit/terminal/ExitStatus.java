package truelead.audit.terminal;

/** What the process returns to whoever called it. */
public final class ExitStatus {

	/** Nothing at or above the limit, and everything could be followed. */
	public static final int CLEAN = 0;
	/** A finding at or above the limit. */
	public static final int FINDINGS = 1;
	/** Wrong use of the command, or a file that could not be read or written. */
	public static final int TROUBLE = 2;
	/** No finding at or above the limit, but a part of a program could not be followed and so was not checked. */
	public static final int NOT_FOLLOWED = 3;

	private ExitStatus() {
	}
}
