package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.findings;
import static truelead.checker.Samples.heard;

import org.junit.jupiter.api.Test;

/** Holes that open on lugs and bosses, holes that two taps cut, and heights that a sign or a number turns round. */
class SeveralLevelsTest {

	private static final String LUGS = """
			G21 G90
			(M8 TAP 14 DEEP)
			T1 M6 (DRILL 6.8)
			S1600 M3
			G0 X0 Y0 Z50
			G81 X0 Z-22 R2 F200
			X40 Z-47 R-23
			G80
			T2 M6 (M8 TAP)
			S380 M3
			G0 X0 Y0 Z50
			G84 X0 Z-17.5 R5 F475
			X40 Z-42.5 R-20
			G80
			M30
			""";

	@Test
	void aThreadOnALowerLugIsTooShortWhereverTheLugOpens() {
		assertThat(heard(LUGS)).isEmpty();
		assertThat(heard(LUGS.replace("Z-42.5", "Z-35"))).singleElement().asString()
				.isEqualTo("thread-too-short the tap is fed 15 mm from R, less its lead of 2.5 turns that is 11.88 mm of full thread at "
						+ "most, called out are 14 mm; see R and depth");
		assertThat(heard(LUGS.replace("Z-42.5 R-20", "Z-42.5 R-30"))).as("the hole opens above that R").singleElement().asString()
				.startsWith("plane-heights-wrong");
	}

	private static final String BOSS = """
			G21 G90
			T1 M6 (DRILL 6.8)
			S1600 M3
			G0 X0 Y0 Z50
			G81 X0 Z-22 R3 F200
			X40 Z-8 R23
			G80
			T2 M6 (M8 TAP)
			S380 M3
			G0 X0 Y0 Z50
			G84 X0 Z-16 R5 F475
			X40 Z0 R25
			G80
			M30
			""";

	@Test
	void theTapIsDrivenIntoABossWhoseThreadEndsAboveLevel0() {
		assertThat(heard(BOSS)).isEmpty();
		assertThat(heard(BOSS.replace("Z0 R25", "Z0 R5"))).singleElement().asString()
				.startsWith("plane-heights-wrong R is at Z5 and the bottom at Z0: R is 18 mm below Z23, where the drill starts");
		assertThat(heard(BOSS.replace("Z-8 R23", "Z-20 R40"))).as("a drill that jumps clamps").isEmpty();
	}

	private static final String TWO_TAPS = """
			G21 G90
			(M10X1.5 BLIND 20 DEEP)
			T1 M6 (DRILL 8.5)
			S1200 M3
			G0 X0 Y0 Z50
			G83 X0 Z-32 R2 Q6 F170
			X40
			G80
			T2 M6 (M10 PLUG TAP)
			S250 M3
			G0 X0 Y0 Z50
			G84 X0 Z-20 R6 F375
			X40
			G80
			M0
			T3 M6 (M10 BOTTOMING TAP)
			S200 M3
			G0 X0 Y0 Z50
			G84 X0 Z-24.5 R6 F300
			X40
			G80
			M30
			""";

	@Test
	void howDeepTheSeatIsTellsNothingOfTheThreadBelowIt() {
		String seats = """
				G21 G90
				(SEAT 16 DIA 30 DEEP THEN M10 BELOW)
				T1 M6 (16.0 DRILL)
				S500 M3
				G43 H1 Z40
				G83 X25 Y25 Z-30 R3 Q6 F75
				X75
				G80
				T2 M6 (16 END MILL)
				S600 M3
				G43 H2 Z40
				G82 X25 Y25 Z-30 R3 P500 F60
				X75
				G80
				T3 M6 (8.5 DRILL)
				S1100 M3
				G43 H3 Z40
				G83 X25 Y25 Z-60 R-28 Q5 F160
				X75
				G80
				T4 M6 (M10 TAP)
				S250 M3
				G43 H4 Z40
				G84 X25 Y25 Z-52 R-25 F375
				X75
				G80
				M30
				""";
		assertThat(heard(seats)).isEmpty();
	}

