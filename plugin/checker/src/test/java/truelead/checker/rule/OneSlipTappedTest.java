package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Programs of many hands that drill and tap, with one slip each, and what was faultless in them and alarmed once. */
class OneSlipTappedTest {

	private static void silent(String program) {
		assertThat(heard(program)).isEmpty();
	}

	private static void once(String program, String what) {
		assertThat(heard(program)).singleElement().asString().contains(what);
	}

	private static final String CIRCLE = """
			G21 G90 G17
			T1 M6 (6.8 DRILL)
			G0 X0 Y0 S2300 M3
			G43 H1 Z50
			G83 R3 Z-25 Q5 F280 L0
			BHC X0 Y0 I45 J15 K6
			G80
			T2 M6 (M8 TAP)
			G0 X0 Y0 S400 M3
			G43 H2 Z50
			G84 R6 Z-18 F500 L0
			N12 BHC X0 Y0 I45 J15 K6
			G80
			M30""";

	@Test
	void aCircleOfHolesByItsName() {
		silent(CIRCLE);
		once(CIRCLE.replace("F500", "F400"), "at 6 holes; F500");
		once(CIRCLE.replace("N12 BHC X0 Y0 I45 J15 K6", "N12 BHC X0 Y0 I45 J45 K6"), "hole-missing");
		once(CIRCLE.replace("N12 BHC X0 Y0 I45 J15 K6", "N12 BHC X0 Y0 I45 J15 K3"), "hole-skipped");
	}

	@Test
	void aTappingCycleWhosePlacesAreLostIsSaid() {
		once(CIRCLE.replace("N12 BHC X0 Y0 I45 J15 K6\n", ""), "not-followed no place that is understood follows this tapping cycle");
		once(CIRCLE.replace("N12 BHC X0", "N12 HOLERING X0"), "not-followed no place that is understood follows this tapping cycle");
	}

	private static final String POLE = """
			G17 G90 G54 G710 G94
			T="BOHRER_8.5" D1
			M6
			S2000 M3 F260
			G0 X0 Y0 Z30
			G111 X50 Y50
			MCALL CYCLE81(30,0,2,-30)
			G0 AP=0 RP=30
			AP=90
			AP=180
			MCALL
			T="GEWINDEBOHRER_M10" D1
			M6
			S300 M3
			G0 X0 Y0 Z30
			G111 X50 Y50
			MCALL CYCLE84(30,0,8,-22,,,3,10,,,300,300)
			G0 AP=0 RP=30
			AP=90
			AP=180
			MCALL
			M30""";

	@Test
	void anglesAboutAPole() {
		silent(POLE);
		String tap = POLE.substring(POLE.indexOf("GEWINDE"));
		once(POLE.replace(tap, tap.replace("AP=90", "AP=85")), "hole-off-position");
		once(POLE.replace(tap, tap.replace("AP=180\n", "")), "hole-skipped");
	}

	@Test
	void anOffsetChosenByItsGroup() {
		String pallets = """
				DEF INT NP
				G17 G90 G710 G94
				T="BOHRER_5" D1 M6
				S3000 M3 F300
				FOR NP=1 TO 3
				G[8]=NP+1
				G0 X10 Y10 Z50
				CYCLE81(50,0,2,-20)
				ENDFOR
				T="GEWINDEBOHRER_M6" D1 M6
				S500 M3
				FOR NP=1 TO 3
				G[8]=NP+1
				G0 X10 Y10 Z50
				CYCLE84(50,0,5,-14,,,3,6,,,500,500)
				ENDFOR
				M30""";
		silent(pallets);
		String tap = pallets.substring(pallets.indexOf("GEWINDE"));
		once(pallets.replace(tap, tap.replace("G[8]=NP+1", "G[8]=NP+2")), "hole-missing");
	}

