package truelead.grammar;

import org.antlr.v4.runtime.Token;

/** Reads the digits of a number. */
final class Numbers {

	private Numbers() {
	}

	/** A number token without a sign: digits with at most one point. */
	static Expression.Number read(Token token) {
		String text = token.getText();
		int point = text.indexOf('.');
		int decimals = point < 0 ? 0 : text.length() - point - 1;
		return new Expression.Number(Double.parseDouble(text), decimals, point >= 0, ExpressionReader.span(token));
	}
}
