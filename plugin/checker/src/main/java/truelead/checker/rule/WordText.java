package truelead.checker.rule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.WordRef;
import truelead.grammar.Block;
import truelead.grammar.Expression;

/**
 * A word with another value, as its programmer would write it: same case and space after the letter, a point where the old value had one,
 * no leading zero where the old value had none, no fewer decimals than before.
 */
public final class WordText {

	/** Places in millimetres that are one: no control has a finer step. */
	private static final double SAME = 1e-3;

	private WordText() {
	}

	/**
	 * The text that replaces a word that is a plain number.
	 *
	 * @param value       the new value in the word's own unit
	 * @param maxDecimals decimals that may be needed at most; fewer are written where they say the same
	 */
	public static String rewrite(WordRef word, double value, int maxDecimals) {
		String old = word.written();
		int digits = 1;
		while (digits < old.length() && old.charAt(digits) <= ' ') {
			digits++;
		}
		return old.substring(0, digits) + number(old.substring(digits), value, word.decimals(), maxDecimals);
	}

	/** The new word without white space, for messages; {@code value} in the word's own unit. */
	public static String shown(WordRef word, double value, int maxDecimals) {
		return Figures.tight(rewrite(word, value, maxDecimals));
	}

	/**
	 * A number, in the program's own unit, of a word that is not there yet: no point where it is a whole number and {@code point} is false.
	 */
	public static String fresh(double value, int maxDecimals, boolean point) {
		String text = Figures.number(value, maxDecimals);
		return point && !text.contains(".") ? text + "." : text;
	}

	/**
	 * The word of a block that says a place as a plain number: not in increments, nor where a shift, a rotation or a scale is in force.
	 *
	 * @param place the place, mm
	 * @param unit  the program's unit, mm
	 */
	public static Optional<WordRef> saying(BlockRef block, char address, double place, double unit) {
		Block read = block.file().text().block(block.line());
		return read.words().stream().filter(word -> word.address() == address && word.value() instanceof Expression.Number number
				&& Math.abs(number.value() * unit - place) < SAME).map(word -> WordRef.of(block, word, read.text())).findFirst();
	}

	private static String number(String old, double value, int decimals, int maxDecimals) {
		BigDecimal exact = BigDecimal.valueOf(value).setScale(Math.max(decimals, maxDecimals), RoundingMode.HALF_UP);
		BigDecimal shortest = exact.stripTrailingZeros();
		BigDecimal shown = shortest.scale() < decimals ? shortest.setScale(decimals) : shortest.scale() < 0
				? shortest.setScale(0) : shortest;
		String text = shown.toPlainString();
		boolean point = old.indexOf('.') >= 0;
		if (point && text.indexOf('.') < 0) {
			text += ".";
		}
		boolean bare = old.startsWith(".") || old.startsWith("-.") || old.startsWith("+.");
		if (bare && text.startsWith("0.") && text.length() > 2) {
			text = text.substring(1);
		} else if (bare && text.startsWith("-0.") && text.length() > 3) {
			text = "-" + text.substring(2);
		}
		return text;
	}
}
