package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** Half of a pattern that is drilled again under a mirror or on another side, and never threaded there. */
class HoleSkippedTest {

	private static List<String> skipped(String drilledAgain, String tappedAgain) {
		List<String> blocks = new ArrayList<>(List.of("G21 G90", "T1 M6 (DRILL 6.8)", "S1400 M3", "G0 X10 Y10 Z50",
				"G81 X10 Y10 Z-25 R3 F180", "X40", "G80"));
		blocks.addAll(List.of(drilledAgain.split("~")));
		blocks.addAll(List.of("T2 M6 (M8 TAP)", "S400 M3", "G0 X10 Y10 Z50", "G84 X10 Y10 Z-16 R5 F500", "X40", "G80"));
		blocks.addAll(List.of(tappedAgain.split("~")));
		blocks.add("M30");
		return Samples.findings(blocks.toArray(String[]::new)).stream().filter(f -> f.rule().equals("hole-skipped"))
				.map(Finding::message).toList();
	}

	private static String again(String code, String cycle, String holes, String off) {
		return code + "~" + cycle + "~" + holes + "~G80~" + off;
	}

	private static final String DRILL = "G81 X10 Y10 Z-25 R3 F180";
	private static final String TAP = "G84 X10 Y10 Z-16 R5 F500";

	@Test
	void theMirroredHalf() {
		String drilled = again("G51.1 X0", DRILL, "X40", "G50.1 X0");
		assertThat(skipped(drilled, "M5")).singleElement().asString().contains("the hole at X-10 Y10 is drilled with the 2")
				.contains("nor are 1 more");
		assertThat(skipped(drilled, again("G51.1 X0", TAP, "X40", "G50.1 X0"))).isEmpty();
		assertThat(skipped(again("G51 X0 Y0 I-1000 J1000 K1000", DRILL, "X40", "G50"), "M5")).hasSize(1);
	}

	@Test
	void theOtherSideOfThePart() {
		assertThat(skipped(again("G0 Z200 B180", DRILL, "X40", "G0 Z200 B0"), "M5")).hasSize(1);
		assertThat(skipped(again("G0 Z200 B180", DRILL, "X40", "G0 Z200 B0"), again("G0 Z200 B180", TAP, "X40", "G0 Z200 B0"))).isEmpty();
	}

	@Test
	void aHoleDrilledFromBothSidesIsThreadedFromOne() {
		assertThat(skipped(again("G0 Z200 B180", "G81 X-10 Y10 Z-25 R3", "X-40", "G0 Z200 B0"), "M5")).isEmpty();
	}

	@Test
	void otherHolesOfThatSizeInABlockOfTheirOwn() {
		assertThat(skipped(again("G0 Z50", "G81 X-10 Y30 Z-25 R3", "X-40", "G0 Z50"), "M5")).isEmpty();
	}

	private static List<String> half(String title, String drill, String tapped) {
		return Samples.findings("(" + title + ")", "G21 G90", "T1 M6 (DRILL " + drill + ")", "S1400 M3", "G0 X10 Y10 Z50",
				"G81 X10 Y10 Z-25 R3 F180", "X40", "X70", "X100", "G80", "T2 M6 (TAP " + tapped + ")", "S400 M3", "G0 X10 Y10 Z50",
				"G84 X10 Y10 Z-12 R5 F" + (tapped.equals("M8") ? "500" : "400"), "X40", "G80", "M30").stream()
				.filter(f -> f.severity() != Severity.INFORMATION).map(f -> f.rule() + " " + f.message()).toList();
	}

	@Test
	void halfOfThePattern() {
		assertThat(half("COVER", "6.8", "M8")).as("nobody drills 6.8 for anything else").singleElement().asString()
				.startsWith("hole-skipped the hole at X70 Y10 is drilled with the 2");
		assertThat(half("COVER", "5.0", "M6")).as("two of them may be plain holes").isEmpty();
		assertThat(half("COVER, 4X M6", "5.0", "M6")).as("the title counts all four").singleElement().asString().startsWith("hole-skipped");
	}

