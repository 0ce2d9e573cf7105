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

	@ParameterizedTest
	@CsvSource({ "700, false", "3400, false", "4200, true", "7000, true" })
	void aPointTurnsNotTwiceAsFastAsWhatTurnedItsWork(int speed, boolean told) {
		assertThat(Samples.heard(MachineProfile.named("turning"), "(M20X1.5 THREAD)\nG21 G99\nT0101\nG96 S120 M3\nG0 X19.85 Z2.\n"
				+ "G1 Z-30. F.2\nX40.\nG0 X100. Z100.\nT0303\nG97 S" + speed + " M3\nG0 X24. Z6.\nG92 X19.4 Z-25. F1.5\nX18.9\nX18.5\n"
				+ "X18.16\nG0 X100. Z100.\nM30\n").stream().anyMatch(said -> said.startsWith("speed-over-limit"))).isEqualTo(told);
	}

	@ParameterizedTest
	@CsvSource({ "15000, false", "17000, true" })
	void theSlideFollowsNoFasterThanTwentyMetresAMinute(int speed, boolean told) {
		assertThat(Samples.heard(MachineProfile.named("turning"), "G21 G99\nT0505 (OD THREAD M8X1.25)\nG97 S" + speed + " M3\nG0 X12. Z6.\n"
				+ "G92 X7.5 Z-15. F1.25\nX7.1\nX6.8\nX6.6\nX6.467\nG0 X100. Z100.\nM30\n").stream()
				.anyMatch(said -> said.startsWith("speed-over-limit"))).isEqualTo(told);
	}

	@ParameterizedTest
	@CsvSource({ "DIE M5, 2400, false", "BUTTONDIE M5, 3000, true", "DIE HEAD M5, 6000, false", "DIE HEAD M5, 7000, true" })
	void aDieTurnsMoreSlowlyThanATap(String die, int speed, boolean told) {
		assertThat(Samples.heard(MachineProfile.named("turning"), "G21 G99\nT0303 (" + die + ")\nG97 S" + speed + " M3\nG0 X0 Z6.\n"
				+ "G32 Z-12. F.8\nM4\nG32 Z6. F.8\nG0 X100. Z100.\nM30\n").stream().anyMatch(said -> said.startsWith("speed-over-limit")))
				.isEqualTo(told);
	}

	private static boolean found(String stock, String tap, long speed) {
		return Samples.findings(MachineProfile.generic(), "(STOCK: " + stock + ")", "G21 G90 G94", "T1 M6 (M6X1 " + tap + ")",
				"S" + speed + " M3", "G84 Z-15 R40 F" + speed, "G80").stream().anyMatch(f -> f.rule().equals("speed-over-limit"));
	}
}
