package truelead.forms.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How numbers are typed wrong. */
class NumberSlipTest {

	@Test
	void aDepthIsTypedWrongInEachWay() {
		assertThat(typed("-18.5")).containsExactly("", "-185", "18.5", "-28.5", "-08.5", "-81.5", "-8.5", "-118.5", "-185.", "-1.85");
	}

	@Test
	void aNumberOfOneDigitHasNothingToSwapAndNoneToLose() {
		assertThat(typed("3")).containsExactly("", "-3", "4", "2", "33", "30", "0.3");
	}

	@Test
	void noughtIsOnlyLeftOut() {
		assertThat(typed("0.")).containsExactly("");
	}

	@Test
	void aPointOrANoughtIsAPlaceOff() {
		assertThat(NumberSlip.TEN_TIMES.of("150")).contains("1500");
		assertThat(NumberSlip.A_TENTH.of("150")).contains("15");
		assertThat(NumberSlip.TEN_TIMES.of(".15")).contains("1.5");
		assertThat(NumberSlip.A_TENTH.of("2500.")).contains("250.");
	}

	@Test
	void whatAParameterSaysHasNoPointToMove() {
		assertThat(NumberSlip.TEN_TIMES.of("=R5")).isEmpty();
		assertThat(NumberSlip.A_TENTH.of("=R5")).isEmpty();
	}

	@Test
	void aPointWithNothingBehindItIsNoSlip() {
		assertThat(NumberSlip.POINT_LOST.of("5.")).isEmpty();
		assertThat(NumberSlip.POINT_LOST.of(".5")).contains("5");
	}

	private static List<String> typed(String number) {
		return Arrays.stream(NumberSlip.values()).flatMap(slip -> slip.of(number).stream()).toList();
	}
}
