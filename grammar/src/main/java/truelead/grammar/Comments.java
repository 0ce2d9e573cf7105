package truelead.grammar;

import org.antlr.v4.runtime.Token;

/** Reads remarks: what is between the marks, and whether they are closed. */
final class Comments {

	private Comments() {
	}

	static Element.Comment read(Token token) {
		String text = token.getText();
		Span span = ExpressionReader.span(token);
		return switch (token.getType()) {
			case GCodeLexer.REMARK -> open(Element.CommentMark.SEMICOLON, text, 1, span);
			case GCodeLexer.SLASHES -> open(Element.CommentMark.SLASHES, text, 2, span);
			case GCodeLexer.STRING -> closed(Element.CommentMark.QUOTES, text, text.length() > 1 && text.endsWith("\""), span);
			case GCodeLexer.BRACKETED -> closed(Element.CommentMark.ANGLE_BRACKETS, text, true, span);
			default -> closed(Element.CommentMark.PARENTHESES, text, text.endsWith(")"), span);
		};
	}

	private static Element.Comment open(Element.CommentMark mark, String text, int markLength, Span span) {
		return new Element.Comment(mark, text.substring(markLength), new Span(span.start() + markLength, span.end()), true, span);
	}

	private static Element.Comment closed(Element.CommentMark mark, String text, boolean closed, Span span) {
		int end = closed ? text.length() - 1 : text.length();
		return new Element.Comment(mark, text.substring(1, end), new Span(span.start() + 1, span.start() + end), closed, span);
	}
}
