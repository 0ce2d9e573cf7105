package truelead.forms.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How numbers are typed wrong. */
class NumberSlipTest {

	@Test
	void aDepthIsTypedWrongInEachWay() {
		assertThat(typed("-18.5")).containsExactly("", "-185", "18.5", "-28.5", "-08.5", "-81.5", "-8.5", "-118.5");
	}

	@Test
	void aNumberOfOneDigitHasNothingToSwapAndNoneToLose() {
		assertThat(typed("3")).containsExactly("", "-3", "4", "2", "33");
	}

	@Test
	void noughtIsOnlyLeftOut() {
		assertThat(typed("0.")).containsExactly("");
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
