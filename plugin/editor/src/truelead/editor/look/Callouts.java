package truelead.editor.look;

import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;

/** Whether a comment names a thread. */
final class Callouts {

	private Callouts() {
	}

	/** Whether the comment names a thread for certain, as against a bare size that could be something else. */
	static boolean in(String comment) {
		return CalloutReader.mayHoldCallout(comment) && CalloutReader.read(comment).stream().anyMatch(Callout::certain);
	}
}
