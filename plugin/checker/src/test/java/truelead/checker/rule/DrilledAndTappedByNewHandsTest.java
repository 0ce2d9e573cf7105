package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/**
 * Drilled and tapped holes as hands wrote them whom no test had: seats, swapped drills, a rigid-tap code left out, heads for the side,
 * tools told by numbers.
 */
class DrilledAndTappedByNewHandsTest {

	private static final String SEAT = """
			G21 G90 G17 G54
			T1 M6 (8.5 DRILL)
			S1100 M3
			G43 H1 Z40.
			G98 G83 X25. Y25. Z-55. R3. Q5. F160.
			X75.
			G80
			T2 M6 (20 COUNTERBORE)
			S400 M3
			G43 H2 Z40.
			G98 G82 X25. Y25. Z-30. R3. P500 F60.
			X75.
			G80
			T4 M6 (M10 TAP)
			S250 M3
			G43 H4 Z40.
			G98 G84 X25. Y25. Z-45. R-25. F375.
			X75.
			G80
			M30
			""";

	/** The seat reaches further than half way down the hole; M10-6H has a minor diameter of 8.376 to 8.676 mm (ISO 965-2). */
	@Test
	void aDrillBelowADeepSeatIsJudgedByTheThreadThere() {
		assertThat(said(SEAT)).isEmpty();
		assertThat(said(SEAT.replace("8.5 DRILL", "8.9 DRILL"))).singleElement().asString()
				.startsWith("drill-too-big the hole is drilled 8.9 mm, the largest minor diameter of M10x1.5 (6H, assumed) is 8.676 mm");
		assertThat(said(SEAT.replace("8.5 DRILL", "7.8 DRILL"))).singleElement().asString()
				.startsWith("drill-too-small the hole is drilled 7.8 mm");
	}

	private static final String TWO = """
			G21 G90 G17 G54
			T1 M6 (8.5 DRILL)
			S1100 M3
			G43 H1 Z40.
			G83 X25. Y25. Z-35. R3. Q5. F160.
			X75.
			G80
			T2 M6 (M10 TAP)
			S250 M3
			G43 H2 Z40.
			M29 S250
			G84 X25. Y25. Z-25. R6. F375.
			X75.
			G80
			T3 M6 (5. DRILL)
			S1800 M3
			G43 H3 Z40.
			G83 X25. Y50. Z-25. R3. Q5. F160.
			X75.
			G80
			T4 M6 (M6 TAP)
			S400 M3
			G43 H4 Z40.
			M29 S400
			G84 X25. Y50. Z-16. R6. F400.
			X75.
			G80
			M30
			""";

	@Test
	void twoSwappedDrillsAreOneSlip() {
		assertThat(said(TWO)).isEmpty();
		assertThat(said(TWO.replace("8.5 DRILL", "D5 DRILL").replace("(5. DRILL", "(8.5 DRILL"))).singleElement().asString()
				.startsWith("drill-too-small the hole is drilled 5 mm")
				.endsWith("drill 8.5, which is T3, used for M6x1 in line 25: the two drills are swapped");
	}

	@Test
	void ofTwoTapsWithExactFeedsTheOneWithoutTheCodeIsTold() {
		assertThat(said(TWO.replace("M29 S400\n", ""))).singleElement().asString()
				.startsWith("rigid-mode-missing no rigid-tap code is in force, the program's other tap has M29");
		assertThat(said(TWO.replace("M29 S400\n", "").replace("F400.", "F396."))).noneMatch(text -> text.startsWith("rigid-mode-missing"));
		assertThat(said(TWO.replace("M29 S400\n", "").replace("(M6 TAP)", "(M6 TAP, FLOATING HOLDER)"))).isEmpty();
	}

	@Test
	void aDrillThatTapsBelowASeatIsTheOnlyFinding() {
		assertThat(said(SEAT.replace("G98 G83 X25. Y25. Z-55. R3. Q5.", "G98 G84 X25. Y25. Z-55. R3."))).singleElement().asString()
				.startsWith("drill-in-tapping-cycle T1 is called a drill");
	}

	/** The head points along Y; the holes on top are made in G17. */
	private static final String HEAD = """
			G21 G17 G90 G54
			T1 M6 (DRILL 6.8)
			S1500 M3
			G0 X20. Y20.
			G43 H1 Z50.
			G99 G83 Z-22. R2. Q4. F200.
			X80.
			G80
			T2 M6 (TAP M8)
			S320 M3
			G0 X20. Y20.
			G43 H2 Z50.
			G99 G84 Z-15. R5. F400.
			X80.
			G80 G0 Z150.
			T3 M6 (DRILL 5.0)
			G18
			S1800 M3
			G0 X30. Y-40.
			G43 H3 Z-15.
			G99 G81 X30. Z-15. Y20. R-2. F180.
			X60.
			G80 G0 Y-60.
			G17
			G0 Z150.
			T4 M6 (TAP M6)
			G18
			S400 M3
			G0 X30. Y-40.
			G43 H4 Z-15.
			G99 G84 X30. Z-15. Y14. R-5. F400.
			X60.
			G80 G0 Y-60.
			G17
			M30
			""";

