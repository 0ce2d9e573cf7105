package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;

class DrilledAfterThreadingTest {

	private static final List<String> PART = List.of("O2", "T0202 (3.3 DRILL)", "G97 S2500 M3", "G0 X0 Z3", "G83 Z-14 Q3000 F.08", "G80",
			"G0 Z50", "T0303 (M4 TAP)", "G97 S600 M3", "G0 X0 Z5", "G84 Z-9 F.7", "G80", "G0 Z50");
	private static final List<String> MILLED = List.of("O2", "T2 M6 (3.3 DRILL)", "S2500 M3", "G0 X0 Y0 Z3", "G83 R3 Z-14 Q3 F150", "G80",
			"T3 M6 (M4 TAP)", "S600 M3", "G0 X0 Y0 Z5", "G84 R5 Z-9 F420", "G80");

	/** A place that is drilled in two hundred blocks alike, tapped, and drilled once more. */
	@Test
	void theOneTooManyIsFoundBehindTwoHundredAlike() {
		List<String> lines = new ArrayList<>(List.of("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G43 H1 Z50.",
				"G81 X10. Y10. Z-20. R2. F200."));
		lines.addAll(Collections.nCopies(199, "X10. Y10."));
		lines.addAll(List.of("G80", "T2 M6 (M6X1 TAP)", "S500 M3", "G43 H2 Z50.", "G84 X10. Y10. Z-12. R4. F500.", "G80",
				"T1 M6 (DRILL 5.0)", "S2000 M3", "G43 H1 Z50.", "G81 X10. Y10. Z-20. R2. F200.", "G80", "M30"));
		List<Finding> found = new ArrayList<>();
		new DrilledAfterThreading().check(work(lines.toArray(String[]::new)), found::add);
		assertThat(found).singleElement().satisfies(finding -> assertThat(finding.at().line()).isEqualTo(lines.size() - 3));
	}

	/** The next part of the bar on a lathe, the same part on a mill. */
	@ParameterizedTest
	@CsvSource({"turning, M98 P2 L3, , false", "milling-metric, M98 P2 L3, , true", "turning, M98 P2, G0 X0 Z3;G1 Z-14 F.1;G0 Z3, true"})
	void onlyALatheMakesTheNextPartInTheSamePlace(String profile, String call, String then, boolean said) {
		List<String> blocks = new ArrayList<>(List.of("O1", "G21", call, "M30"));
		blocks.addAll(profile.equals("turning") ? PART : MILLED);
		if (then != null) {
			blocks.add("T0202 (3.3 DRILL)");
			blocks.addAll(List.of(then.split(";")));
		}
		blocks.add("M99");
		assertThat(Samples.findings(MachineProfile.named(profile), blocks.toArray(String[]::new)))
				.filteredOn(f -> f.rule().equals("drilled-after-threading")).hasSize(said ? 1 : 0);
	}
}
