package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** The feed error over the depth against a table of worked values, and how rounding and holders are judged. */
class FeedOffPitchTest {

	@ParameterizedTest
	@CsvFileSource(resources = "/truelead/checker/rule/feed-error.csv", numLinesToSkip = 2)
	void theErrorOver15MillimetresIsThatOfTheTable(String thread, double pitch, int speed, int feed, double exact, double each, double ten,
			double deep) {
		Optional<Finding> found = findings("T1 M6 (" + thread + " TAP)", "S" + speed + " M3", "G43 H1 Z10", "G84 Z-15 R5 F" + feed,
				"G80", "M30");
		if (deep == 0) {
			assertThat(found).isEmpty();
		} else {
			assertThat(found.orElseThrow().message()).contains(": " + Figures.number(Math.abs(deep), 2) + " mm "
					+ (deep < 0 ? "behind" : "ahead")).endsWith("; F" + Figures.number(exact, 0));
		}
	}

	@Test
	void aWholeNumberMustNotExcuseAWrongPitch() {
		assertThat(findings("T1 M6 (M6X1 TAP)", "S20 M3", "G84 Z-15 R5 F20.5", "G80").orElseThrow().severity()).isEqualTo(Severity.ERROR);
		assertThat(findings("T1 M6 (M6X1 TAP)", "S30 M3", "G84 Z-15 R5 F31", "G80").orElseThrow().severity())
				.as("3 %, though half a unit is 1.7 %").isEqualTo(Severity.ERROR);
	}

	@Test
	void aFloatingTapIsHeldBackALittleAndNotAFifth() {
		String tool = "T1 M6 (M8 TAP, FLOATING HOLDER)";
		assertThat(findings(tool, "S400 M3", "G84 Z-15 R8 F485", "G80").orElseThrow().severity()).isEqualTo(Severity.INFORMATION);
		assertThat(findings(tool, "S400 M3", "G84 Z-15 R8 F400", "G80").orElseThrow().severity()).as("the feed of M6")
				.isEqualTo(Severity.WARNING);
		assertThat(findings(tool, "S400 M3", "G84 Z-15 R8 F550", "G80").orElseThrow().severity()).as("nobody pushes a floating tap")
				.isEqualTo(Severity.WARNING);
	}

	@Test
	void theLastDecimalWrittenIsTakenInclusive() {
		assertThat(findings("G20", "T1 M6 (7/16-20 TAP)", "S157 M3", "G84 Z-.5 R.2 F7.9", "G80").orElseThrow().severity())
				.isEqualTo(Severity.INFORMATION);
		assertThat(findings("G20", "T1 M6 (7/16-20 TAP)", "S157 M3", "G84 Z-.5 R.2 F7.95", "G80").orElseThrow().severity())
				.isNotEqualTo(Severity.INFORMATION);
	}

	@Test
	void aSynchronisedMoveIsJudgedByItsLead() {
		assertThat(findings("G20", "T1 M6 (10-32 TAP)", "S300 M3", "G0 Z.2", "G33.1 Z-.5 K.0312").orElseThrow().severity())
				.isEqualTo(Severity.INFORMATION);
		assertThat(findings("G20", "T1 M6 (10-32 TAP)", "S300 M3", "G0 Z.2", "G33.1 Z-.5 K.0417").orElseThrow().severity())
				.isEqualTo(Severity.ERROR);
	}

	/** Some controls read F of a tapping cycle as the lead a turn in every feed mode; some say so in the block of the cycle. */
	@ParameterizedTest
	@CsvSource({"as-mode, 'F1.25 ,R1', ", "as-mode, 'F1. ,R1', feed-off-pitch", "pitch, F1.25, ", "pitch, F1., feed-off-pitch",
			"as-mode, F625., ", "as-mode, F1.25, feed-in-wrong-mode"})
	void theLeadATurnAsFeed(String reading, String feed, String rule) {
		assertThat(Samples.findings(MachineProfile.generic().with("tapping-feed", reading), "G21 G94", "T1 M6 (M8 TAP)", "S500 M3",
				"G84 X0 Y0 Z-12. R5. " + feed, "X20.", "G80", "G1 X90. F200.", "M30")).filteredOn(f -> f.rule().contains("feed")
						|| f.rule().contains("per-rev")).extracting(Finding::rule).isEqualTo(rule == null ? List.of() : List.of(rule));
	}

