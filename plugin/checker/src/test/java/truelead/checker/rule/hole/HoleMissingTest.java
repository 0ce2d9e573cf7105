package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** A whole pattern without holes: made elsewhere, or meant for holes that nothing threads. */
class HoleMissingTest {

	private static Finding missing(String drilling, String between, String tapping) {
		List<String> blocks = new ArrayList<>(List.of("O1", "G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3"));
		blocks.addAll(List.of(drilling.split(";")));
		blocks.add("G80");
		blocks.addAll(List.of(between.split(";")));
		blocks.addAll(List.of("T2 M6 (M6X1 TAP)", "S500 M3"));
		blocks.addAll(List.of(tapping.split(";")));
		blocks.addAll(List.of("G80", "M30"));
		return Samples.findings(blocks.toArray(String[]::new)).stream().filter(f -> f.rule().equals("hole-missing")).findFirst()
				.orElseThrow();
	}

	@Test
	void drilledUnderOneOffsetAndTappedUnderAnother() {
		Finding finding = missing("G54 G81 X10 Y10 Z-20 R3 F200;X30;X50", "G0 Z50", "G55 G84 X10 Y10 Z-12 R5 F500;X30");
		assertThat(finding.severity()).isEqualTo(Severity.ERROR);
		assertThat(finding.message()).contains("2 holes, the first at X10 Y10 under another work offset or shift, are made and "
				+ "never threaded");
	}

	@Test
	void notWhereItsDrillingBlockCouldNotBeRead() {
		assertThat(Samples.findings("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G81 X10 Y10 Z-20 R3 F200", "X3..0", "X50", "G80",
				"T2 M6 (M6X1 TAP)", "S500 M3", "G84 X10 Y10 Z-12 R5 F500", "X30", "X50", "G80", "M30")).extracting(Finding::rule)
				.contains("not-understood").doesNotContain("hole-missing");
		assertThat(missing("G81 X10 Y10 Z-20 R3 F200;X50", "G0 Z50", "G84 X10 Y10 Z-12 R5 F500;X30;X50").severity())
				.isEqualTo(Severity.ERROR);
	}

	@Test
	void aProgramThatIsNotHereMayDrillTheOthers() {
		for (String drilling : List.of("G81 X10 Y10 Z-20 R3 F200;M98 P777", "G0 X10 Y10;M98 P777")) {
			Finding finding = missing(drilling, "G0 Z50", "G84 X10 Y10 Z-12 R5 F500;X30;X50");
			assertThat(finding.severity()).as(drilling).isEqualTo(Severity.INFORMATION);
			assertThat(finding.message()).contains("by the program that line 6 calls, which is not here?");
		}
		assertThat(missing("G81 X10 Y10 Z-20 R3 F200;X30", "G0 Z50;M98 P777;G0 Z50", "G84 X10 Y10 Z-12 R5 F500;X30;X50").severity())
				.as("drills are known to make holes").isEqualTo(Severity.INFORMATION);
		assertThat(missing("G81 X10 Y10 Z-20 R3 F200;X30", "T3 M6 (SPOT DRILL 90);M98 P777", "G84 X10 Y10 Z-12 R5 F500;X30;X50").severity())
				.as("a spot drill makes none").isEqualTo(Severity.ERROR);
		assertThat(missing("G81 X10 Y10 Z-20 R3 F200;X30", "G0 Z50", "G84 X10 Y10 Z-12 R5 F500;X30;X50;G80;M98 P777").severity())
				.as("called behind").isEqualTo(Severity.ERROR);
	}

	/** A wrong number in the call of a drilling pattern must not pass for information alone. */
	@Test
	void aDrillThatCallsAProgramThatIsNotHereIsAWarning() {
		String[] program = {"G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G81 X10 Y10 Z-20 R3 F200", "M98 P777", "G80", "T2 M6 (M6X1 TAP)",
				"S500 M3", "G84 X10 Y10 Z-12 R5 F500", "X30", "G80", "M30"};
		assertThat(called(program)).isEqualTo(Severity.WARNING);
		program[1] = "T1 M6 (FACE MILL 80)";
		assertThat(called(program)).isEqualTo(Severity.INFORMATION);
	}

	private static Severity called(String[] program) {
		return Samples.findings(program).stream().filter(f -> f.rule().equals("not-followed") && f.message().contains("program 777"))
				.findFirst().orElseThrow().severity();
	}