	@Test
	void aPlaneWordLeftOutIsToldByTheHoleThatTheWordsLeadTo() {
		assertThat(said(HEAD)).isEmpty();
		assertThat(said(HEAD.replace("T4 M6 (TAP M6)\nG18", "T4 M6 (TAP M6)")))
				.containsExactly("plane-wrong G17 is in force: T4 threads along Z, the holes of the program are made along Y; G18 "
						+ "before this block");
		assertThat(said(HEAD.replace("F400.\nX60.", "F400.\nX65."))).singleElement().asString()
				.startsWith("hole-missing nothing in this program makes a hole at Z-15 X65");
	}

	@Test
	void aTurningMachinesTapGoesTheWayOfItsHoles() {
		String side = """
				G21 G40 G99
				T0101 (OD)
				G97 S800 M3
				G0 X62. Z2.
				G1 Z-50. F.2
				G0 X100. Z100. M5
				T0505 (LIVE DRILL 5.0)
				G98
				M45
				G97 S2000 M13
				G0 X70. Z-20. C0
				G87 X20. R-3. F200.
				C90.
				G80
				G0 X150. Z100. M15
				T0707 (LIVE TAP M6)
				G97 S400 M13
				G0 X70. Z-20. C0
				G88 X30. R-3. F400.
				C90.
				G80
				G0 X150. Z100. M15
				G99
				M46
				M30
				""";
		assertThat(turned(side)).isEmpty();
		assertThat(turned(side.replace("G88", "G84")))
				.containsExactly("plane-wrong G84 taps along Z, the holes are made along X by G87: the tap goes in beside them; G88");
		String face = side.replace("G0 X70. Z-20. C0", "G0 X40. Z5. C0").replace("G87 X20. R-3.", "G83 Z-20. R-3.")
				.replace("G88 X30. R-3.", "G84 Z-12. R-2.");
		assertThat(turned(face)).isEmpty();
		assertThat(turned(face.replace("G84", "G88")))
				.containsExactly("plane-wrong G88 taps along X, the holes are made along Z by G83: the tap goes in beside them; G84");
	}

	@Test
	void aTapIsNamedByDiameterAndPitchApart() {
		String listed = """
				(T7 D=10.2 CR=0. - DRILL)
				(T9 D=12. CR=0. PITCH=1.75 - RIGHT HAND TAP)
				G21 G90 G17 G54
				T7 M6
				S900 M3
				G43 H7 Z40.
				G83 X25. Y25. Z-35. R3. Q5. F160.
				G80
				T9 M6
				S240 M3
				G43 H9 Z40.
				G84 X25. Y25. Z-24. R6. F420.
				G80
				M30
				""";
		assertThat(said(listed)).isEmpty();
		assertThat(said(listed.replace("F420.", "F400."))).singleElement().asString()
				.startsWith("feed-off-pitch F400. at S240 advances 1.667 mm a turn, M12x1.75 needs 1.750");
		assertThat(said(listed.replace("PITCH=1.75", "PITCH=1.5"))).singleElement().asString().startsWith("feed-off-pitch F420.")
				.endsWith("mend the callout: feed and the drill of 10.2 mm make M12x1.75");
	}

	@Test
	void aLoopWithoutAPassThreadsNothing() {
		String loop = """
				G21 G90 G17 G54
				T1 M6 (5.0 DRILL)
				S1800 M3
				G43 H1 Z40.
				#1=0
				WHILE[#1LT3]DO1
				G81 X[#1*20.] Y0 Z-20. R3. F160.
				#1=#1+1
				END1
				G80
				T2 M6 (M6 TAP)
				S400 M3
				G43 H2 Z40.
				#1=0
				WHILE[#1LT3]DO1
				G84 X[#1*20.] Y0 Z-13. R5. F400.
				#1=#1+1
				END1
				G80
				G0 Z50.
				M30
				""";
		assertThat(said(loop)).isEmpty();
		int second = loop.lastIndexOf("#1LT3");
		assertThat(said(loop.substring(0, second) + "#1GT3" + loop.substring(second + 5))).singleElement().asString()
				.startsWith("no-thread-made T2 is called a tap M6x1 and threads nothing: its spindle turns and it goes to no place");
	}

	@Test
	void aCalledCyclesDepthMayHaveTheWrongSign() {
		String called = """
				N10 G17 G90 G71 G54
				T1 M6 ; BOHRER 6.8
				S1400 M3 F200
				G0 X10 Y10 Z30
				CYCLE81(10,0,2,-24)
				G0 Z80
				T2 M6 ; GEWINDEBOHRER M8
				S300 M3
				G0 X10 Y10 Z30
				CYCLE84(10,0,5,-16,,0,3,,1.25,0,300,300)
				G0 Z80 M5
				M30
				""";
		assertThat(said(called)).isEmpty();
		assertThat(said(called.replace("5,-16,", "5,16,")))
				.containsExactly("plane-heights-wrong R is at Z5 and the bottom at Z16: the bottom is not below R, nothing is threaded; "
						+ "see the sign of the depth");
	}

