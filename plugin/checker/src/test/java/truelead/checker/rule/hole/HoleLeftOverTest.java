package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** Holes that are drilled with others and left over by the tap. */
class HoleLeftOverTest {

	private static List<String> said(List<String> blocks) {
		return Samples.findings(blocks.toArray(String[]::new)).stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(Finding::rule).toList();
	}

	/** Pads at three levels, each drilled as far from its R plane. */
	@ParameterizedTest
	@ValueSource(strings = {"", "X1.5 Z-1. R-.3", "X2.5 Z-1.5 R-.8"})
	void oneOfThreeLevels(String left) {
		List<String> blocks = new ArrayList<>(List.of("G20 G17 G90", "T1 M6 (#21 DRILL)", "G54 G0 X.5 Y.5 S2800 M3", "G43 H1 Z1.",
				"G98 G83 X.5 Y.5 Z-.8 R.1 Q.1 F9.", "X1.5 Z-1.3 R-.4", "X2.5 Z-1.8 R-.9", "G80", "T2 M6 (10-32 TAP)", "G0 X.5 Y.5 S600 M3",
				"G43 H2 Z1.", "G98 G84 X.5 Y.5 Z-.5 R.2 F18.75", "X1.5 Z-1. R-.3", "X2.5 Z-1.5 R-.8", "G80", "M30"));
		blocks.remove(left);
		assertThat(said(blocks)).isEqualTo(left.isEmpty() ? List.of() : List.of("hole-skipped"));
	}

	/** Right-hand and left-hand taps share a drill: one hole that neither threads is said once. */
	@Test
	void aHoleBetweenTwoTaps() {
		List<String> blocks = List.of("G20 G17 G90", "T1 M6 (F DRILL)", "G54 G0 X0 Y0 S1800 M3", "G43 H1 Z1.",
				"G99 G83 X0 Y0 Z-1.1 R.1 Q.15 F9.", "X1.", "X2.", "X3.", "X4.", "G80", "T2 M6 (5/16-18 TAP)", "G0 X0 Y0 S400 M3",
				"G43 H2 Z1.", "G99 G84 X0 Y0 Z-.75 R.25 F22.2222", "X1.", "G80", "T3 M6 (5/16-18 LH TAP)", "G0 X3. Y0 S400 M4",
				"G43 H3 Z1.", "G99 G74 X3. Y0 Z-.75 R.25 F22.2222", "X4.", "G80", "M30");
		assertThat(said(blocks)).containsExactly("hole-skipped");
	}

	/** A part of which the title says how thick it is, tapped through it and drilled too short. */
	@Test
	void theTapIsThroughAndTheDrillIsNot() {
		List<String> blocks = new ArrayList<>(List.of("(PLATE 20 THICK)", "(2X M10 THRU)", "G21 G17 G90", "T1 M6 (DRILL 8.5)",
				"G54 G0 X15 Y15 S1100 M3", "G43 H1 Z50", "G98 G81 X15 Y15 Z-24 R2 F140", "X95", "G80", "T2 M6 (M10 TAP)",
				"G0 X15 Y15 S240 M3", "G43 H2 Z50", "G98 G84 X15 Y15 Z-28 R6 F360", "X95", "G80", "M30"));
		assertThat(said(blocks)).isEmpty();
		blocks.set(6, "G98 G81 X15 Y15 Z-18 R2 F140");
		assertThat(said(blocks)).containsExactly("drill-too-shallow");
	}

	/** What a remark behind the feed says of a drill whose size nobody else says. */
	@Test
	void aRemarkBehindTheFeed() {
		List<String> blocks = new ArrayList<>(List.of("G20 G17 G90", "T1 M6 (DRILL)", "G54 G0 X1. Y1. S600 M3", "G43 H1 Z1.", "G0Z.1",
				"G1Z-2.F4.8(DRILL 27/64)", "G0Z1.", "T2 M6 (1/2-13 TAP)", "G0 X1. Y1. S200 M3", "G43 H2 Z1.", "G84 G98 Z-1.2 R.3 F15.385",
				"G80", "M30"));
		assertThat(said(blocks)).isEmpty();
		blocks.set(5, "G1Z-2.F4.8(DRILL 29/64)");
		assertThat(said(blocks)).containsExactly("drill-too-big");
	}
}