	@Test
	void aFloatingHolderTakesWhatItsTravelAllows() {
		assertThat(findings("T1 M6 (M6X1 TAP)", "(TOOL: T1, M6X1, FLOATING HOLDER)", "S500 M3", "G84 Z-12 R5 F485", "G80").orElseThrow()
				.severity()).isEqualTo(Severity.INFORMATION);
	}

	@Test
	void whatSAndFImplyIsNoCallout() {
		assertThat(findings("T1 M6", "S500 M3", "G84 Z-12 R5 F485", "G80")).isEmpty();
	}

	@Test
	void oneSubprogramCalledForTwoPatternsIsOneFindingWithItsCalls() {
		Finding found = findings("T1 M6 (M6X1 TAP)", "S500 M3", "G0 X0 Y0", "M98 P100", "G0 X50 Y0", "M98 P100", "M30", "O100",
				"G84 Z-12 R5 F400", "G80", "M99").orElseThrow();
		assertThat(found.at().line()).isEqualTo(8);
		assertThat(found.related()).anySatisfy(r -> assertThat(r.at().line()).isEqualTo(3))
				.anySatisfy(r -> assertThat(r.what()).contains("tool change"));
	}

	@Test
	void aWordThatTwoThreadsShareIsNotChanged() {
		Finding found = findings("T1 M6 (M6X1 TAP)", "S500 M3", "G0 X0 Y0", "M98 P100", "T2 M6 (M8X1.25 TAP)", "S500 M3", "G0 X50 Y0",
				"M98 P100", "M30", "O100", "G84 Z-12 R5 F400", "G80", "M99").orElseThrow();
		assertThat(found.fixes()).isEmpty();
	}

	@Test
	void everyNumberOfTheMessageIsTraced() {
		Finding found = findings("T1 M6 (M6X1 TAP)", "S520 M3", "G84 Z-12 R5 F500", "G80").orElseThrow();
		assertThat(found.evidence()).extracting(e -> e.name() + " " + e.value()).contains("feed F500 at S520", "speed S520",
				"pitch 1.000 mm", "turns 12");
		assertThat(found.evidence()).allSatisfy(e -> assertThat(e.origin()).isNotBlank());
	}

	private static Optional<Finding> findings(String... blocks) {
		List<Finding> all = Samples.findings(blocks).stream().filter(f -> f.rule().equals("feed-off-pitch")).toList();
		assertThat(all).hasSizeLessThan(2);
		return all.stream().findFirst();
	}

	/** G85 feeds in and out, which is how a self-reversing head is run: its feed is judged as any tap's. */
	@ParameterizedTest
	@CsvSource({"29, M3, ", "24, M3, feed-off-pitch", "2.9, M3, feed-off-pitch", "29, M4, spindle-wrong-way"})
	void aSelfReversingHeadInG85(String feed, String turn, String rule) {
		List<String> loud = Samples.findings("G20 G90 G17", "T6 M6 (#7 DRILL)", "G54 G0 X1. Y1. S1900 M3", "G43 H6 Z1.",
				"G81 Z-.9 R.1 F9.5", "G80", "T9 M6 (1/4-20 TAP IN SELF-REVERSING HEAD)", "G0 X1. Y1. S600 " + turn, "G43 H9 Z1.",
				"G85 Z-.65 R.3 F" + feed, "G80", "M30").stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(Finding::rule).toList();

		assertThat(loud).isEqualTo(rule == null ? List.of() : List.of(rule));
	}
}