	@Test
	void aHoleIsSkippedThoughItsEdgeIsBrokenWithTheOthers() {
		String three = """
				G21 G90 G17 G54
				T4 M6 (DRILL 10.2)
				S800 M3
				G43 H4 Z40.
				G99 G83 X0 Y32. Z-46. R2. Q4. F96.
				X28. Y-16.
				X-28.
				G80
				T5 M6 (TAP M12)
				S120 M3
				G43 H5 Z40.
				G99 G84 X0 Y32. Z-36. R6. F210.
				X28. Y-16.
				X-28.
				G80
				T6 M6 (COUNTERSINK 90 DEG)
				S600 M3
				G43 H6 Z40.
				G99 G81 X0 Y32. Z-6.4 R2. F60.
				X28. Y-16.
				X-28.
				G80
				M30
				""";
		assertThat(said(three)).isEmpty();
		assertThat(said(three.replace("F210.\nX28. Y-16.\nX-28.", "F210.\nX-28. Y-16.")))
				.containsExactly("hole-skipped the hole at X28 Y-16 is drilled with the 2 that T5 threads, and never threaded; its "
						+ "position here, or a drilling block of its own");
	}

	@Test
	void aPlatesThicknessAndASizeBehindALostSignAreRead() {
		String plate = """
				G21 G17 G90 G54
				T4 M6 (BOHRER \u00ef\u00bf\u00bd 4.2)
				S2000 M3
				G43 H4 Z40.
				G83 X0 Y32. Z-15. R2. Q4. F96.
				G80
				T5 M6 (TAP M5 THRU, PLATE 12)
				S500 M3
				G43 H5 Z40.
				G84 X0 Y32. Z-16. R6. F400.
				G80
				M30
				""";
		assertThat(said(plate)).isEmpty();
		assertThat(said(plate.replace("Z-16.", "Z-11."))).singleElement().asString()
				.startsWith("not-through the tap goes 11 mm deep in a wall of 12 mm");
		assertThat(said(plate.replace("4.2)", "3.8)"))).singleElement().asString().startsWith("drill-too-small the hole is drilled 3.8 mm");
	}

	/** The straight dryseal thread has the pitch of NPT: 1/8 has 27 threads an inch (ASME B1.20.3). */
	@Test
	void aStraightDrysealThreadHasItsPitch() {
		String npsf = """
				G20 G17 G90 G54
				T5 M6 (TAP 1/8 NPSF)
				S270 M3
				G43 H5 Z1.
				G84 X0 Y1. Z-.5 R.3 F10.
				G80
				M30
				""";
		assertThat(said(npsf, "milling-inch")).isEmpty();
		assertThat(said(npsf.replace("F10.", "F15."), "milling-inch")).singleElement().asString()
				.startsWith("feed-off-pitch F15. at S270 advances 0.05556 in a turn, 1/8-27 NPSC needs 0.03704");
	}

	/** 1/2-12 BSW: minor diameter 0.3933 to 0.4169 in (BS 84, from memory); 27/64 in leaves 73 % of the thread. */
	@Test
	void theDrillOfTheChartsForHalfInchWhitworthIsAWarning() {
		String half = """
				G20 G90 G17 G54
				T1 M6 (27/64 DRILL)
				S800 M3
				G43 H1 Z1.
				G83 X1. Y1. Z-1.4 R.1 Q.2 F5.
				G80
				T2 M6 (1/2 BSW TAP)
				S120 M3
				G43 H2 Z1.
				G84 X1. Y1. Z-1. R.3 F10.
				G80
				M30
				""";
		List<Finding> found = Samples.findings(MachineProfile.named("milling-inch"), half).stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION).toList();
		assertThat(found).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("drill-too-big");
			assertThat(finding.severity()).isEqualTo(Severity.WARNING);
			assertThat(finding.message()).contains("0.4219 in").contains("73 % of thread left");
		});
	}

	@Test
	void aSteelsNumberIsNoThickness() {
		String plate = """
				(END PLATE 1.4301)
				G21 G17 G90 G54
				T1 M6 (DRILL 10.2)
				S800 M3
				G43 H1 Z40.
				G83 X0 Y32. Z-38. R2. Q4. F96.
				G80
				T2 M6 (TAP M12)
				S120 M3
				G43 H2 Z40.
				G84 X0 Y32. Z-36. R6. F210.
				G80
				M30
				""";
		assertThat(said(plate)).singleElement().asString().startsWith("drill-too-shallow the tap goes 36 mm deep");
		assertThat(said(plate.replace("1.4301", "12.5 THICK").replace("Z-38.", "Z-19.").replace("Z-36.", "Z-18."))).isEmpty();
	}

	private static List<String> said(String program) {
		return said(program, "milling-metric");
	}

	private static List<String> turned(String program) {
		return said(program, "turning");
	}

	private static List<String> said(String program, String profile) {
		return Samples.findings(MachineProfile.named(profile), program).stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION)
				.map(finding -> finding.rule() + " " + finding.message()).toList();
	}
}
