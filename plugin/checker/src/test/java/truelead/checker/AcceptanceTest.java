package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.rule.Finding;

class AcceptanceTest {

	private static Finding offPitch(String head, String inOperation) {
		List<String> blocks = new ArrayList<>(List.of("O100", head, "G21 G17 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3",
				"G43 H1 Z50.", "G81 Z-20. R2. F200.", "G80", "G0 Z100.", "T2 M6 (M6X1 TAP)", inOperation, "G54 G0 X10. Y10. S520 M3",
				"G43 H2 Z50.", "G84 Z-12. R5. F500.", "G80", "M30"));
		return Samples.findings(blocks.toArray(String[]::new)).stream().filter(f -> f.rule().equals("feed-off-pitch")).findFirst()
				.orElseThrow();
	}

	@Test
	void aNoteInTheOperationAcceptsWithItsReason() {
		assertThat(offPitch("", "(ALLOW: feed-off-pitch, FLOATING HOLDER 3)").accepted()).contains("FLOATING HOLDER 3");
	}

	@Test
	void aNoteAtTheHeadAcceptsEverywhere() {
		assertThat(offPitch("(ALLOW: feed-off-pitch, PROVEN ON 200 PARTS)", "").accepted()).contains("PROVEN ON 200 PARTS");
	}

	@Test
	void aNoteWithoutAReasonAcceptsNothing() {
		assertThat(offPitch("", "(ALLOW: feed-off-pitch)").accepted()).isEmpty();
	}

	@Test
	void aNoteForAnotherRuleAcceptsNothing() {
		assertThat(offPitch("", "(ALLOW: hole-missing, MADE BEFORE)").accepted()).isEmpty();
	}
}
