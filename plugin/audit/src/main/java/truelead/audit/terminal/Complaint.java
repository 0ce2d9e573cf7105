package truelead.audit.terminal;

/** Ends the command with one clear line for the person who called it, and status {@link ExitStatus#TROUBLE}. */
public final class Complaint extends RuntimeException {

	private static final long serialVersionUID = 1L;

	/** The line, without a full stop: what is wrong, and with which file or option. */
	public Complaint(String line) {
		super(line, null, false, false);
	}
}
