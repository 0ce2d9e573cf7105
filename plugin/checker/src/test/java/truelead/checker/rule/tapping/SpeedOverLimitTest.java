package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/**
 * The highest speed by stock for M6, S = 1000 v / (pi 6): ten turns below it is silent, ten above it is not. The limits are common
 * practice, no source.
 */
class SpeedOverLimitTest {

	@ParameterizedTest
	@CsvSource({ "STEEL, TAP, 60", "CAST IRON, TAP, 60", "STAINLESS, TAP, 40", "TITANIUM, TAP, 25", "ALUMINIUM, TAP, 120",
			"BRASS, TAP, 120", "STEEL, FORM TAP, 75", "TITANIUM, FORM TAP, 31.25", "ALUMINIUM, FORM TAP, 150" })
	void theLimitIsThatOfTheStock(String stock, String tap, double metresPerMinute) {
		long most = Math.round(metresPerMinute * 1000 / Math.PI / 6);
		assertThat(found(stock, tap, most - 10)).as("S%d", most - 10).isFalse();
		assertThat(found(stock, tap, most + 10)).as("S%d", most + 10).isTrue();
	}

	private static boolean found(String stock, String tap, long speed) {
		return Samples.findings(MachineProfile.generic(), "(STOCK: " + stock + ")", "G21 G90 G94", "T1 M6 (M6X1 " + tap + ")",
				"S" + speed + " M3", "G84 Z-15 R40 F" + speed, "G80").stream().anyMatch(f -> f.rule().equals("speed-over-limit"));
	}
}
