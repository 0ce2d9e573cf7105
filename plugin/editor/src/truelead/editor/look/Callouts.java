package truelead.editor.look;

/** Whether a comment names a thread. */
final class Callouts {

	private Callouts() {
	}

	/** Whether the comment names a thread or is one of our notes. */
	static boolean in(String comment) {
		return false;
	}
}
