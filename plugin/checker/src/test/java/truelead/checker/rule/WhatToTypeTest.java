package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip in a good program: what the finding says to type, and what its first fix does, makes the good program of it. */
class WhatToTypeTest {

	private static final String PLATE = """
			%
			O4100
			(T3 SPOT DRILL 90 DEG)
			(T5 DRILL 8.5)
			(T6 TAP M10 BLIND)
			G21 G17 G40 G80 G90 G94
			T3 M6
			G54 G0 X-40. Y25. S1500 M3
			G43 H3 Z50. M8
			G98 G81 Z-4. R2. F150
			X35.
			G80 G0 Z100. M9
			T5 M6
			G54 G0 X-40. Y25. S1200 M3
			G43 H5 Z50. M8
			G98 G83 Z-30. R2. Q6. F200
			X35.
			G80 G0 Z100. M9
			T6 M6
			G54 G0 X-40. Y25. S380 M3
			G43 H6 Z50. M8
			G98 G84 Z-20. R6. F570
			X35.
			G80 G0 Z100. M9
			M30
			%
			""";

	private static Finding only(String program) {
		List<Finding> loud = loud(program);
		assertThat(loud).as(program).hasSize(1);
		return loud.get(0);
	}

	private static String with(Fix fix, String program) {
		StringBuilder text = new StringBuilder(program);
		fix.edits().stream().sorted(Comparator.comparingInt((Edit edit) -> edit.at().offset()).reversed()).forEach(edit -> text
				.replace(edit.at().offset(), edit.at().offset() + edit.at().span().end() - edit.at().span().start(), edit.text()));
		return text.toString();
	}

	/** The slip is told by a rule, in words that end so, and the first fix takes it back. */
	private static void mended(String good, String was, String typed, String says) {
		assertThat(loud(good)).as("the good program").isEmpty();
		assertThat(good).contains(was);
		String bad = good.replace(was, typed);
		Finding finding = only(bad);
		assertThat(finding.message()).endsWith(says);
		assertThat(finding.fixes()).as(finding.message()).isNotEmpty();
		assertThat(with(finding.fixes().get(0), bad)).isEqualTo(good);
	}

	/** The slip is told in words that end so, and nothing is offered that would hide it. */
	private static void left(String good, String was, String typed, String says) {
		assertThat(loud(good)).as("the good program").isEmpty();
		Finding finding = only(good.replace(was, typed));
		assertThat(finding.message()).endsWith(says);
		assertThat(finding.fixes()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"S380 M3, S830 M3, 'S380, if S830 is mistyped, else F1245'", "S380 M3, S38 M3, 'S380, if S38, too slow for any tap, is a "
			+ "slip, else F57'", "S380 M3, S3800 M3, 'S380, if S3800, far faster than the drill, is a slip, else F5700'",
			"S380 M3, S680 M3, 'S380, if S680 is mistyped, else F1020'", "F570, F750, F570", "F570, F57, F570"})
	void speedOrFeed(String was, String typed, String says) {
		mended(PLATE, was, typed, "; " + says);
	}

	@Test
	void theDrillsSpeedIsLeftOverAndTheFeedIsNoWholeMultipleOfThePitch() {
		Finding finding = only(PLATE.replace("F570", "F551").replace("X-40. Y25. S380 M3", "X-40. Y25. M3"));
		assertThat(finding.message()).endsWith("; an S of its own, if S1200 is left over from the tool before, else F1800");
		assertThat(finding.fixes()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"T5 M6, T6 M6, 'T5, or H6'", "T5 M6, T50 M6, 'T5, or H50'", "H5, H3, H5", "H5, H50, H5", "H6, H3, H6",
			"T3 M6, T8 M6, 'T3, or H8'"})
	void toolOrOffset(String was, String typed, String says) {
		mended(PLATE, was, typed, "; " + says);
	}

	@Test
	void aToolChangeIsLost() {
		left(PLATE, "T5 M6\n", "", "; a change to T5 before it, or H3");
	}