	@Test
	void behindAStopTheSameTapMayBeAtThePartsOtherEnd() {
		String spacer = """
				G21 G17 G90
				(SPACER 60 LG, M12 X 25 DEEP BOTH ENDS)
				T1 M6 (10.2 DRILL)
				G54 G0 X0 Y0 S1500 M3
				G43 H1 Z100
				G83 X0 Y0 Z-64 R3 Q8 F250
				G80
				T2 M6 (M12 TAP)
				G54 G0 X0 Y0 S220 M3
				G43 H2 Z100
				G84 X0 Y0 Z-22 R8 F385
				G80
				M0 (TURN PART OVER)
				G84 X0 Y0 Z-30 R8 F385
				G80
				M30
				""";
		assertThat(heard(spacer)).singleElement().asString().startsWith("thread-too-short the tap goes 22 mm deep");
		assertThat(heard(spacer.replace("Z-22", "Z-30"))).isEmpty();
	}

	@Test
	void aDrillsRAboveTheSurfaceThatIsStated() {
		String cover = """
				G21 G90
				T1 M6 (DRILL 6.8)
				S1600 M3
				G0 X0 Y0 Z20
				G83 Z-28 R-3 Q5 F200
				X30
				G80
				T2 M6 (M8 TAP)
				(SURFACE: Z-5)
				S380 M3
				G0 X0 Y0 Z20
				G84 Z-20 R3 F475
				X30
				G80
				M30
				""";
		assertThat(heard(cover)).isEmpty();
		assertThat(heard(cover.replace("Z-5)", "Z-1)"))).singleElement().asString()
				.startsWith("plane-heights-wrong R is at Z-3, and nothing is open there before T1");
	}

	@Test
	void howDeepAThreadIsTheTapSaysThatFinishesIt() {
		assertThat(heard(TWO_TAPS)).isEmpty();
		assertThat(heard(TWO_TAPS.replace("Z-24.5", "Z-21"))).singleElement().asString()
				.startsWith("thread-too-short the tap goes 21 mm deep");
		assertThat(heard(TWO_TAPS.replace("Z-24.5", "Z-20"))).as("no deeper than the first").isNotEmpty()
				.allMatch(said -> said.startsWith("thread-too-short"));
		assertThat(heard(TWO_TAPS.replace("G84 X0 Z-24.5 R6 F300\nX40", "G84 X0 Z-24.5 R6 F300\nX45"))).singleElement().asString()
				.startsWith("hole-off-position");
	}

	@Test
	void aMoveThatTakesTheTapInGoesUp() {
		String rail = """
				G71 G90 G94
				T1 M6 ; DRILL 3.3
				S3000 F200 M3
				G0 X10 Y10 Z2
				G1 Z-14
				G0 Z2
				T2 M6 ; M4 TAP
				S600 M3
				G0 X10 Y10 Z3
				G331 Z-9 K0.7
				G332 Z3 K0.7
				M30
				""";
		assertThat(heard(rail)).isEmpty();
		assertThat(heard(rail.replace("G331 Z-9", "G331 Z9"))).singleElement().asString()
				.startsWith("plane-heights-wrong the move goes from Z3 to Z9, the hole is drilled from Z2 to Z-14");
	}

	@Test
	void wireInsertsAreTappedBesideTheHolesDrilledForThem() {
		String cover = """
				G21 G90
				T1 M6 (DRILL 8.4)
				S1600 M3
				G0 X0 Y10 Z50
				G83 X0 Y10 Z-30 R2 Q5 F200
				X60
				G80
				T2 M6 (M8 STI TAP)
				S380 M3
				G0 X0 Y10 Z50
				G84 X0 Y10 Z-20 R5 F475
				X60
				G80
				M30
				""";
		assertThat(heard(cover)).isEmpty();
		assertThat(heard(cover.replace("G84 X0 Y10", "G84 X0 Y40"))).singleElement().asString()
				.startsWith("hole-missing nothing in this program makes a hole at X0 Y40 before T2 goes in, nor at its 1 other "
						+ "place; 2 holes");
		assertThat(heard(cover.replace("G84 X0 Y10", "G84 X0 Y40").replace("DRILL 8.4", "DRILL 6.8")))
				.as("not drilled for an insert: made elsewhere?").isEmpty();
	}

