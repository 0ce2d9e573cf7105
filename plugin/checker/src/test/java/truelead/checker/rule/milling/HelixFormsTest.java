package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** Thread milling as shops write it: half arcs with R, several steps outwards, too few turns, cutters ground for one thread. */
class HelixFormsTest {

	private static List<Finding> loud(List<String> blocks) {
		return Samples.findings(blocks.toArray(String[]::new)).stream().filter(f -> f.severity() != Severity.INFORMATION).toList();
	}

	/** M20x2.5 up from 20 deep by half arcs of R4, so many of them, with a lead-in and a lead-out arc. */
	private static List<String> halves(int count) {
		List<String> blocks = new ArrayList<>(List.of("G21 G90 G17 G94", "T1 M6 (DRILL 17.5)", "G54 G0 X0 Y0 S900 M3", "G43 H1 Z20.",
				"G81 Z-36. R3. F120", "G80", "T2 M6 (THREAD MILL D12 SINGLE POINT M20X2.5)", "G0 X0 Y0 S2500 M3", "G43 H2 Z20.",
				"G0 Z-20.625", "G1 X2. Y-2. F400", "G3 X4. Y0 Z-20. R2."));
		for (int i = 1; i <= count; i++) {
			blocks.add(String.format(Locale.ROOT, "G3 X%s Y0. Z%.2f R4.", i % 2 == 1 ? "-4." : "4.", -20 + 1.25 * i));
		}
		blocks.addAll(List.of("G3 X2. Y2. R2.", "G1 X0 Y0", "G0 Z20.", "M30"));
		return blocks;
	}

	@Test
	void halfArcsUpToTheSurfaceAreRight() {
		assertThat(loud(halves(16))).isEmpty();
	}

	private static List<Finding> straight(String out, String turn, String back) {
		return Samples.findings("G21 G17 G90 G40", "T1 M6 (DRILL 18.5)", "G54 G0 X0 Y0 S800 M3", "G43 H1 Z50", "G81 Z-30 R3 F100", "G80",
				"T2 M6 (THREAD MILL D12 M20X1.5)", "G0 X0 Y0 S2500 M3", "G43 H2 Z50", "#5=[20-12]/2", "G0 Z-21", out, "#6=-21",
				"WHILE[#6 LT 1.5]DO1", "#6=#6+1.5", turn, "END1", back, "G0 Z50", "M30").stream()
				.filter(f -> f.rule().equals("entry-straight")).toList();
	}

	@Test
	void aMacroThatWorksOutItsWayStraightInMeansIt() {
		assertThat(straight("G1 X#5 F100", "G3 I-#5 Z#6 F200", "G1 X0")).extracting(Finding::severity).containsOnly(Severity.INFORMATION);
		assertThat(straight("G1 X4 F100", "G3 I-4 Z#6 F200", "G1 X0")).extracting(Finding::severity).containsOnly(Severity.WARNING);
	}

