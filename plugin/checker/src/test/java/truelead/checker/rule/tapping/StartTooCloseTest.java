package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/** The run-up against a table of worked values: a hair below it is too close, a hair above it is not. */
class StartTooCloseTest {

	@ParameterizedTest
	@CsvFileSource(resources = "/truelead/checker/rule/spindle-run-up.csv", numLinesToSkip = 2)
	void theRunUpIsThatOfTheTable(String thread, double pitch, double speed, double time, double turns, double length) {
		MachineProfile profile = MachineProfile.generic().with("spindle-acceleration", String.valueOf(speed / 60 / time));
		assertThat(found(profile, thread, pitch, speed, length - 0.01)).isTrue();
		assertThat(found(profile, thread, pitch, speed, length + 0.01)).isFalse();
	}

	private static boolean found(MachineProfile profile, String thread, double pitch, double speed, double room) {
		return Samples.findings(profile, "G21 G90", "T1 M6 (" + thread + " TAP)", "S" + speed + " M3", "G84 Z-15 R" + room + " F"
				+ pitch * speed, "G80").stream().anyMatch(f -> f.rule().equals("start-too-close"));
	}
}
