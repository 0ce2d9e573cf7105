package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.rule.Finding;

class DrilledAfterThreadingTest {

	/** A place that is drilled in two hundred blocks alike, tapped, and drilled once more. */
	@Test
	void theOneTooManyIsFoundBehindTwoHundredAlike() {
		List<String> lines = new ArrayList<>(List.of("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G43 H1 Z50.", "G81 X10. Y10. Z-20. R2. F200."));
		lines.addAll(Collections.nCopies(199, "X10. Y10."));
		lines.addAll(List.of("G80", "T2 M6 (M6X1 TAP)", "S500 M3", "G43 H2 Z50.", "G84 X10. Y10. Z-12. R4. F500.", "G80", "T1 M6 (DRILL 5.0)", "S2000 M3",
				"G43 H1 Z50.", "G81 X10. Y10. Z-20. R2. F200.", "G80", "M30"));
		List<Finding> found = new ArrayList<>();
		new DrilledAfterThreading().check(work(lines.toArray(String[]::new)), found::add);
		assertThat(found).singleElement().satisfies(finding -> assertThat(finding.at().line()).isEqualTo(lines.size() - 3));
	}
}
