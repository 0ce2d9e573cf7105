package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.program.LengthUnit;

/** Numbers are shown in the program's unit, with the decimals of the shop. */
class FiguresTest {

	private final Figures mm = new Figures(LengthUnit.MM);
	private final Figures inch = new Figures(LengthUnit.INCH);

	@Test
	void lengthsAreShownWithoutTrailingZeros() {
		assertThat(mm.length(12.5)).isEqualTo("12.5 mm");
		assertThat(inch.length(12.7)).isEqualTo("0.5 in");
		assertThat(mm.length(-0.001)).isEqualTo("0 mm");
	}

	@Test
	void pitchesKeepTheirDecimals() {
		assertThat(mm.advance(500.0 / 520)).isEqualTo("0.962");
		assertThat(inch.advance(25.4 / 20)).isEqualTo("0.05000");
	}

	@Test
	void limitsAreShownToTheLastFigure() {
		assertThat(mm.fine(6.912)).isEqualTo("6.912 mm");
		assertThat(inch.fine(0.1959 * 25.4)).isEqualTo("0.1959 in");
	}

	@Test
	void whatIsNotANumberIsAQuestionMark() {
		assertThat(Figures.number(Double.NaN, 2)).isEqualTo("?");
	}
}
