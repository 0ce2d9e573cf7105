package truelead.checker.wanted;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.program.Location;
import truelead.grammar.Span;

/** Free callouts in comments. */
public final class Callouts {

	/** What a lathe's threading tool shows, behind a comment that does not say it. */
	private static final String OF_A_THREAD = " THREAD";

	private Callouts() {
	}

	/** Whether any of the comments names a thread for certain. */
	public static boolean any(List<LineComment> comments) {
		return comments.stream().anyMatch(c -> CalloutReader.read(c.said()).stream().anyMatch(Callout::certain));
	}

	/**
	 * The threads that a comment names; a bare size that could be something else counts only where it fits what is cut.
	 *
	 * @param cut lead and hole of the operation
	 */
	static List<Callout> read(LineComment comment, AsCut cut) {
		List<Callout> named = new ArrayList<>();
		for (Callout callout : CalloutReader.read(comment.said())) {
			if (callout.certain() || cut.speaksFor(callout.spec())) {
				named.add(callout);
			}
		}
		return named;
	}

	/**
	 * The threads that a comment may mean of a lathe that cuts one: those that it names, or else what would be something elsewhere, as the
	 * screw in STUD M12X1.75 that is turned itself, or the radius in R3/4.
	 */
	public static List<Callout> chased(LineComment comment) {
		List<Callout> named = CalloutReader.read(comment.said());
		return named.isEmpty() ? CalloutReader.read(comment.said() + OF_A_THREAD) : named;
	}

	/** A fact that a callout states, with the callout's own words and place. */
	public static <T> Fact<T> fact(LineComment comment, Callout callout, FactSource source, T value) {
		Location at = comment.comment().at();
		String text = comment.text();
		int start = Math.min(callout.start(), text.length());
		int end = Math.max(start, Math.min(callout.end(), text.length()));
		Location exact = new Location(at.file(), at.line(), new Span(at.span().start() + start, at.span().start() + end));
		return Fact.of(value, source, exact, text.substring(start, end).strip());
	}
}
