package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;
import static truelead.checker.Samples.one;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/** The drill of a threaded hole goes wrong before the tap comes: its spindle, its length, its heights. Invented programs, one slip each. */
class DrillsOfThreadsTest {

	private static final String TAPPED = """
			G21 G90 G94 G17 G40 G80
			T1 M6 (SPOT 90 DEG)
			G54 G0 X10. Y10. S3000 M3
			G43 H1 Z25. M8
			G98 G81 Z-3.5 R2.5 F200.
			X30.
			G80
			T2 M6 (DRILL 6.8)
			G0 X10. Y10. S2300 M3
			G43 H2 Z25. M8
			G98 G83 Z-24.5 R2.5 Q4. F260.
			X30.
			G80
			T3 M6 (M8 TAP)
			G0 X10. Y10. S400 M3
			G43 H3 Z25. M8
			G98 G84 Z-17. R5. F500.
			X30.
			G80
			M30
			""";

	/** As a post writes that says each cycle in full. */
	private static final String EACH = TAPPED
			.replace("Q4. F260.\nX30.", "Q4. F260." + each("G98 G83 X%d. Z-24.5 R2.5 Q4. F260."))
			.replace("R5. F500.\nX30.", "R5. F500." + each("G98 G84 X%d. Z-17. R5. F500."))
			.replace("F200.\nX30.", "F200." + each("X%d."));

	private static final String MILLED = """
			G21 G90 G94 G17 G40 G80
			T2 M6 (DRILL 18.5)
			G54 G0 X0. Y0. S900 M3
			G43 H2 Z25.
			G98 G81 Z-28. R2. F140.
			G80
			T4 M6 (THREAD MILL D12 1 ROW)
			(M20X1.5)
			G0 X0. Y0. S2500 M3
			G43 H4 Z25.
			G1 Z-16.5 F800.
			G41 D4 X1.
			G3 X4. Z-15.75 I1.5 J0. F150.
			G3 X4. Y0. Z-14.25 I-4. J0.
			G3 X4. Y0. Z-12.75 I-4. J0.
			G3 X4. Y0. Z-11.25 I-4. J0.
			G3 X4. Y0. Z-9.75 I-4. J0.
			G3 X4. Y0. Z-8.25 I-4. J0.
			G3 X4. Y0. Z-6.75 I-4. J0.
			G3 X4. Y0. Z-5.25 I-4. J0.
			G3 X4. Y0. Z-3.75 I-4. J0.
			G3 X4. Y0. Z-2.25 I-4. J0.
			G3 X4. Y0. Z-0.75 I-4. J0.
			G3 X4. Y0. Z0.75 I-4. J0.
			G3 X1. Z1.5 I-1.5 J0.
			G40 G1 X0.
			G0 Z25.
			M30
			""";

