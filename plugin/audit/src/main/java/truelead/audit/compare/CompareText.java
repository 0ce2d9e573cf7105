package truelead.audit.compare;

import java.io.PrintStream;
import java.util.Locale;
import truelead.audit.result.Judged;
import truelead.audit.terminal.Printable;

/** A comparison as lines: operations, then findings that came and went, then a summary. */
final class CompareText {

	private final PrintStream out;

	CompareText(PrintStream out) {
		this.out = out;
	}

	void write(Comparison comparison) {
		for (OperationChange change : comparison.operations()) {
			line(change.kind() + " operation, " + change.place() + ": " + change.name());
			change.changes().forEach(clause -> line("    " + clause));
		}
		comparison.came().forEach(judged -> finding("new ", comparison.after().shown(judged.finding().at()), judged));
		comparison.went().forEach(judged -> finding("gone ", comparison.before().shown(judged.finding().at()), judged));
		if (!comparison.nothing()) {
			out.print('\n');
		}
		line(count(comparison.operations().size(), "threading operation") + " different, " + comparison.same() + " the same; "
				+ count(comparison.came().size(), "finding") + " new, " + comparison.went().size() + " gone, " + comparison.stayed()
				+ " as before");
		out.flush();
	}

	private void finding(String kind, String shown, Judged judged) {
		line(kind + shown + ":" + (judged.finding().at().line() + 1) + ":" + (judged.finding().at().span().start() + 1) + " "
				+ judged.finding().severity().name().toLowerCase(Locale.ROOT) + " " + judged.finding().rule() + " "
				+ judged.finding().message() + judged.acceptance().map(why -> " (accepted: " + why.reason() + ")").orElse(""));
	}

	private void line(String text) {
		out.print(Printable.line(text) + "\n");
	}

	private static String count(int count, String what) {
		return count + " " + what + (count == 1 ? "" : "s");
	}
}
