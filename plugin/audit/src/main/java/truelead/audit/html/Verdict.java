package truelead.audit.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.rule.Severity;

/**
 * What a reviewer reads first, in words that need no colour.
 *
 * @param kind  class in the styles
 * @param sign  a sign told apart by its shape
 * @param words the verdict
 * @param why   one sentence
 */
public record Verdict(String kind, String sign, String words, String why) {

	/** The verdict on a program, by its open findings. */
	public static Verdict of(Audited audited) {
		if (audited instanceof Audited.Refused refused) {
			return new Verdict("bad", "\u2716", "Not checked", refused.reason());
		}
		Audited.Checked checked = (Audited.Checked) audited;
		List<Judged> open = checked.findings().stream().filter(Judged::open).toList();
		long errors = open.stream().filter(judged -> judged.finding().severity() == Severity.ERROR).count();
		long warnings = open.stream().filter(judged -> judged.finding().severity() == Severity.WARNING).count();
		long lost = open.stream().filter(Judged::openNotFollowed).count();
		String rest = lost > 0 ? " Also, " + many(lost, "place") + " could not be followed." : "";
		if (errors > 0) {
			return new Verdict("bad", "\u2716", "Do not run", many(errors, "error") + (warnings > 0 ? ", " + many(warnings, "warning") : "")
					+ "." + rest);
		}
		if (warnings > lost) {
			return new Verdict("look", "\u25b2", "Look before you run", many(warnings, "warning") + "." + rest);
		}
		if (lost > 0) {
			return new Verdict("look", "?", "Not all of it checked", many(lost, "place")
					+ " could not be followed. What is listed there was not checked.");
		}
		int operations = checked.result().operations();
		if (operations == 0) {
			return new Verdict("plain", "\u2013", "No threads here", "The program makes no threads, as far as it can be followed.");
		}
		return new Verdict("good", "\u2714", "Nothing found", "No error and no warning in "
				+ many(operations, "threading operation") + ".");
	}

	/** Puts it where nobody overlooks it. */
	void write(Html html) {
		html.raw("<p class=\"verdict " + kind + "\"><span class=\"sign\" aria-hidden=\"true\">" + sign + "</span> ")
				.element("strong", "", words).raw(" <span>").text(why).raw("</span></p>\n");
	}

	/** A sign for each severity, told apart by its shape. */
	static String sign(Severity severity) {
		return switch (severity) {
			case ERROR -> "\u2716";
			case WARNING -> "\u25b2";
			case INFORMATION -> "\u00b7";
		};
	}

	/** How many of each severity: {@code 1 error, 2 warnings, 3 information}. */
	static String counted(List<Judged> findings) {
		List<String> counts = new ArrayList<>();
		for (Severity severity : Severity.values()) {
			long count = findings.stream().filter(judged -> judged.finding().severity() == severity).count();
			if (count > 0) {
				counts.add(severity == Severity.INFORMATION ? count + " information"
						: many(count, severity.name().toLowerCase(Locale.ROOT)));
			}
		}
		return String.join(", ", counts);
	}

	/** {@code 1 error}, {@code 2 errors}. */
	public static String many(long count, String what) {
		return count + " " + what + (count == 1 ? "" : "s");
	}
}
