package truelead.checker.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.checker.machine.Budget;
import truelead.checker.program.ProgramFolder;
import truelead.checker.work.Work;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/**
 * Tells what may be typed at a place of a program: words with the values in force, codes with their meanings, and in comments threads and
 * our notes.
 */
public final class Completion {

	private Completion() {
	}

	/**
	 * The proposals for a place, best first.
	 *
	 * @param work   the work of this text or one a little older: its machine profile, tools and threads
	 * @param offset 0 to the length of the text
	 * @param budget how far the program is followed for the values in force
	 */
	public static List<Proposal> at(ProgramText text, ProgramFolder folder, Work work, int offset, Budget budget) {
		int line = text.lineOf(offset);
		int start = text.lineStart(line);
		int column = Math.min(offset - start, text.line(line).length());
		Block block = text.block(line);
		Optional<Element.Comment> comment = comment(block, column);
		if (comment.isPresent()) {
			int from = comment.get().textSpan().start();
			return new CommentCompletion(work, block.text().substring(from, column), start + column).proposals();
		}
		Span partial = partial(block, column);
		String written = block.text().substring(partial.start(), column).toUpperCase(Locale.ROOT);
		if (written.isEmpty() && column < block.text().length() && block.text().charAt(column) > ' ' && !startsElement(block, column)) {
			return List.of();
		}
		return new WordCompletion(text, folder, work, line, budget).proposals(block, written, start + partial.start(),
				column - partial.start());
	}

	private static Optional<Element.Comment> comment(Block block, int column) {
		return block.comments().stream().filter(comment -> comment.textSpan().start() <= column
				&& (column <= comment.textSpan().end() || !comment.closed())).findFirst();
	}

	/** What is being typed before the column: the part of a block that ends there, or nothing. */
	private static Span partial(Block block, int column) {
		for (Element element : block.elements()) {
			if (element.span().start() < column && column <= element.span().end()) {
				return new Span(element.span().start(), column);
			}
		}
		return new Span(column, column);
	}

	private static boolean startsElement(Block block, int column) {
		return block.elements().stream().anyMatch(element -> element.span().start() == column);
	}
}
