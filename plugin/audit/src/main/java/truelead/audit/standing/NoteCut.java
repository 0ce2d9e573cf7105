package truelead.audit.standing;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Allowance;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/**
 * What is cut out of a program to take an ALLOW note back: the comment, or its whole line where nothing else stands in it.
 *
 * @param offset first character in the program's text
 * @param length characters
 */
public record NoteCut(int offset, int length) {

	/** The cut for a note of that text; empty where the note is not there any more. */
	public static Optional<NoteCut> of(ProgramText text, Allowance note) {
		int line = note.at().line();
		if (line >= text.lineCount()) {
			return Optional.empty();
		}
		List<Element> elements = text.block(line).elements();
		int start = text.lineStart(line);
		return elements.stream().filter(element -> element instanceof Element.Comment && element.span().start() <= note.at().span().start()
				&& note.at().span().end() <= element.span().end()).findFirst().map(comment -> {
					if (elements.size() > 1) {
						return new NoteCut(start + comment.span().start(), comment.span().length());
					}
					int end = line + 1 < text.lineCount() ? text.lineStart(line + 1) : text.length();
					return new NoteCut(start, end - start);
				});
	}
}