	@Test
	void theGoodOnesAreGood() {
		assertThat(heard(TAPPED)).isEmpty();
		assertThat(heard(MILLED)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			S2300 M3          | S2300            | spindle-not-turning   | M6 stopped the spindle before T2 drills
			S2300 M3          | S2300 M4         | spindle-wrong-way     | M4 turns T2 counter-clockwise, a drill cuts turning clockwise
			G43 H2 Z25.       | G43 H2 Z-25.     | plane-heights-wrong   | T2 stands at Z-25 when its cycle begins, and R is at Z2.5
			G43 H3 Z25.       | G43 H3 Z-25.     | plane-heights-wrong   | T3 stands at Z-25 when its cycle begins, and R is at Z5
			F260.             | F2600.           | drill-feed-high       | F2600. at S2300 feeds T2 1.130 mm a turn, 0.17 of its diameter of 6.8 mm, drills take up to 0.04
			S2300 M3          | S230 M3          | drill-feed-high       | F260. at S230 feeds T2 1.130 mm a turn
			G43 H2 Z25.       | H2 Z25.          | length-offset-missing | H2 stands without G43, the other tools have it
			G43 H3 Z25.       | H3 Z25.          | length-offset-missing | H3 stands without G43, the other tools have it
			G43 H2 Z25.       | G44 H2 Z25.      | length-offset-missing | G44 subtracts the length of T2
			G83 Z-24.5 R2.5   | G83 R2.5         | not-followed          | the drilling cycle has no depth
			G83 Z-24.5 R2.5   | G83 Z-24.5 R-2.5 | plane-heights-wrong   | R is at Z-2.5, and nothing is open there before T2
			G83 Z-24.5 R2.5   | G83 Z-24.5       | plane-heights-wrong   | no R in the cycle: T2 is fed from Z25 on, where it stands, or the control stops or takes another R
			T1 M6             | T1               | tool-not-changed      | T1 calls a tool and nothing changes to it before it cuts
			T1 M6             | M6               | tool-not-changed      | no T says which tool M6 changes to, as for T2
			G83 Z-24.5        | G83 Z-245        | drill-too-deep        | Z-245 has no decimal point, R has one: T2 goes 245 mm deep, the thread 17 mm
			""")
	void aSlipAtTheTapDrill(String right, String wrong, String rule, String message) {
		assertThat(TAPPED).contains(right);
		one(TAPPED.replace(right, wrong), rule, message);
	}

	/** A macro that brings the tool may bring its feed with it. */
	@Test
	void aMacroMaySayTheFeed() {
		assertThat(heard(MILLED.replace("T2 M6 (DRILL 18.5)", "G65 P9200 T2 F140. (DRILL 18.5)").replace("R2. F140.", "R2.")))
				.noneMatch(said -> said.contains("no F"));
	}

	/** Who says G43 once and H alone from then on has a control that keeps it; and a machine profile may say so. */
	@Test
	void oneG43MayBeMeantForAllTools() {
		assertThat(heard(TAPPED.replace("G43 H2", "H2").replace("G43 H3", "H3"))).isEmpty();
		String milled = MILLED.replace("G43 H4", "H4");
		assertThat(heard(milled)).isEmpty();
		MachineProfile keeps = MachineProfile.read("base = milling-metric\ntool-change-cancels-length-offset = no\n", "bay 2").profile();
		assertThat(Samples.findings(keeps, TAPPED.replace("G43 H3", "H3").split("\n")))
				.noneMatch(found -> found.rule().equals("length-offset-missing"));
	}

	/**
	 * Small drills take more for their size, a drill with three edges in aluminium 0.08 and more; a feed per minute read per revolution
	 * because of the tap before is said of the tap.
	 */
	@Test
	void aDrillMayBeFedFar() {
		assertThat(heard(TAPPED.replace("F260.", "F1300."))).isEmpty();
		assertThat(heard(TAPPED.replace("F260.", "F2600.").replace("(DRILL 6.8)", "(DRILL)"))).isEmpty();
		assertThat(heard(TAPPED.replace("F260.", "F2600.").replace("(DRILL 6.8)", "(REAMER 6.8)")))
				.noneMatch(said -> said.contains("a turn"));
	}

	/** Without a spot nothing is open where R lies: R is the other tools' with its sign lost. */
	@Test
	void aDrillWhoseRLostItsSignIsDrivenIntoTheStock() {
		String plain = TAPPED.replace("R5. F500.", "R2.5 F500.").replace("G98 G81 Z-3.5 R2.5 F200.\nX30.\n", "");
		assertThat(heard(plain)).isEmpty();
		one(plain.replace("R2.5 Q4.", "R-2.5 Q4."), "plane-heights-wrong",
				"R is at Z-2.5, and nothing is open there before T2, while another tool of the hole starts at Z2.5: the drill is driven "
				+ "into the stock in rapid");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			T2 M6       | T2           | tool-not-changed      | T2 calls a tool and nothing changes to it before it cuts, as M6 does for T4
			S900 M3     | S900         | spindle-not-turning   | M6 stopped the spindle before T2 drills
			S900 M3     | S900 M4      | spindle-wrong-way     | M4 turns T2 counter-clockwise
			S900 M3     | M3           | spindle-not-turning   | no S is in force before T2 drills
			S900 M3     | S0 M3        | spindle-not-turning   | S0 does not turn the spindle before T2 drills
			R2. F140.   | R2.          | feed-missing          | no F is in force where T2 drills: the control stops there
			F140.       | F1400.       | drill-feed-high       | F1400. at S900 feeds T2 1.556 mm a turn
			G81 Z-28. R | G81 R        | not-followed          | the drilling cycle has no depth
			G81 Z-28. R | G81 Z-280 R  | drill-too-deep        | Z-280 has no decimal point, R has one: T2 goes 280 mm deep
			""")
	void aSlipAtTheDrillOfAMilledThread(String right, String wrong, String rule, String message) {
		assertThat(MILLED).contains(right);
		one(MILLED.replace(right, wrong), rule, message);
	}

	/** A spot is open where it is as wide as the drill; the thread mill's way down tells where the hole begins. */
	@Test
	void aSpotIsNoPocketForTheDrill() {
		assertThat(heard(TAPPED.replace("Z-3.5 R2.5", "Z-8. R2.5").replace("Z-24.5 R2.5", "Z-24.5 R-2.5"))).isEmpty();
		assertThat(heard(TAPPED.replace("Z-3.5 R2.5", "Z-7.5 R-2.5").replace("Z-24.5 R2.5", "Z-24.5 R-2.5").replace("R5.", "R2.5")))
				.isEmpty();
		String milled = MILLED.replace("Z-28. R2.", "Z-28. R-2.");
		assertThat(heard(milled)).isEmpty();
		one(milled.replace("G1 Z-16.5", "G0 Z2.\nG1 Z-16.5"), "plane-heights-wrong",
				"R is at Z-2, and nothing is open there before T2, while another tool of the hole starts at Z2");
	}

	private static final String TURNED = """
			(MACHINE PROFILE: turning)
			G21 G18 G99
			T0101 (DRILL 6.8)
			G97 S1800 M3
			G0 X0 Z5.
			G1 Z-26. F0.12
			G0 Z5.
			G0 X200. Z200.
			T0202 (TAP M8)
			G97 S300 M3
			G0 X0 Z6.
			G84 Z-16. R4. F1.25
			G80
			G0 X200. Z200.
			M30
			""";

	/** Who writes no R at all begins where the tool stands. */
	@Test
	void aProgramWithoutRIsWrittenSo() {
		assertThat(heard(TAPPED.replace("Z25. M8", "Z25. M8\nZ3.").replace(" R2.5", "").replace(" R5.", ""))).isEmpty();
	}

	/** On a lathe the tap of the hole tells how the work turns; another turret's program may have started it. */
	@Test
	void theDrillOfALatheTurnsAsItsTapDoes() {
		assertThat(heard(TURNED)).isEmpty();
		one(TURNED.replace("S1800 M3", "S1800 M4"), "spindle-wrong-way", "M4 turns T1 counter-clockwise, a drill cuts turning clockwise");
		one(TURNED.replace("S1800 M3", "S1800 M5"), "spindle-not-turning", "M5 stopped the spindle before T1 drills");
		assertThat(heard(TURNED.replace("S1800 M3", "S1800"))).isEmpty();
		assertThat(heard(TURNED.replace("TAP M8)", "TAP M8 LH)").replace("S1800 M3", "S1800 M4").replace("S300 M3", "S300 M4")))
				.noneMatch(said -> said.contains("T1 counter"));
	}

	private static final String CHASED = """
			O5566 (NUT M20X2.5)
			G21 G99
			T0202 (DRILL 16.5)
			G97 S700 M3
			G0 X0 Z4.
			G1 Z-32. F.2
			G0 Z80.
			T0404 (BORING BAR)
			G97 S1200 M3
			G0 X17.5 Z2.
			G1 Z-32. F.15
			G0 X16. Z2.
			G0 Z80.
			T0808 (THREAD BAR, M20X2.5)
			G97 S600 M3
			G0 X17. Z8.
			G92 X18. Z-29. F2.5
			X18.5
			X18.9
			X19.25
			X19.55
			X19.8
			X20.
			X20.
			G0 Z80.
			M30
			""";

	/** The point that cuts a right-hand thread under M3 says what M3 is: a drill goes in as a tap would. */
	@Test
	void theDrillOfAChasedThreadTurnsAsATapWould() {
		assertThat(heard(CHASED)).isEmpty();
		one(CHASED.replace("S700 M3", "S700 M4"), "spindle-wrong-way", "M4 turns T2 counter-clockwise, a drill cuts turning clockwise");
		assertThat(heard(CHASED.replace("(DRILL 16.5)", "(DRILL 16.5 LH)").replace("S700 M3", "S700 M4"))).isEmpty();
		// a spindle of which M4 is the usual way
		assertThat(heard(CHASED.replace("M3\n", "M4\n").replace(", M20X2.5)", ")").replace("NUT M20X2.5", "NUT"))).isEmpty();
	}

	/** The tap starts higher than the drill was to; an end mill may have opened a pocket. */
	@Test
	void aDrillStartsInStockWhateverTheOtherToolsHeight() {
		String plain = TAPPED.replace("G98 G81 Z-3.5 R2.5 F200.\nX30.\n", "").replace("R2.5 Q4.", "R-2.5 Q4.");
		one(plain, "plane-heights-wrong",
				"R is at Z-2.5, and nothing is open there before T2, while another tool of the hole starts at Z5");
		assertThat(heard(plain.replace("SPOT 90 DEG", "END MILL 20"))).isEmpty();
	}

	/** Z-14 without its 1: the drill's hole tells that more was meant. */
	@Test
	void aTapThatHardlyGoesInHoldsNoScrew() {
		one(TAPPED.replace("G84 Z-17.", "G84 Z-5."), "thread-too-short",
				"the tap goes 5 mm deep, less its lead of 2.5 turns that is 1.88 mm of full thread in a hole drilled 22.46 mm deep");
		assertThat(heard(TAPPED.replace("G84 Z-17.", "G84 Z-5.").replace("G83 Z-24.5", "G83 Z-10."))).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"DRILL 6.8 LH", "DRILL 6.8 LEFT HAND CUTTING", "BOHRER 6.8 LINKS"})
	void aLeftHandDrillTurnsLeft(String named) {
		assertThat(heard(TAPPED.replace("DRILL 6.8", named).replace("S2300 M3", "S2300 M4"))).isEmpty();
	}

