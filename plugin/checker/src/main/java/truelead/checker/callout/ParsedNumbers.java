package truelead.checker.callout;

import java.util.Optional;
import org.antlr.v4.runtime.Token;
import truelead.checker.program.LengthUnit;

/** The numbers of the parse tree: decimal comma or point, fractions, marks of inch and mm. */
final class ParsedNumbers {
	private ParsedNumbers() {
	}

	/** The value of a number token; one that is too long for a number is infinite and plausible as nothing. */
	static double value(Token token) {
		return Double.parseDouble(token.getText().replace(',', '.'));
	}

	/** A number behind NO: in NO.10 the point belongs to NO. */
	static String withoutPointOf(String number) {
		return number.startsWith(".") ? number.substring(1) : number;
	}

	/** A decimal, a fraction or a mixed number. */
	static double value(CalloutParser.DimensionContext dimension) {
		if (dimension.decimal != null) {
			return value(dimension.decimal);
		}
		double whole = dimension.whole == null ? 0 : value(dimension.whole);
		return whole + value(dimension.numerator) / value(dimension.denominator);
	}

	/** Halves to 64ths, the fractions that rulers and drills have, written as whole numbers. */
	static boolean inchFraction(CalloutParser.DimensionContext dimension) {
		if (dimension.decimal != null) {
			return false;
		}
		double denominator = value(dimension.denominator);
		double numerator = value(dimension.numerator);
		return (denominator == 2 || denominator == 4 || denominator == 8 || denominator == 16 || denominator == 32 || denominator == 64)
				&& numerator == Math.rint(numerator) && numerator > 0 && numerator < denominator
				&& (dimension.whole == null || value(dimension.whole) == Math.rint(value(dimension.whole)));
	}

	/** A length; a fraction of 64ths is in inches, a bare number in no stated unit. */
	static Dimension length(CalloutParser.DimensionContext dimension, CalloutParser.UnitContext unit) {
		Optional<LengthUnit> stated = unit != null ? Optional.of(unit.MM() != null ? LengthUnit.MM : LengthUnit.INCH)
				: inchFraction(dimension) ? Optional.of(LengthUnit.INCH) : Optional.empty();
		return new Dimension(value(dimension), stated);
	}
}
