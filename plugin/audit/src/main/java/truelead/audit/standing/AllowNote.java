package truelead.audit.standing;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import truelead.checker.CheckResult;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFile;
import truelead.checker.rule.Finding;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/**
 * A line with an ALLOW note that accepts a finding in its operation. Where it goes is tried out: a place counts only if the check then has
 * the finding accepted, and says all else as it did before.
 *
 * @param line the line, from 0, that the note comes before
 * @param text the line without its end, in capitals, as every control takes it
 */
public record AllowNote(int line, String text) {

	/** Longest reason taken over, characters; many controls stop at a line of about a hundred. */
	private static final int LONGEST_REASON = 60;

	/**
	 * The note for a finding of {@code before}; empty where no place for it is found, or no letter of the reason can stand in a comment.
	 *
	 * @param check checks the program with another text, as it was checked before
	 */
	public static Optional<AllowNote> of(ProgramFile program, CheckResult before, Finding finding, String reason,
			Function<ProgramText, CheckResult> check) {
		String words = plain(reason);
		if (words.isEmpty()) {
			return Optional.empty();
		}
		String note = comment(program.text(), "ALLOW: " + finding.rule().toUpperCase(Locale.ROOT) + ", " + words);
		for (int line : places(program, before, finding)) {
			AllowNote tried = new AllowNote(line, note);
			if (accepts(before, check.apply(tried.in(program.text())), finding)) {
				return Optional.of(tried);
			}
		}
		return Optional.empty();
	}

	/** The program with the note in it, its line end like that of the line before. */
	public ProgramText in(ProgramText program) {
		return program.edit(program.lineStart(line), 0, text + lineEnd(program));
	}

	/** The line end that the program uses. */
	public String lineEnd(ProgramText program) {
		String first = program.toString().substring(0, program.lineCount() > 1 ? program.lineStart(1) : 0);
		return first.endsWith("\r\n") ? "\r\n" : first.endsWith("\r") ? "\r" : "\n";
	}

	/** Before the operation's first block, behind its tool change; for a finding on the program as a whole, below its head. */
	private static List<Integer> places(ProgramFile program, CheckResult before, Finding finding) {
		List<Integer> places = new ArrayList<>();
		if (finding.operation() >= 0 && finding.operation() < before.work().operations().size()) {
			var operation = before.work().operations().get(finding.operation());
			add(places, program, operation.block().outermost(), 0);
			operation.tool().change().ifPresent(change -> add(places, program, change.outermost(), 1));
			return places;
		}
		int line = 0;
		while (line < program.text().lineCount() && head(program.text(), line)) {
			line++;
		}
		return line < program.text().lineCount() ? List.of(line) : List.of();
	}

	private static void add(List<Integer> places, ProgramFile program, BlockRef block, int below) {
		if (block.file().name().equals(program.name()) && block.line() + below < program.text().lineCount()) {
			places.add(block.line() + below);
		}
	}

	/** The percent line, and the line with the program's number or name. */
	private static boolean head(ProgramText text, int line) {
		List<Element> elements = text.block(line).elements();
		return elements.stream().anyMatch(element -> element instanceof Element.Percent || element instanceof Element.Word word
				&& word.address() == 'O') || elements.isEmpty() && line == 0;
	}

	private static boolean accepts(CheckResult before, CheckResult after, Finding finding) {
		TreeMap<String, Integer> change = new TreeMap<>();
		before.findings().forEach(one -> change.merge(said(one), 1, Integer::sum));
		after.findings().forEach(one -> change.merge(said(one), -1, Integer::sum));
		boolean same = change.values().stream().allMatch(count -> count == 0);
		return same && accepted(after, finding) > accepted(before, finding);
	}

	private static String said(Finding finding) {
		ProgramText text = finding.at().file().text();
		String line = finding.at().line() < text.lineCount() ? text.line(finding.at().line()) : "";
		return finding.rule() + " " + finding.severity() + " " + finding.operation() + " " + line;
	}

	private static long accepted(CheckResult result, Finding finding) {
		return result.findings().stream().filter(one -> one.rule().equals(finding.rule()) && one.operation() == finding.operation()
				&& one.accepted().isPresent()).count();
	}

	/** In parentheses, or behind a semicolon where the program's own remarks all stand so. */
	private static String comment(ProgramText text, String words) {
		boolean semicolons = false;
		for (int line = text.nextLineWith("(;", 0); line < text.lineCount(); line = text.nextLineWith("(;", line + 1)) {
			for (Element element : text.block(line).elements()) {
				if (element instanceof Element.Comment comment && comment.mark() == Element.CommentMark.PARENTHESES) {
					return "(" + words + ")";
				}
				semicolons |= element instanceof Element.Comment comment && comment.mark() == Element.CommentMark.SEMICOLON;
			}
		}
		return semicolons ? "; " + words : "(" + words + ")";
	}

	/** Capitals, figures and the marks that every control takes in a comment; accents are left off. */
	private static String plain(String reason) {
		StringBuilder plain = new StringBuilder();
		String bare = Normalizer.normalize(reason, Normalizer.Form.NFD).toUpperCase(Locale.ROOT);
		for (int i = 0; i < bare.length() && plain.length() < LONGEST_REASON; i++) {
			char c = bare.charAt(i);
			boolean kept = c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || "+-*/=.,#".indexOf(c) >= 0;
			boolean mark = Character.getType(c) == Character.NON_SPACING_MARK;
			if (kept) {
				plain.append(c);
			} else if (!mark && plain.length() > 0 && plain.charAt(plain.length() - 1) != ' ') {
				plain.append(' ');
			}
		}
		return plain.toString().strip();
	}
}
