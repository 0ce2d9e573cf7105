package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import truelead.checker.rulebook.Rules;

/** A slip that nothing tells of silences nobody: every one is told by a rule, always, in a program of a page, or in one of these. */
class SlipsToldTest {

	/** Four M8 in a plate. */
	private static final String TAPPED = """
			G21 G90 G94 G17
			T1 M6 (DRILL 6.8)
			G54 G0 X10 Y10 S2300 M3
			G43 H1 Z20
			G81 Z-26 R3 F350
			X40
			X70
			X100
			G80
			T2 M6 (4X M8X1.25 TAP)
			G0 X10 Y10 S400 M3
			G43 H2 Z20
			G84 Z-18 R4 F500
			X40
			X70
			X100
			G80
			M30
			""";

	/** M27x2 up by full circles of R3.5. */
	private static final String MILLED = """
			G21 G90 G17
			T1 M6 (DRILL 25)
			G54 G0 X50 Y0 S600 M3
			G43 H1 Z10
			G81 Z-36 R2 F100
			G80
			T2 M6 (M27X2 THREAD MILL D20 SINGLE)
			G0 X50 Y0 S1800 M3
			G43 H2 Z10
			G0 Z-28
			G3 X53.5 Y0 Z-27.5 I1.75 J0 F180
			CIRCLES
			G3 X50 Y0 Z3 I-1.75 J0
			G0 Z10
			M30
			""".replace("CIRCLES", circles());

	/** The same in increments. */
	private static final String INCREMENTS = MILLED.substring(0, MILLED.indexOf("G3 X53.5")) + "G91 G3 X3.5 Y0 Z.5 I1.75 J0 F180\n"
			+ "G3 I-3.5 J0 Z2\n".repeat(14) + "G3 X-3.5 Y0 Z.5 I-1.75 J0\nG90 G0 Z10\nM30\n";

	private static String circles() {
		StringBuilder circles = new StringBuilder();
		for (double z = -25.5; z < 3; z += 2) {
			circles.append("G3 I-3.5 J0 Z").append(z).append("\n");
		}
		return circles.toString().strip();
	}

	/** The same by arcs of three quarters of a turn. */
	private static String byThreeQuarters() {
		StringBuilder arcs = new StringBuilder();
		for (int arc = 0; arc < 20; arc++) {
			arcs.append("G3 ").append(List.of("X50 Y-3.5 I-3.5 J0", "X46.5 Y0 I0 J3.5", "X50 Y3.5 I3.5 J0", "X53.5 Y0 I0 J-3.5")
					.get(arc % 4)).append(" Z").append(-26 + 1.5 * arc).append("\n");
		}
		return MILLED.replace(circles(), arcs.toString().strip());
	}

	@Test
	void everySlipIsToldOf() {
		Set<Slip> told = EnumSet.noneOf(Slip.class);
		Rules.ALL.forEach(rule -> told.addAll(rule.tells()));
		Rules.pages().forEach(page -> PageSample.of(page, RulePage.Heading.FOUND)
				.forEach(sample -> SampleCheck.findings(sample, sample.program()).forEach(finding -> told.addAll(finding.tells()))));
		assertThat(EnumSet.complementOf(EnumSet.copyOf(told)))
				.as("a slip that no rule tells of is dead; one that only some findings tell of has a program on the rule's page, or here")
				.allSatisfy(slip -> assertThat(program(slip)).isNotEmpty());
	}

	@ParameterizedTest
	@EnumSource(Slip.class)
	void itsProgramTellsOfIt(Slip slip) {
		String program = program(slip);
		if (!program.isEmpty()) {
			assertThat(program).as("the slip is made").isNotIn(TAPPED, MILLED, INCREMENTS, byThreeQuarters());
			assertThat(SampleCheck.of(program)).flatExtracting(Finding::tells).contains(slip);
		}
	}

	@Test
	void withoutASlipTheProgramsAreGood() {
		assertThat(SampleCheck.loud(TAPPED)).isEmpty();
		assertThat(SampleCheck.loud(MILLED)).isEmpty();
		assertThat(SampleCheck.loud(INCREMENTS)).isEmpty();
		assertThat(SampleCheck.loud(byThreeQuarters())).isEmpty();
	}

	/** A program with that slip in it; empty for those that a page shows, or that a rule always tells of. */
	private static String program(Slip slip) {
		return switch (slip) {
			case FEED_IN_OFF -> TAPPED.replace("G84 Z-18 R4 F500\nX40\nX70\nX100\nG80", "G0 Z6\nG63 Z-18 F400\nG63 Z6 F500 M4");
			case OTHER_TOOL -> TAPPED.replace("T1 M6", """
					T3 M6 (CENTRE DRILL)
					G54 G0 X10 Y10 S2300 M3
					G43 H3 Z20
					G81 Z-3 R3 F100
					G80
					T12 M6""");
			case OTHER_THREADS_HOLE -> TAPPED.replace("DRILL 6.8", "DRILL 8.5");
			case POSITION_LEFT_OUT -> TAPPED.replace("R4 F500\nX40\nX70\nX100", "R4 F500\nX40\nX40");
			case HELIX_AND_DRILL -> MILLED.replace("M27X2 ", "M27X3 ");
			case PATH_AND_DRILL -> MILLED.replace("M27X2 ", "M30X2 ");
			case CENTRE_WITH_RADIUS -> INCREMENTS.replace("G3 I-3.5", "G3 I-3");
			case OTHER_CIRCLE -> MILLED.replace("I-3.5 J0 Z-13.5", "I-35 J0 Z-13.5");
			case SHORT_WAY_ROUND -> byThreeQuarters().replace("G3 ", "G2 ");
			case LEVEL_FAR_OFF -> MILLED.replace("Z-25.5", "Z-255");
			case LEAD_OUT_MISSING -> INCREMENTS.replace("G3 I-3.5 J0 Z2\nG3 X-3.5 Y0 Z.5 I-1.75 J0\n", "");
			case RIGID_CODE_LEFT_OUT -> TAPPED.replace("4X ", "").replace("S400 M3", "")
					.replace("G84 Z-18 R4 F500\nX40\nX70",
							"M29 S400\nG84 Z-18 R4 F500\nX40\nG80\nT3 M6 (M8X1.25 TAP)\nG0 X70 Y10\nG43 H3 Z20\nG84 Z-18 R4 F500");
			case ABOVE_WORK -> INCREMENTS.replace("G0 Z-28", "G0 Z28");
			default -> "";
		};
	}
}
