package truelead.checker.work;

import java.util.List;
import truelead.checker.thread.Callout;
import truelead.checker.thread.CalloutReader;

/** Free callouts in comments. */
final class Callouts {

	/** How far an uncertain callout's pitch may be from the pitch that is cut, a share of it. */
	private static final double FITS = 0.05;

	private Callouts() {
	}

	/** Whether any of the comments names a thread for certain. */
	static boolean any(List<LineComment> comments) {
		return comments.stream().anyMatch(c -> CalloutReader.read(c.text()).stream().anyMatch(Callout::certain));
	}

	/**
	 * The threads that a comment names; a bare size that could be something else counts only where it fits what is cut.
	 *
	 * @param implied lead that the operation cuts, mm; NaN where it is not known
	 */
	static List<Callout> read(LineComment comment, double implied) {
		return CalloutReader.read(comment.text()).stream()
				.filter(c -> c.certain() || Math.abs(c.spec().lead() - implied) <= FITS * c.spec().lead()).toList();
	}
}