	private static final String RIGID = """
			G21 G90 G17
			T1 M6 (DRILL 5.0)
			G54 G0 X0 Y0 S3000 M3
			G43 H1 Z30
			G99 G81 Z-18 R2 F300
			G80
			T2 M6 (TAP M6)
			G0 X0 Y0 S500 M3
			G43 H2 Z30
			M29 S500
			G99 G84 Z-12 R5 F500
			G80
			T3 M6 (DRILL 6.8)
			G0 X50 Y0 S2400 M3
			G43 H3 Z30
			G99 G81 Z-24 R2 F280
			G80
			T4 M6 (TAP M8)
			G0 X50 Y0 S400 M3
			G43 H4 Z30
			M29 S400
			G99 G84 Z-16 R6 F500
			G80
			M30""";

	@Test
	void theRigidTapCodeThatTheOtherTapHas() {
		silent(RIGID);
		once(RIGID.replace("M29 S400\n", ""), "rigid-mode-missing no rigid-tap code is in force, the program's other tap has M29");
		silent(RIGID.replace("M29 S400\n", "").replace("(TAP M8)", "(TAP M8, FLOATING HOLDER)"));
		String three = RIGID.replace("M30",
				"T5 M6 (DRILL 8.5)\nG0 X90 Y0 S2000 M3\nG43 H5 Z30\nG99 G81 Z-30 R2 F280\nG80\nT6 M6 (TAP M10)\nG0 X90 Y0 S300 M3\n"
				+ "G43 H6 Z30\nM29 S300\nG99 G84 Z-20 R8 F450\nG80\nM30");
		silent(three);
		once(three.replace("M29 S400\n", ""), "rigid-mode-missing no rigid-tap code is in force, the program's other taps have M29");
		once(RIGID.replace("M29 S400\n", "").replace("X50 Y0 S400 M3", "X50 Y0"), "rigid-mode-missing");
		silent(RIGID.replace("M29 S400\n", "").replace("(TAP M8)", "(TAP M8 IN TENSION COMPRESSION HOLDER)"));
	}

	@Test
	void oneToolNumberForAnother() {
		String forms = """
				(T11 = DRILL 5.55)
				(T12 = FORM TAP M6)
				(T13 = DRILL 3.7)
				(T14 = FORM TAP M4)
				G21 G90 G17
				T11 M6
				G0 X0 Y0 S4500 M3
				G43 H11 Z30
				G98 G81 Z-18 R2 F600
				G80
				T13 M6
				G0 X10 Y0 S5500 M3
				G43 H13 Z30
				G98 G81 Z-14 R2 F500
				G80
				T12 M6
				G0 X0 Y0 S700 M3
				G43 H12 Z30
				G98 G84 Z-14 R5 F700
				G80
				T14 M6
				G0 X10 Y0 S900 M3
				G43 H14 Z30
				G98 G84 Z-10 R4 F630
				G80
				M30""";
		silent(forms);
		once(forms.replace("T12 M6", "T14 M6"), "feed-off-pitch F700 at S700 advances 1.000 mm a turn, M4x0.7 needs 0.700");
		once(forms.replace("T12 M6", "T13 M6"), "drill-in-tapping-cycle");
	}

	@Test
	void speedAndStartLeftOutTogether() {
		once(RIGID.replace("M29 S500\n", "").replace("M29 S400\n", "").replace("X50 Y0 S400 M3", "X50 Y0"),
				"spindle-not-turning M6 stopped the spindle before T4 goes in, and S2400 is left over from the tool before; S400 M3 "
				+ "before the block");
	}

	@Test
	void theOnlyHoleOfItsSizeMissedByOneNumber() {
		once(RIGID.replace("X50 Y0 S400 M3", "X50 Y8 S400 M3"),
				"hole-missing nothing in this program makes a hole at X50 Y8 before T4 goes in; the hole at X50 Y0 is made and "
				+ "never threaded");
	}