	/** One of two, drilled 5.0, which may be a plain hole. */
	private static List<String> oneOfTwo(String otherTap) {
		return Samples.heard("G21 G90\nT1 M6 (DRILL 5.0)\nS2500 M3\nG0 X10 Y10 Z50\nG81 X10 Y10 Z-18 R3 F180\nX40\nG80\nT2 M6 (DRILL 6.8)\n"
				+ "S1400 M3\nG0 X10 Y50 Z50\nG81 X10 Y50 Z-25 R3 F180\nX40\nG80\n"
				+ "T3 M6 (TAP M6)\nS400 M3\nG0 X10 Y10 Z50\nG84 X10 Y10 Z-12 R5 F400\nG80\nT4 M6 (TAP M8)\nS400 M3\nG0 X10 Y50 Z50\n"
				+ "G84 X10 Y50 Z-16 R5 F500\n" + otherTap + "G80\nM30\n").stream().filter(message -> message.contains("T3")).toList();
	}

	@Test
	void whereTheOtherTapLeavesNone() {
		assertThat(oneOfTwo("X40\n")).singleElement().asString()
				.startsWith("hole-skipped the hole at X40 Y10 is drilled with the 1 that T3 threads, and never threaded");
		assertThat(oneOfTwo("")).as("a shop that leaves drilled holes").isEmpty();
	}

	@Test
	void whereEachHoleHasACycleOfItsOwn() {
		String drilled = "G0 X%1$s Y10\nCYCLE81(30,0,2,-30)\n";
		String tapped = "G0 X%1$s Y10\nCYCLE84(30,0,5,-20,,0,5,10,,0,300,300)\n";
		String head = "G17 G90 G54 G71 G94\nT4 D1 M6 ; DRILL 8.5\nS1200 M3 F200\nG0 Z30\n" + drilled.formatted("10")
				+ drilled.formatted("40") + drilled.formatted("70") + "T5 D1 M6 ; TAP M10\nS300 M3\nG0 Z30\n" + tapped.formatted("10");
		assertThat(Samples.heard(head + tapped.formatted("40") + tapped.formatted("70") + "M30\n")).isEmpty();
		assertThat(Samples.heard(head + tapped.formatted("70") + "M30\n")).singleElement().asString()
				.startsWith("hole-skipped the hole at X40 Y10 is drilled with the 2 that T5 threads");
	}

	/** The way up from the last of them goes on to the next tool's height. */
	@Test
	void holesThatAreDrilledByMoves() {
		List<String> blocks = new ArrayList<>(List.of("G21 G90", "T1 M6 (4.2 MM DRILL)", "S2500 M3"));
		for (String x : List.of("10", "30", "50")) {
			blocks.addAll(List.of("G0 X" + x + " Y10", "G0 Z2", "G1 Z-14 F120", "G0 Z2"));
		}
		blocks.addAll(List.of("G0 Z40", "T2 M6 (M5X0.8 TAP)", "S300 M3", "G0 X10 Y10", "G84 Z-10 R4 F240", "X30", "G80", "M30"));
		assertThat(Samples.findings(blocks.toArray(String[]::new))).filteredOn(f -> f.severity() != Severity.INFORMATION)
				.extracting(Finding::rule).containsExactly("hole-skipped");
	}

	@Test
	void whatALoopWithoutAnEndLeavesIsNotSkipped() {
		assertThat(Samples.findings("G21 G90", "T1 M6 (DRILL 6.8)", "S1400 M3", "G0 X0 Y10 Z50", "G81 X0 Z-25 R3 F180", "X20", "X40", "G80",
				"T2 M6 (M8 TAP)", "S400 M3", "G0 X0 Y10 Z50", "#1=0", "WHILE [#1 LT 3] DO1", "G84 X[#1*20] Z-16 R5 F500", "END1", "G80",
				"M30")).filteredOn(f -> f.severity() != Severity.INFORMATION).extracting(Finding::rule).contains("not-followed")
				.doesNotContain("hole-skipped");
	}

	@Test
	void aBlockThatCannotBeReadSaysItself() {
		List<Finding> findings = Samples.findings("G21 G90", "T1 M6 (DRILL 6.8)", "S1400 M3", "G0 X10 Y10 Z50", "G81 X10 Y10 Z-25 R3 F180",
				"X40", "X70", "G80", "T2 M6 (M8 TAP)", "S400 M3", "G0 X10 Y10 Z50", "G84 X10 Y10 Z-16 R5 F500", "X4..0", "X70",
				"G80", "M30");
		assertThat(findings).extracting(Finding::rule).contains("not-understood").doesNotContain("hole-skipped");
	}
}
