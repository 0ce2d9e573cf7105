package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** A hole in the side of a turned part, drilled by feed moves along X of a driven tool. */
class SideHoleTest {

	private static List<Finding> found(String drill, String to, String tap) {
		return Samples.findings(MachineProfile.named("turning"), "G21 G98", "T0808 (" + drill + ")", "S3500 M13", "G0 C0", "G0 X24. Z-12.",
				"G1 X" + to + " F180", "G0 X24.", "G0 X80. Z20.", "T0909 (M4 TAP)", "S400 M13", "G0 C0", "G0 X28. Z-12.",
				"G88 X" + tap + " R0 F280", "G80", "G0 X80. Z20.", "M15", "M30");
	}

	private static List<String> loud(String drill, String to, String tap) {
		return found(drill, to, tap).stream().filter(f -> f.severity() != Severity.INFORMATION).map(Finding::rule).toList();
	}

	@Test
	void isHeldToItsThread() {
		assertThat(found("3.3 DRILL", "0", "8.")).noneMatch(f -> f.rule().equals("hole-missing"));
		assertThat(loud("3.3 DRILL", "0", "8.")).isEmpty();
		assertThat(loud("3.8 DRILL", "0", "8.")).containsExactly("drill-too-big");
		assertThat(loud("3.3 DRILL", "8.", "8.")).containsExactly("drill-too-shallow");
	}

	@Test
	void pastTheAxisItGoesThrough() {
		assertThat(loud("3.3 DRILL", "-9.", "-10.")).isEmpty();
	}

	@Test
	void intoTheBoreOfAHollowPartItGoesThrough() {
		String program = """
				G21 G99
				T0101 (BORING BAR)
				G96 S150 M3
				G0 X16. Z2.
				G1 Z-30. F.1
				X14.
				G0 Z80.
				G98
				T0808 (3.3 DRILL)
				S3500 M13
				G0 X34. Z-12. C0
				G87 X%s R-2. F200
				G80
				G0 X80. Z20.
				T0909 (M4 TAP)
				S400 M13
				G0 X34. Z-12. C0
				G88 X13. R-2. F280
				G80
				G0 X80. Z20.
				M30
				""";
		assertThat(Samples.heard(MachineProfile.named("turning"), program.formatted("12."))).isEmpty();
		assertThat(Samples.heard(MachineProfile.named("turning"), program.formatted("12.").replace("Z-30.", "Z-10.")))
				.as("where the bore does not reach").singleElement().asString().startsWith("drill-too-shallow");
	}

	@Test
	void aGrooveIsNoHole() {
		assertThat(found("GROOVE 3MM", "8.", "8.")).anySatisfy(f -> {
			assertThat(f.rule()).isEqualTo("hole-missing");
			assertThat(f.severity()).isEqualTo(Severity.INFORMATION);
		});
	}
}