	@Test
	void holesAtSeveralLevelsHaveTheirOwnTop() {
		String steps = """
				G21 G90 G17
				T1 M6 (DRILL 5.0)
				G54 G0 X10 Y10 S3000 M3
				G43 H1 Z60
				G98 G81 Z-18 R2 F300
				X40 Z-33 R-13
				X70 Z-48 R-28
				G80
				T2 M6 (TAP M6)
				G0 X10 Y10 S500 M3
				G43 H2 Z60
				G98 G84 Z-12 R5 F500
				X40 Z-27 R-10
				X70 Z-42 R-25
				G80
				M30""";
		silent(steps);
		once(steps.replace("X40 Z-33 R-13", "X40 Z-27 R-13"),
				"drill-too-shallow the tap goes 14 mm deep, the hole has its full diameter down to 12.5 mm");
	}

	@Test
	void aDeniedFormAndShortWords() {
		String plate = """
				G21 G90 G17
				T1 M6 (DR 3.3)
				G0 X5 Y5 S4500 M3
				G43 H1 Z20
				G99 G83 Z-13 R1 Q1.5 F400
				X15
				G80
				T2 M6 (M4 TAP - FORM? NO - CUT TAP, DEPTH [8])
				G0 X5 Y5 S700 M3
				G43 H2 Z20
				G99 G84 Z-10 R3 F490
				X15
				G80
				M30""";
		silent(plate);
		once(plate.replace("DR 3.3", "DR 3.6"), "drill-too-big the hole is drilled 3.6 mm, the largest minor diameter");
		once(plate.replace("Z-10 R3", "Z-7 R3"), "thread-too-short");
		once(plate.replace("M4 TAP - FORM? NO - CUT TAP, DEPTH [8]", "M4,0.7,TAP").replace("F490", "F400"),
				"feed-off-pitch F400 at S700 advances 0.571 mm a turn, M4x0.7 needs 0.700");
	}

	@Test
	void aFloatingHolderTakesFreeOverrides() {
		List<String> blocks = new ArrayList<>(List.of("G21 G90 G17", "T6 M6 (6.8 DRILL)", "G0 X20 Y20 S2200 M3", "G43 H6 Z20",
				"G81 G99 Z-26 R2 F250", "G80", "T7 M6 (TAP M8 IN TENSION-COMPRESSION HOLDER)", "G0 X20 Y20 S300 M3", "G43 H7 Z20", "Z8",
				"G1 Z-16 F365", "M4", "G1 Z8 F375", "M3", "G0 Z50", "M30"));
		silent(String.join("\n", blocks));
		blocks.set(6, "T7 M6 (TAP M8)");
		blocks.set(12, "G1 Z8 F365");
		once(String.join("\n", blocks), "override-open");
	}

	@Test
	void anotherThreadsHoleIsSaidOnce() {
		once(RIGID.replace("T4 M6 (TAP M8)", "T4 M6 (TAP M6X0.75)").replace("X50 Y0 S400 M3", "X0 Y0 S400 M3").replace("Z-16 R6 F500",
				"Z-12 R6 F300"), "threaded-twice T4 threads M6x0.75 at X0 Y0, where T2 has cut M6x1");
	}

	@Test
	void underItsOwnPlaneAPlaceMayBeWrong() {
		String head = """
				G21 G90
				T5 M6 (ANGLE HEAD DRILL 6.8)
				G18
				G0 X20 Z-15 S2400 M3
				Y-60
				G98 G83 X20 Z-15 Y24 R-3 Q4 F280
				G80
				T6 M6 (ANGLE HEAD TAP M8)
				G18
				G0 X20 Z-15 S400 M3
				Y-60
				G98 G84 X20 Z-15 Y16 R-6 F500
				G80
				G17
				M30""";
		silent(head);
		once(head.replace("X20 Z-15 Y16", "X20 Z-51 Y16"), "hole-missing");
	}

	@Test
	void millimetresInAnInchProgram() {
		silent("""
				G20 G90 G17
				T17 M6 (PUNTA 2.5)
				G0 X.5 Y2 S5000 M3
				G43 H17 Z1
				G83 G98 Z-.42 R.1 Q.05 F8.9
				X1
				G80
				T18 M6 (MASCHIO M3)
				G0 X.5 Y2 S800 M3
				G43 H18 Z1
				G84 G98 Z-.27 R.14 F15.748
				X1
				G80
				M30""");
	}
}