	/** In one stroke no drill goes down 36 times its diameter, but behind a shorter one. */
	@Test
	void aDeepHoleIsPeckedOrGuided() {
		String plunged = TAPPED.replace("G83 Z-24.5", "G81 Z-24.5").replace(" Q4.", "");
		one(plunged.replace("Z-24.5", "Z-245."), "drill-too-deep",
				"T2 goes down 247.5 mm in one stroke, 36 times its diameter, and the thread is 17 mm deep: the drill jams in its chips");
		String guided = plunged.replace("T3 M6 (M8 TAP)",
				"T4 M6 (GUN DRILL 6.8)\nG0 X10. Y10. S2300 M3\nG43 H4 Z25. M8\nG98 G81 Z-245. R2.5 F60.\nX30.\nG80\nT3 M6 (M8 TAP)");
		assertThat(heard(guided)).isEmpty();
	}

	/** A post that writes the cycle at each hole: 3 for 2 in one of them. */
	@Test
	void oneHoleOfManyIsDeeper() {
		assertThat(heard(EACH)).isEmpty();
		String odd = EACH.replace("X50. Z-24.5", "X50. Z-34.5");
		one(odd, "drill-too-deep", "T2 goes to Z-34.5 at this hole, at the other 4 to Z-24.5, and all are threaded to the same depth");
		assertThat(heard(odd.replace("X50. Z-34.5 R2.5 Q4. F260.", "X50. Z-34.5 R2.5 Q4. F260. (OIL WAY)"))).isEmpty();
		assertThat(heard(odd.replace("X70. Z-24.5", "X70. Z-34.5"))).isEmpty();
		String less = EACH.replace("X50. Z-17.", "X50. Z-12.");
		one(less, "thread-too-short", "the tap goes to Z-12 at this hole, at the other 4 to Z-17, and all are drilled alike: its thread is "
				+ "5 mm shorter");
		assertThat(heard(less.replace("X50. Z-12. R5. F500.", "X50. Z-12. R5. F500. (SHORT STUD)"))).isEmpty();
	}