	@Test
	void aThreadMillThatStandsStillBreaks() {
		List<String> blocks = halves(16);
		blocks.replaceAll(block -> block.replace("S2500 M3", "S2500 M5"));
		assertThat(loud(blocks)).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("spindle-not-turning");
			assertThat(f.message()).isEqualTo("M5 stopped the spindle before T2 cuts: it breaks at the wall; S and M3 before it goes in");
		});
	}

	@Test
	void ofAHoleTooSmallForAMilledThreadNoTapIsSpokenOf() {
		List<String> blocks = halves(16);
		blocks.replaceAll(block -> block.replace("DRILL 17.5", "DRILL 17."));
		assertThat(loud(blocks)).singleElement()
				.satisfies(f -> assertThat(f.message()).contains("and the screw does not go in; drill 17.5"));
		blocks.replaceAll(block -> block.replace("DRILL 17.", "DRILL 18.5"));
		assertThat(loud(blocks)).singleElement().satisfies(f -> assertThat(f.message()).doesNotContain("FORM TAP"));
	}

	@Test
	void tooFewTurnsLeaveTheFirstThreadsUncut() {
		assertThat(loud(halves(10))).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("helix-too-short");
			assertThat(f.message()).isEqualTo("the helix ends 7.5 mm below the surface: the first 3 threads are not cut; go on to "
					+ "the surface");
		});
	}

	@Test
	void anEndBesideTheCircleOfTheOthersIsNamedThoughItIsWrittenWithR() {
		List<String> blocks = halves(16);
		blocks.replaceAll(block -> block.replace("X-4. Y0. Z-13.75", "X-3.6 Y0. Z-13.75"));
		assertThat(loud(blocks)).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("arc-not-closed");
			assertThat(blocks.get(f.at().line())).contains("X-3.6");
			assertThat(f.message()).isEqualTo("this arc ends 0.4 mm beside the circle of the others, whose radius is 4 mm: with R the "
					+ "control takes another centre and goes on; see its end point");
		});
	}

	@Test
	void lightStepsOutwardsMayGoInStraight() {
		List<String> blocks = new ArrayList<>(List.of("G21 G90 G17", "T1 M6 (DRILL 32.)", "G54 G0 X0 Y0 S900 M3", "G43 H1 Z20.",
				"G81 Z-45. R3. F90", "G80", "T2 M6 (THREAD MILL D25 SINGLE POINT M36X4)", "G0 X0 Y0 S1500 M3", "G43 H2 Z20."));
		for (String x : List.of("4.5", "5.", "5.5")) {
			blocks.addAll(List.of("G90 G0 Z-24.", "G1 X" + x + " F200", "G91"));
			blocks.addAll(java.util.Collections.nCopies(6, "G3 I-" + x + " Z4."));
			blocks.addAll(List.of("G90 G1 X0"));
		}
		blocks.addAll(List.of("G0 Z20.", "M30"));
		assertThat(loud(blocks)).isEmpty();
		blocks.replaceAll(block -> block.replace("X4.5", "X5.").replace("I-4.5", "I-5."));
		assertThat(loud(blocks)).extracting(Finding::rule).as("the first step takes more than a third of the pitch")
				.containsExactly("entry-straight");
	}

	@Test
	void aCutterGroundForItsThreadMayBeALittleBig() {
		String[] comb = {"G21 G90 G17", "T1 M6 (DRILL 10.2)", "G54 G0 X0 Y0 S2000 M3", "G43 H1 Z20.", "G81 Z-25. R3. F300", "G80",
				"T2 M6 (THREAD MILL D9.9 M12X1.75)", "G0 X0 Y0 S3500 M3", "G43 H2 Z20.", "G0 Z-15.438", "G1 X.525 Y-.525 F500",
				"G3 X1.05 Y0 Z-15. R.525", "G3 I-1.05 Z-13.25", "G3 X.525 Y.525 Z-12.812 R.525", "G1 X0 Y0", "G0 Z20.", "M30"};
		assertThat(Samples.findings(comb)).filteredOn(f -> f.rule().equals("cutter-too-big")).singleElement()
				.satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.INFORMATION));
	}

	@Test
	void theThreadsAnInchOfACutterAreNoSizeOfPipe() {
		String[] npt = {"G20 G90 G17", "T3 M6 (THREAD MILL .620 DIA 16 PITCH MULTI TOOTH 4 FL)", "G54 G0 X0 Y0 S2200 M3", "G43 H3 Z1.",
				"(3/4-14 NPT)", "G0 Z-.73", "G1 G41 D3 X.2 Y-.305 F20.", "G3 X.505 Y0 Z-.712 R.305", "G3 X-.0006 Y.5056 Z-.6941 R.5053",
				"G3 X-.5073 Y-.0011 Z-.6763 R.5064", "G3 X.0005 Y-.5089 Z-.6584 R.5075", "G3 X.5094 Y0 Z-.6406 R.5086",
				"G3 X.2 Y.305 Z-.62 R.305", "G1 G40 X0 Y0", "G0 Z1.", "M30"};
		assertThat(Samples.findings(npt)).filteredOn(f -> f.rule().equals("cutter-pitch-mismatch")).singleElement()
				.satisfies(f -> assertThat(f.message()).startsWith("the cutter has a pitch of 0.06250, 3/4-14 NPT needs 0.07143"));
		npt[1] = "T3 M6 (THREAD MILL .620 DIA 14 NPT MULTI TOOTH 4 FL)";
		assertThat(Samples.findings(npt)).extracting(Finding::rule).doesNotContain("cutter-pitch-mismatch");
	}
}
