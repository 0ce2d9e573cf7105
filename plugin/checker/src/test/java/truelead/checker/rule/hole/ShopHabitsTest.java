package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/** Good programs as shops of several habits write them, which nothing above information is said of, and a slip in each. */
class ShopHabitsTest {

	private static List<String> loud(String... blocks) {
		return Samples.findings(blocks).stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> f.rule() + ": " + f.message()).toList();
	}

	private static String[] with(String[] program, String block, String instead) {
		String[] changed = program.clone();
		int at = List.of(program).indexOf(block);
		changed[at] = instead;
		return changed;
	}

	@Test
	void aTapInThreeBitesIsAsDeepAsTheLastOne() {
		String[] die = {"(5/8-11 UNC X 1.0 DEEP)", "G20 G17 G90 G40 G80", "T1 M6 (17/32 DRILL)", "G54 G0 X0 Y0 S500 M3", "G43 H1 Z1.",
				"G83 G98 Z-1.6 R.1 Q.15 F3.5", "G80", "T2 M6 (5/8-11 TAP)", "G0 X0 Y0 S110 M3", "G43 H2 Z1.", "G84 G98 Z-.4 R.4 F10.",
				"Z-.8", "Z-1.25", "G80", "M30"};
		assertThat(loud(die)).isEmpty();
		assertThat(loud(with(die, "Z-1.25", "Z-1."))).singleElement().asString().startsWith("thread-too-short").contains("1 in deep");
	}

	@Test
	void whatTheTitleSaysOfTheHoldersIsTrueOfAllTaps() {
		String[] riser = {"(ALL TAPS IN TENSION-COMPRESSION HOLDERS)", "G20 G90 G17 G80 G40", "T2 M6 (5/16 DRILL)", "S1500 M3",
				"G0 X.75 Y.75", "G43 H2 Z.5", "G83 Z-1.5 R.1 Q.2 F9.", "G80", "T3 M6 (3/8-16 TAP)", "S300 M3", "G0 X.75 Y.75", "G43 H3 Z.5",
				"G84 Z-1. R.4 F18.2", "G80", "M30"};
		assertThat(loud(riser)).isEmpty();
		assertThat(loud(with(riser, riser[0], "(ALL TAPS RIGHT HAND)"))).singleElement().asString().startsWith("feed-off-pitch");
		assertThat(loud(with(with(riser, riser[0], "(ALL TAPS RIGHT HAND)"), "T3 M6 (3/8-16 TAP)", "T3 M6 (3/8-16 TAP, TC HOLDER)")))
				.isEmpty();
		assertThat(loud(with(riser, riser[0], "(M8 TAP STILL IN OLD FLOATING HOLDER)"))).singleElement().asString()
				.startsWith("feed-off-pitch");
	}

	@Test
	void aSubSpindleHoldsTheOtherEndOfThePart() {
		String[] stud = {"G21 G40 G80 G99", "T0404 (DRILL 6.8)", "G97 S1800 M3", "G0 X0 Z3.", "G83 Z-28. Q6000 F.15", "G80", "G0 Z100.",
				"T0606 (TAP M8)", "S400 M3", "G0 X0 Z8.", "G84 Z-20. F1.25", "G80", "G0 Z100. M5", "M0 (PART IN SUB SPINDLE)",
				"T1414 (DRILL 5.0)", "S2200 M3", "G0 X0 Z3.", "G83 Z-22. Q5000 F.12", "G80", "G0 Z100.", "T1616 (TAP M6)", "S500 M3",
				"G0 X0 Z6.", "G84 Z-15. F1.", "G80", "G0 Z100. M5", "M30"};
		assertThat(loud(stud)).isEmpty();
		assertThat(loud(with(stud, "T1414 (DRILL 5.0)", "T1414 (DRILL 5.5)"))).singleElement().asString().startsWith("drill-too-big")
				.contains("5.5 mm");
		assertThat(loud(with(stud, "G83 Z-22. Q5000 F.12", "G83 Z-15. Q5000 F.12"))).singleElement().asString()
				.startsWith("drill-too-shallow").contains("13.5 mm");
	}

	@Test
	void anOutlineOfAPlateSaysThatItsHolesGoThrough() {
		String[] plate = {"G21 G17 G90 G40 G80", "T2 M6 (16 ENDMILL)", "G0 X-20. Y-20. S3500 M3", "G43 H2 Z50.", "G1 Z-20.5 F500.",
				"G41 D2 X-2. Y0 F1200.", "Y102.", "X112.", "Y-2.", "X-8.", "G40 X-20. Y-20.", "G0 Z50.", "T7 M6 (6.8 DRILL)",
				"G0 X30. Y40. S2300 M3", "G43 H7 Z50.", "G99 G83 Z-27. R3. Q5. F350.", "G80", "T10 M6 (M8X1.25 TAP)",
				"G0 X30. Y40. S600 M3", "G43 H10 Z50.", "G99 G84 Z-24. R5. F750.", "G80", "M30"};
		assertThat(loud(plate)).isEmpty();
		assertThat(loud(with(plate, "G1 Z-20.5 F500.", "G1 Z-5. F500."))).singleElement().asString()
				.startsWith("drill-too-shallow: the tap goes 24 mm deep");
		assertThat(loud(with(plate, "G99 G83 Z-27. R3. Q5. F350.", "G99 G83 Z-20. R3. Q5. F350."))).singleElement().asString()
				.startsWith("drill-too-shallow").contains("breaks");
	}

	@Test
	void aSubprogramThatNothingCallsIsInTheUnitOfTheProgramBeforeIt() {
		String[] body = {"%", "O0100 (BODY)", "G20 G90 G17 G40 G80", "M98 P101", "M30", "O0101 (DRILL #7)", "T2 M6", "S2500 M3",
				"G54 G0 X1. Y1.", "G43 H2 Z.5", "G83 G99 Z-.9 R.1 Q.15 F12.", "G80", "M99", "O0103 (TAP 1/4-20)", "T3 M6", "S500 M3",
				"G54 G0 X1. Y1.", "G43 H3 Z.5", "G84 G99 Z-.6 R.25 F25.", "G80", "M99", "%"};
		assertThat(loud(body)).isEmpty();
	}

	@Test
	void aPlateThatStandsOnLevelZeroIsNotThreadedThrough() {
		String[] plate = {"(PLATE 15 THK, Z0 = TABLE SIDE, 2X M8 THRU)", "G21 G90 G17 G40 G80", "T5 M6 (DRILL 6.8)",
				"G0 X25. Y25. S2200 M3", "G43 H5 Z50.", "G98 G83 Z-4. R18. Q5. F330.", "X70.", "G80", "T6 M6 (TAP M8 SPIRAL POINT)",
				"G0 X25. Y25. S550 M3", "G43 H6 Z50.", "G98 G84 Z-5. R21. F687.5", "X70.", "G80", "M30"};
		assertThat(loud(plate)).isEmpty();
		assertThat(loud(with(plate, "G98 G84 Z-5. R21. F687.5", "G98 G84 Z5. R21. F687.5"))).singleElement().asString()
				.startsWith("not-through: the tap goes at most 13 mm deep in a wall of 15 mm");
	}

	@Test
	void aReamerSaysHowWideTheHoleIsWhateverItsDrillWas() {
		String[] hole = {"G20 G17 G40 G80 G90 G94", "T1 M6 (JOBBER DRILL)", "S900 M3", "G54 G0 X.6 Y.6", "G43 H1 Z.5",
				"G98 G83 Z-.85 R.1 Q.05 F3.6", "G80", "T2 M6 (REAM .2210)", "S250 M3", "G0 X.6 Y.6", "G43 H2 Z.5", "G98 G85 Z-.78 R.1 F2.",
				"G80", "T3 M6 (TAP 1/4-28 UNJF-3B)", "S100 M3", "G0 X.6 Y.6", "G43 H3 Z.5", "G98 G84 Z-.65 R.3 F3.5714", "G80", "M30"};
		assertThat(loud(hole)).isEmpty();
		assertThat(loud(with(hole, "T2 M6 (REAM .2210)", "T2 M6 (REAM .2280)"))).singleElement().asString()
				.startsWith("drill-too-big: the hole is reamed 0.228 in");
	}

	@Test
	void aBossThatIsTappedFromALevelInsideItIsNoMixUpOfUnits() {
		String[] bosses = {"G21 G90 G17 G40 G80", "T1 M6 (DRILL 6.8)", "G0 X10. Y10. S2200 M3", "G43 H1 Z60.",
				"G98 G83 X10. Y10. Z-22. R3. Q5. F320.", "X50. Z-2. R23.", "X90. Z13. R38.", "G80", "T2 M6 (M8 TAP)",
				"G0 X10. Y10. S500 M3", "G43 H2 Z60.", "G98 G84 X10. Y10. Z-15. R6. F625.", "X50. Z5. R26.", "X90. Z20. R41.",
				"G80", "M30"};
		assertThat(loud(bosses)).isEmpty();
		assertThat(loud(with(bosses, "X90. Z20. R41.", "X90. R6."))).isNotEmpty().noneMatch(found -> found.startsWith("inch-metric-mixup"));
	}

	@Test
	void theOnlyThreadOfATitleWithItsDepthIsThatOfTheOnlyTap() {
		String[] arm = {"O2211 (DREHMOMENTSTUETZE M14X1.5 2X 25 TIEF)", "G90 G17 G21", "T7 M6", "S900 M3", "G0 X0 Y0", "G43 H7 Z5.",
				"G83 X-42. Z-35. R2. Q4. F130.", "X42.", "G80 G0 Z100.", "T8 M6", "S250 M3", "G0 X0 Y0", "G43 H8 Z8.",
				"G84 X-42. Z-29. R8. F375.", "X42.", "G80 G0 Z100.", "M30"};
		assertThat(loud(arm)).isEmpty();
		assertThat(loud(with(arm, "G84 X-42. Z-29. R8. F375.", "G84 X-42. Z-29. R8. F500."))).singleElement().asString()
				.startsWith("feed-off-pitch").contains("M14x1.5 needs 1.500");
	}
}