	/** By hand: a row under one depth, and one hole through for air or short above a wall, without a word. */
	@Test
	void oneHoleOfARowHasADepthOfItsOwn() {
		String row = TAPPED.replace("X30.\n", "X30.\nX50.\nX70.\nX90.\n");
		String through = row.replaceFirst("Q4. F260.\nX30.\nX50.\nX70.", "Q4. F260.\nX30.\nX50. Z-34.5\nX70. Z-24.5");
		assertThat(through).contains("X50. Z-34.5");
		assertThat(heard(through)).isEmpty();
		assertThat(heard(row.replace("X90.\nG80\nT3", "X90.\nG98 G83 X110. Z-43. R2.5 Q4. F260.\nG80\nT3")
				.replace("F500.\nX30.", "F500.\nX110.\nX30."))).isEmpty();
		String wall = row.replaceFirst("R5. F500.\nX30.\nX50.\nX70.", "R5. F500.\nX30.\nX50. Z-12.\nX70. Z-17.");
		assertThat(wall).contains("X50. Z-12.");
		assertThat(heard(wall)).isEmpty();
		assertThat(heard(EACH.replace("X50. Z-24.5", "X50. Z-38."))).isEmpty();
	}

	/** A long drill that nobody names goes into its pilot hole and out of the work turning backwards, and is no tap. */
	@Test
	void aLongDrillIsLedIntoItsPilotBackwards() {
		assertThat(heard("""
				G21 G90 G94 G17
				T1 M6
				G54 G0 X12. Y30. S4500 M3
				G43 H1 Z50. M8
				G98 G81 X12. Y30. Z-15. R2. F700.
				G80
				T2 M6
				G0 X12. Y30. S300 M4
				G43 H2 Z50. M8
				Z5.
				G1 Z-13. F500.
				M3 S5000
				G1 Z-126. F1000.
				S300 M4
				G1 Z-10. F3000.
				G0 Z50.
				M30
				""")).isEmpty();
	}

