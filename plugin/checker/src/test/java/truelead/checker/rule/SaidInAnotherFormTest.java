package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;

/** What another form of the same program brought to light; each pair says the same to the machine. */
class SaidInAnotherFormTest {

	private static final String DRILLED = """
			G21 G90 G94 G17 G54
			T2 M6 (DRILL 5.0)
			G0 X10. Y10. S2500 M3
			G43 H2 Z10.
			G81 Z-18. R3. F300
			X20.
			G80
			""";

	private static List<String> rules(String program) {
		return Samples.findings(program.lines().toArray(String[]::new)).stream()
				.map(found -> found.rule() + " " + found.severity()).toList();
	}

	@Test
	void aFeedGivenToAVariableIsAsRoundedAsOneInTheCycle() {
		String tap = DRILLED + "T3 M6 (M6X1 TAP)\nG0 X10. Y10. S333 M3\nG43 H3 Z10.\n";
		String direct = tap + "G84 Z-12. R5. F333.3\nG80\nM30\n";
		String variable = tap + "#101=333.3\nG84 Z-12. R5. F#101\nG80\nM30\n";
		String macro = tap + "G65 P9100 F333.3\nM30\nO9100\nG84 Z-12. R5. F#9\nG80\nM99\n";
		assertThat(rules(variable)).isEqualTo(rules(direct));
		assertThat(rules(macro)).isEqualTo(rules(direct));
	}

	@Test
	void aComputedFeedHasNoDecimalsToExcuseIt() {
		String program = DRILLED + "T3 M6 (M6X1 TAP)\nG0 X10. Y10. S520 M3\nG43 H3 Z10.\n#1=515\nG84 Z-12. R5. F[#1+1]\nG80\nM30\n";
		assertThat(rules(program)).contains("feed-off-pitch WARNING");
	}

	@Test
	void aSpeedLeftOverIsOneWhereverTheChangeIsWritten() {
		String tail = """
				G0 X10. Y10.
				G43 H3 Z10.
				G84 Z-12. R5. F520
				X20.
				G80
				M30
				""";
		String direct = DRILLED + "T3 M6 (M6X1 TAP)\n" + tail;
		String called = DRILLED + "T3 (M6X1 TAP)\nM98 P7000\n" + tail + "O7000\nM6\nM99\n";
		assertThat(rules(direct)).contains("spindle-not-turning ERROR");
		assertThat(rules(called)).isEqualTo(rules(direct));
	}

	@Test
	void turnsInHalvesAreUnevenAsWholeOnesAre() {
		String head = """
				G21 G90 G94 G17 G54
				T1 M6 (DRILL 18.5)
				G0 X0 Y0 S700 M3
				G43 H1 Z10.
				G81 Z-16. R3. F120
				G80
				T2 M6 (THREAD MILL D12 M20X1.5)
				G0 X0 Y0 S2600 M3
				G43 H2 Z10.
				G0 Z-4.875
				G3 X4. Y0 Z-4.5 I2. J0 F120
				""";
		String end = "G3 X0 Y0 Z0.375 I-2. J0\nG0 Z10.\nM30\n";
		assertThat(rules(head + "G3 I-4. J0 Z-2.85\nG3 I-4. J0 Z-1.5\nG3 I-4. J0 Z0\n" + end)).contains("helix-uneven ERROR");
		assertThat(rules(head + "G3 X-4. I-4. J0 Z-3.675\nX4. I4. Z-2.85\nX-4. I-4. Z-2.175\nX4. I4. Z-1.5\nX-4. I-4. Z-.75\nX4. I4. Z0\n"
				+ end)).contains("helix-uneven ERROR");
		// a half turn too long and one too short make an even turn
		assertThat(rules(head + "G3 X-4. I-4. J0 Z-3.8\nX4. I4. Z-3.\nX-4. I-4. Z-2.3\nX4. I4. Z-1.5\nX-4. I-4. Z-.8\nX4. I4. Z0\n" + end))
				.doesNotContain("helix-uneven ERROR");
	}

	@Test
	void heightsOfACycleBegunInG90StayWhenItsPlacesAreIncrements() {
		String tap = DRILLED + "T3 M6 (M6X1 TAP)\nG0 X10. Y10. S520 M3\nG43 H3 Z10.\nG84 Z-12. R20. F520\n";
		assertThat(rules(tap + "G91 X10.\nG90 G80\nM30\n")).isEqualTo(rules(tap + "X20.\nG80\nM30\n"));
	}

	@Test
	void aThreadAsDeepAsIsUsualIsNotDeep() {
		String tap = """
				G21 G90 G94 G17 G54
				T2 M6 (DRILL 8.5)
				G0 X10. Y10. S2500 M3
				G43 H2 Z10.
				G81 Z-32. R3. F300
				G80
				T3 M6 (M10X1.5 TAP)
				G0 X10. Y10. S300 M3
				G43 H3 Z10.
				""";
		assertThat(rules(tap + "G84 Z-24. R6. F450\nG80\nM30\n")).doesNotContain("deep-thread INFORMATION");
		assertThat(rules(tap + "G84 Z-26. R6. F450\nG80\nM30\n")).contains("deep-thread INFORMATION");
	}

	@Test
	void aToolIsNamedBelowItsChangeInASubprogramToo() {
		String part = """
				M98 P920
				G55
				M98 P920
				M30
				O920 (PART)
				T1 M6
				(CENTER DRILL)
				S2000 M3
				G0 X0 Y0
				G43 H1 Z50.
				G81 Z-3. R2. F150
				G80
				T2 M6
				(DRILL 3.3)
				S3500 M3
				G0 X0 Y0
				G43 H2 Z50.
				G83 Z-14. R2. Q2. F250
				G80
				T3 M6
				(TAP M4)
				S600 M3
				G0 X0 Y0
				G43 H3 Z50.
				G84 Z-9. R4. F420
				G80
				M99
				""";
		assertThat(rules("G21 G17 G90 G94 G54\n" + part)).isEmpty();
	}

	@Test
	void aDrillFedByMovesIsTheDrillThatATapsNumberCalls() {
		String program = """
				G21 G90 G94 G17 G54
				T1 M6 (SPOT DRILL)
				G0 X10. Y10. S2500 M3
				G43 H1 Z10.
				G81 Z-3. R3. F200
				G80
				T2 M6 (DRILL 5.0)
				G0 X10. Y10. S2500 M3
				G43 H2 Z10.
				Z3.
				G1 Z-18. F300
				G0 Z10.
				T2 M6 (M6X1 TAP)
				G0 X10. Y10. S520 M3
				G43 H3 Z10.
				G84 Z-12. R5. F520
				G80
				M30
				""";
		assertThat(rules(program)).containsExactly("drill-in-tapping-cycle ERROR");
	}
}