	@Test
	void theNumberIsLeftOutAtTheChange() {
		Finding finding = only(PLATE.replace("T5 M6", "M6"));
		assertThat(finding.message()).endsWith("; T5, or H3");
		assertThat(finding.fixes()).as("T3 is the spot drill's").isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"T0505, T1505, 'T0505, or T1515'", "T0505, T0503, T0505"})
	void aTurretsToolAndItsOffset(String was, String typed, String says) {
		mended("""
				G21 G18 G40 G99
				T0303
				G97 S1500 M3
				G0 X0 Z5
				G81 Z-3 R2 F.1
				G80
				G0 Z100
				T0505 (DRILL 8.5)
				G97 S1200 M3
				G0 X0 Z5
				G83 Z-30 R2 Q6000 F.15
				G80
				G0 Z100
				T0606 (M10 TAP)
				G97 S380 M3
				G0 X0 Z8
				G84 Z-20 R6 F1.5
				G80
				G0 Z100
				M30
				""", was, typed, says);
	}

	@Test
	void theToolOfAnotherThreadWithTheOffsetOfTheOneThatFeedAndDrillAreFor() {
		String two = PLATE.replace("(T6 TAP M10 BLIND)", "(T6 TAP M10 BLIND)\n(T7 DRILL 5.0)\n(T8 TAP M6)").replace("M30\n", """
				T7 M6
				G54 G0 X-40. Y-25. S2400 M3
				G43 H7 Z50. M8
				G98 G83 Z-24. R2. Q4. F220
				X35.
				G80 G0 Z100. M9
				T8 M6
				G54 G0 X-40. Y-25. S500 M3
				G43 H8 Z50. M8
				G98 G84 Z-15. R5. F500
				X35.
				G80 G0 Z100. M9
				M30
				""");
		String bad = two.replace("T6 M6", "T8 M6");
		Finding finding = only(bad);
		assertThat(finding.message()).endsWith("; T6, as H6 says, or F380 and another drill, or mend the callout: feed and the drill of "
				+ "8.5 mm make M10x1.5");
		assertThat(finding.fixes()).hasSize(1);
		assertThat(loud(with(finding.fixes().get(0), bad))).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"Z-30. R2., Z-20. R2., 'drill to 25.6 mm, or tap to 14.4 mm at most', Z-20. to Z-25.6",
			"Z-20. R6., Z-50. R6., 'tap to 24.4 mm at most, or drill to 55.6 mm', Z-50. to Z-24.4"})
	void theDrillsDepthOrTheTaps(String was, String typed, String says, String title) {
		Finding finding = only(PLATE.replace(was, typed));
		assertThat(finding.rule()).isEqualTo("drill-too-shallow");
		assertThat(finding.message()).endsWith("; " + says);
		assertThat(finding.fixes().get(0).title()).isEqualTo("Change " + title);
		assertThat(finding.fixes()).hasSize(2).allSatisfy(fix -> assertThat(loud(with(fix, PLATE.replace(was, typed)))).isEmpty());
	}

	@Test
	void theDepthOfTheTapWithoutItsSign() {
		assertThat(loud(PLATE.replace("Z-20. R6.", "Z20. R26."))).allSatisfy(finding -> {
			assertThat(finding.message()).contains("sign");
			assertThat(finding.fixes()).isEmpty();
		}).isNotEmpty();
	}

	@Test
	void theTapAtAPlaceThatIsMistyped() {
		mended(PLATE, "F570\nX35.", "F570\nX53.", "nothing in this program makes a hole at X53 Y25 before T6 goes in; X35 Y25, where the "
				+ "hole is made and never threaded");
	}

	@Test
	void theDrillAtAPlaceThatIsMistyped() {
		String rows = """
				G21 G17 G40 G80 G90 G94
				T5 M6 (DRILL 8.5)
				G54 G0 X-40. Y25. S1200 M3
				G43 H5 Z50. M8
				G98 G83 Z-30. R2. Q6. F200
				X35.
				Y-25.
				X-40.
				G80 G0 Z100. M9
				T6 M6 (M10 TAP BLIND)
				G54 G0 X-40. Y25. S380 M3
				G43 H6 Z50. M8
				G98 G84 Z-20. R6. F570
				X35. Y25.
				X35. Y-25.
				X-40. Y-25.
				G80 G0 Z100. M9
				M30
				""";
		left(rows, "Y-25.\nX-40.\nG80", "Y-25.\nX-4.\nG80", "hole at X-40 Y-25 before T6 goes in; drill here and not at X-4 Y-25, "
				+ "where the hole is never threaded");
		mended(rows, "X-40. Y-25.", "X-4. Y-25.", "hole at X-4 Y-25 before T6 goes in; X-40 Y-25, where the hole is "
				+ "made and never threaded");
	}

	@Test
	void perMinuteIsLeftOutForDrillAndTap() {
		Finding finding = only("""
				G21 G18 G40
				G99 (TURNING)
				T0101
				G97 S600 M3
				G0 X52 Z2
				G1 X-1 F.2
				G0 X100 Z50
				T0505 (DRILL 5.0)
				G97 S2200 M3
				G0 X0 Z5
				G83 Z-20 R2 Q5000 F180
				G80
				G0 Z100
				T0707 (M6 TAP)
				G97 S400 M3
				G0 X0 Z8
				G84 Z-13 R5 F400
				G80
				G0 Z100
				M30
				""");
		assertThat(finding.message()).startsWith("F400 is read per revolution").endsWith(": the value is meant per minute, as F180 of T5, "
				+ "which drills; the word for feed per minute before both");
		assertThat(finding.fixes()).isEmpty();
	}

	@Test
	void aTapAlongXInADrillingCycle() {
		String bad = """
				G21 G18 G40 G99
				T0505 (DRILL 5.0)
				G97 S2200 M3
				G0 X60 Z-15
				G87 X30 R-5 F.12
				G80
				G0 X100
				T0606 (M6 TAP)
				G97 S400 M3
				G0 X60 Z-15
				G87 X40 R-5 F1.
				G80
				G0 X100
				M30
				""";
		Finding finding = only(bad);
		assertThat(finding.message()).endsWith("the thread is torn out; G88");
		assertThat(with(finding.fixes().get(0), bad)).isEqualTo(bad.replace("G87 X40", "G88 X40"));
	}

	@Test
	void thePointOfADepthIsWrong() {
		String bad = PLATE.replace("Z-20. R6.", "Z-200. R6.");
		assertThat(only(bad).message()).as("and not 7.87 mm, as in inches").endsWith("; see the depth of the tap, 24.4 mm at most");
	}

	private static final String MILLED = """
			G21 G17 G40 G90 G94
			T1 M6 (DRILL 25)
			G54 G0 X50 Y0 S600 M3
			G43 H1 Z10
			G81 Z-18 R2 F100
			G80
			T2 M6 (M27X2 THREAD MILL D20 SINGLE)
			G54 G0 X50 Y0 S1800 M3
			G43 H2 Z10
			G0 Z-6.5
			G3 X53.5 Y0 Z-6 R1.75 F180
			G3 X46.5 Z-5 R3.5
			G3 X53.5 Z-4 R3.5
			G3 X46.5 Z-3 R3.5
			G3 X53.5 Z-2 R3.5
			G3 X46.5 Z-1 R3.5
			G3 X53.5 Z0 R3.5
			G3 X50 Z.5 R1.75
			G0 Z10
			M30
			""";

	/** R is the same in all arcs, so that an odd one among them is odd by its end. */
	@Test
	void theEndOfAnArcThatIsMistyped() {
		assertThat(loud(MILLED)).isEmpty();
		assertThat(loud(MILLED.replace("X46.5 Z-3", "Z-3"))).isNotEmpty().allSatisfy(finding -> assertThat(finding.fixes()).isEmpty());
	}

	@Test
	void aBlockOfAHelixTwice() {
		String helix = MILLED.replace("X46.5 Z-5 R3.5", "X46.5 Z-5 I-3.5").replace("X53.5 Z-4 R3.5", "X53.5 Z-4 I3.5")
				.replace("X46.5 Z-3 R3.5", "X46.5 Z-3 I-3.5").replace("X53.5 Z-2 R3.5", "X53.5 Z-2 I3.5")
				.replace("X46.5 Z-1 R3.5", "X46.5 Z-1 I-3.5").replace("X53.5 Z0 R3.5", "X53.5 Z0 I3.5")
				.replace("X53.5 Y0 Z-6 R1.75", "X53.5 Y0 Z-6 I1.75").replace("X50 Z.5 R1.75", "X50 Z.5 I-1.75");
		assertThat(loud(helix)).isEmpty();
		Finding twice = only(helix.replace("G3 X46.5 Z-3 I-3.5", "G3 X46.5 Z-3 I-3.5\nG3 X46.5 Z-3 I-3.5"));
		assertThat(twice.message()).endsWith("; take one of the two out");
		Finding open = only(helix.replace("G3 X46.5 Z-3 I-3.5", "G3 Z-3 I-3.5"));
		assertThat(open.message()).endsWith("; the end of this arc");
		assertThat(open.fixes()).isEmpty();
	}

	@Test
	void theLevelThatAnArcEndsAt() {
		String bad = MILLED.replace("X46.5 Z-3 ", "X46.5 Z-3.3 ");
		Finding finding = only(bad);
		assertThat(finding.message()).startsWith("this arc of 180 degrees advances 0.7 mm").endsWith("; Z-3.0");
		assertThat(loud(with(finding.fixes().get(0), bad))).isEmpty();
	}

	@Test
	void theLevelThatALeadInBeginsAt() {
		assertThat(only(MILLED.replace("Z-6.5\n", "Z-9.5\n")).message()).endsWith("; climb 0.5 mm, from Z-6.5 on");
	}

	@Test
	void aZeroTooManyInTheSpeedOfATapLedByTheTurn() {
		String turn = PLATE.replace("S380 M3", "S380 M3 G95").replace("F570\nX35.\nG80", "F1.5\nX35.\nG80 G94");
		assertThat(loud(turn)).isEmpty();
		assertThat(only(turn.replace("S380", "S3800")).message()).endsWith("; S380 if a zero is one too many, and F with it");
	}

	@Test
	void theFeedModeBehindATap() {
		String turn = PLATE.replace("S380 M3", "S380 M3 G95").replace("F570\nX35.\nG80", "F1.5\nX35.\nG80 G94").replace("M30", """
				T9 M6 (END MILL 10)
				G54 G0 X0 Y0 S3000 M3
				G43 H9 Z5.
				G1 Z-2. F300
				X50. F600
				G0 Z100.
				M30""");
		assertThat(loud(turn)).isEmpty();
		assertThat(only(turn.replace("G80 G94", "G80")).message()).endsWith("; set feed per minute again behind the tapping, G94");
	}

	@Test
	void theSignOfAPitch() {
		String good = """
				T="GEW_M8" M6 ; GEWINDEBOHRER M8
				S400 M3
				G0 X0 Y0
				G0 Z10
				CYCLE84(10,0,5,-18,,0,5,,1.25,0,400,400)
				M30
				""";
		assertThat(only(good.replace(",1.25,", ",-1.25,")).message())
				.isEqualTo("CYCLE84 cuts a left-hand thread, M8x1.25 is right-hand; its pitch without a minus sign");
	}

	@Test
	void aDieTurnsTheWrongWay() {
		String good = """
				G21 G18 G40 G99
				T0101 (TURNING TOOL)
				G97 S900 M3
				G0 X7.9 Z2.
				G1 Z-30. F.1
				G0 X20. Z50.
				T0303 (DIE HEAD M8X1.25)
				G97 S200 M3
				G0 X0 Z5.
				G1 Z-20. F1.25
				G0 Z50.
				M30
				""";
		assertThat(only(good.replace("S200 M3", "S200 M4")).message())
				.contains(": the die head is pushed onto the bolt without cutting; M3");
	}
}