	@Test
	void aDistanceModeThatWasLeftOnIsSaidOnce() {
		assertThat(Samples.findings("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G0 X10 Y10 Z50", "G81 X10 Y10 Z-20 R3 F200", "G91 X30",
				"G80", "T2 M6 (M6X1 TAP)", "S500 M3", "G0 X10 Y10", "G84 X10 Y10 Z-12 R5 F500", "X30", "G80", "M30").stream()
				.filter(f -> f.severity() != Severity.INFORMATION)).extracting(Finding::rule).containsExactly("plane-heights-wrong");
	}

	@Test
	void asManyHolesOfTheRightSizeSomewhereElse() {
		Finding finding = missing("G81 X10 Y10 Z-20 R3 F200;X30", "G0 Z50", "G84 X-10 Y10 Z-12 R5 F500;X-30");
		assertThat(finding.severity()).isEqualTo(Severity.ERROR);
		assertThat(finding.message()).contains("2 holes, the first at X10 Y10, are made and never threaded: see the positions of the tool");
	}

	@Test
	void otherHolesSayNothing() {
		assertThat(missing("G81 X10 Y10 Z-20 R3 F200;X30;X50", "G0 Z50", "G84 X-10 Y10 Z-12 R5 F500;X-30").severity())
				.as("three drilled, two tapped").isEqualTo(Severity.INFORMATION);
		assertThat(missing("G54 G81 X0 Y0 Z-20 R3 F200", "G0 Z50", "G55 G84 X0 Y0 Z-12 R5 F500").severity())
				.as("each part has something at its zero").isEqualTo(Severity.INFORMATION);
		assertThat(missing("G54 G81 X10 Y10 Z-8 R3 F200", "G0 Z50", "G55 G84 X10 Y10 Z-12 R5 F500").severity())
				.as("not deep enough: for a dowel").isEqualTo(Severity.INFORMATION);
		assertThat(missing("G54 G81 X10 Y10 Z-20 R3 F200", "G0 Z50", "G55 G84 X10 Y10 Z-12 R5 F500").severity())
				.as("drilled for it, at the same coordinates").isEqualTo(Severity.ERROR);
	}

	@Test
	void whatAnotherProgramOfTheFileDrillsIsMadeElsewhere() {
		assertThat(missing("G81 X10 Y10 Z-20 R3 F200;X30", "M30;O2;G21 G90", "G84 X10 Y10 Z-12 R5 F500;X30").severity())
				.isEqualTo(Severity.INFORMATION);
	}

	@Test
	void placesInTheUnitThatIsLeftOutAreOneSlipWithIt() {
		String mixed = """
				G21 G90
				T1 M6 (5.5 DRILL)
				S2000 M3
				G0 X25.4 Y25.4 Z25
				G81 Z-22 R2 F200
				X76.2
				G80
				T2 M6 (1/4-28 UNF TAP)
				G20
				S500 M3
				G0 X1. Y1. Z1.
				G84 Z-.6 R.2 F17.857
				X3.
				G80
				M30
				""";
		assertThat(Samples.heard(mixed)).isEmpty();
		assertThat(Samples.heard(mixed.replace("G20\n", ""))).singleElement().asString().startsWith("inch-metric-mixup");
	}

	@Test
	void aFacedPartHasItsHolesAsAnyOther() {
		String part = """
				G17 G90 G94 G71
				T="PLANFRAESER_80" M6
				S1500 M3 D1
				CYCLE61(50,0,2,-1,0,0,150,90,1,60,0,600,31,0,1,11010)
				T="BOHRER_8.5" M6
				S2800 M3 F420 D1
				G0 X0 Y0 Z50
				MCALL CYCLE83(50,-1,2,-32,,-10,,2,0,0,1,0,0)
				X15 Y15
				X135 Y15
				MCALL
				T="GEW_M10" M6
				D1
				MCALL CYCLE84(50,-1,5,-22,,0.1,5,,1.5,0,450,600)
				X15 Y15
				X135 Y15
				MCALL
				M30
				""";
		assertThat(Samples.heard(part)).isEmpty();
		assertThat(Samples.heard(part.replace("X135 Y15\nMCALL\nM30", "X135 Y51\nMCALL\nM30"))).singleElement().asString()
				.startsWith("hole-missing").contains("X135 Y51");
	}
}