	@Test
	void aDrillWithoutASizeGoesThroughThePartThatTheTitleSays() {
		String plate = """
				G21 G90
				(PLATE M16 22 THICK)
				T1 M6
				S800 M3
				G0 X0 Y0 Z50
				G81 Z-28 R2 F140
				G80
				T2 M6 (M16 TAP)
				S200 M3
				G0 X0 Y0 Z50
				G84 Z-28 R8 F400
				G80
				M30
				""";
		assertThat(heard(plate)).isEmpty();
		assertThat(heard(plate.replace("Z-28 R2", "Z-24 R2"))).as("its point ends in the plate").singleElement().asString()
				.startsWith("drill-too-shallow");
	}

	private static final String ON_TABLE = """
			G21 G90
			T1 M6 (DRILL 6.8)
			S1600 M3
			G0 X0 Y0 Z60
			G83 Z-3 R22 Q6 F200
			X30
			G80
			T2 M6 (M8 TAP)
			S380 M3
			G0 X0 Y0 Z60
			G84 Z-4 R25 F475
			X30
			G80
			M30
			""";

	@Test
	void whatIsDrilledOutAtLevel0GoesThroughWhereNothingOpensThere() {
		assertThat(heard(ON_TABLE)).isEmpty();
		assertThat(findings(ON_TABLE.split("\n"))).filteredOn(finding -> finding.rule().equals("drill-too-shallow")).singleElement()
				.asString().contains("it is taken to go through, for no hole opens at level 0, and the drill comes out there");
		assertThat(heard(ON_TABLE.replace("Z-3 R22", "Z-1 R22"))).as("its point alone comes out").singleElement().asString()
				.startsWith("drill-too-shallow");
		assertThat(heard(ON_TABLE.replace("X30\nG80\nT2", "X30\nG81 X60 Z-15 R2 F200\nG80\nT2")))
				.as("a boss on a part whose face is level 0").singleElement().asString().startsWith("drill-too-shallow");
	}

	@Test
	void aPlateOnTheTableOfWhichTheTitleSaysTheThicknessIsDrilledThrough() {
		String beside = ON_TABLE.replace("X30\nG80\nT2", "X30\nG81 X60 Z-15 R2 F200\nG80\nT2");
		assertThat(heard(beside.replace("G21 G90\n", "G21 G90\n(PLACA 20 GROS)\n"))).isEmpty();
	}

	private static final String COLUMN = """
			G21 G90
			T1 M6 (END MILL D16)
			S2000 M3
			G0 X0 Y80 Z50
			M98 P10
			G0 X90 Y80
			M98 P10
			T2 M6 (M24 TAP)
			S100 M3
			G0 X0 Y80 Z50
			G84 Z-40 R10 F300
			X90
			G80
			M30
			O10
			G0 Z1
			G91 G1 X2.5 F300
			G3 I-2.5 Z-26
			G3 I-2.5 Z-26
			G3 I-2.5
			G1 X-2.5
			G90 G0 Z50
			M99
			""";

	@Test
	void tapsBesideAsManyBoresMilledForThem() {
		assertThat(heard(COLUMN)).isEmpty();
		assertThat(heard(COLUMN.replace("G0 X0 Y80 Z50\nG84", "G0 X0 Y60 Z50\nG84"))).singleElement().asString()
				.startsWith("hole-missing nothing in this program makes a hole at X0 Y60 before T2 goes in, nor at its 1 other "
						+ "place; 2 holes");
		assertThat(heard(COLUMN.replace("G0 X0 Y80 Z50\nG84", "G0 X0 Y60 Z50\nG84").replace("D16", "D20")))
				.as("bores for something else").isEmpty();
	}
}