	/** In a seat of the casting: drill and chamfer mill behind it begin below Z0, the tap as far above it. */
	@Test
	void twoToolsThatBeginAsLowKnowOfASeat() {
		String seat = TAPPED.replace("SPOT 90 DEG", "DRILL 6.8").replace("G81 Z-3.5 R2.5", "G81 Z-27. R-2.5")
				.replace("T2 M6 (DRILL 6.8)", "T2 M6 (CHAMFER MILL 90 DEG)").replace("G83 Z-24.5 R2.5 Q4.", "G81 Z-7. R-2.5")
				.replace("Z-17. R5.", "Z-20. R2.5");
		assertThat(heard(seat)).isEmpty();
		one(seat.replace("Z-7. R-2.5", "Z-7. R2.5"), "plane-heights-wrong", "R is at Z-2.5, and nothing is open there before T1");
	}

	/** An oil way with a thread at its mouth, written as all lengths of the program are. */
	@Test
	void aDeepHoleIsMeantToBeDeep() {
		assertThat(heard(TAPPED.replace("Z-24.5", "Z-245."))).isEmpty();
		assertThat(heard(TAPPED.replace("Z-24.5 R2.5", "Z-245 R2"))).isEmpty();
	}

	private static String each(String block) {
		return IntStream.of(30, 50, 70, 90).mapToObj(x -> "\n" + block.formatted(x)).collect(Collectors.joining());
	}
}
