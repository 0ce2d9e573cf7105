package truelead.checker.edit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalInt;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** Finds the other one of two brackets in a block: the ends of a comment, or brackets of an expression. */
public final class Brackets {

	private Brackets() {
	}

	/** The column of the bracket that belongs to the one at a column; empty where there is none at it, or it has no other. */
	public static OptionalInt partner(Block block, int column) {
		String text = block.text();
		if (column < 0 || column >= text.length() || "()[]".indexOf(text.charAt(column)) < 0) {
			return OptionalInt.empty();
		}
		for (Element.Comment comment : block.comments()) {
			if (comment.span().start() <= column && column < comment.span().end()) {
				return partner(comment, column);
			}
		}
		return inExpressions(block, column);
	}

	private static OptionalInt partner(Element.Comment comment, int column) {
		int last = comment.span().end() - 1;
		if (comment.mark() != Element.CommentMark.PARENTHESES || !comment.closed() || column != comment.span().start() && column != last) {
			return OptionalInt.empty();
		}
		return OptionalInt.of(column == last ? comment.span().start() : last);
	}

	private static OptionalInt inExpressions(Block block, int column) {
		Deque<Integer> open = new ArrayDeque<>();
		boolean quoted = false;
		for (int i = 0; i < block.text().length(); i++) {
			char c = block.text().charAt(i);
			int at = i;
			if (c == '"') {
				quoted = !quoted;
			} else if (quoted || block.comments().stream().anyMatch(comment -> comment.span().start() <= at && at < comment.span().end())) {
				continue;
			} else if (c == '[' || c == '(') {
				open.push(i);
			} else if ((c == ']' || c == ')') && !open.isEmpty() && block.text().charAt(open.peek()) == (c == ']' ? '[' : '(')) {
				int start = open.pop();
				if (start == column || i == column) {
					return OptionalInt.of(start == column ? i : start);
				}
			}
		}
		return OptionalInt.empty();
	}
}
