package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/**
 * Single-point threads as further hands write them: start angles by name, a tool that comes along Z alone, back spindles, threads picked
 * up, tapers left over.
 */
class LatheHandsTest {

	private static final String BOLT = """
			G21 G99
			T0101 (OD)
			G97 S800 M3
			G0 X24. Z2.
			X19.95
			G1 Z-40. F.2
			X30.
			G0 X80. Z80.
			T0303 (THREAD M20X1.5)
			G97 S600 M3
			G0 X24. Z6.
			G92 X19.4 Z-25. F1.5
			X18.8
			X18.4
			X18.16
			G0 X80. Z80.
			""";

	@Test
	void aStartAngleByName() {
		String pass = "G0 X33\nZ12\nX%s\nG33 Z-30 K4 SF=%s\n";
		StringBuilder program = new StringBuilder("G18 G71 G90 G95\nT5 ; GEWINDE M30X4 (P2)\nG97 S500 M3\n");
		for (String angle : List.of("0", "180")) {
			for (String x : List.of("29.3", "28.6", "28", "27.546")) {
				program.append(pass.formatted(x, angle));
			}
		}
		program.append("G0 X33\nG0 X120 Z150\n");
		assertThat(said(program.toString())).isEmpty();
		assertThat(said(program.toString().replace("SF=180", "SF=0"))).singleElement().asString().startsWith("feed-off-pitch")
				.contains("one groove is cut");
		assertThat(said(program.toString().replace("SF=180", "SF=120"))).singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 0.667 mm beside");
		assertThat(said(program.toString().replace("SF=180", "SF=R5"))).as("an angle that nobody knows").isEmpty();
	}

	/** The tool before stood on the same X: the only way across is the cycle's own. */
	@Test
	void aToolThatComesAlongZAlone() {
		String program = """
				G21 G99
				T0101 (DRILL 22)
				G97 S900 M3
				G0 X0 Z4.
				G1 Z-30. F.15
				G0 Z60.
				T0202 (BORE 24.3)
				G0 X24.3 Z2.
				G1 Z-22. F.1
				X22.
				G0 Z60.
				T0303 (THREAD INSIDE G3/4)
				G97 S600 M3
				G0 X22. Z6.
				G76 P021055 Q60 R.03
				G76 X26.441 Z-17. P1162 Q260 F1.814
				G0 Z60.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X26.441", "X25.441"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread inside goes to diameter 25.441 mm");
		assertThat(said(program.replace("X26.441", "X27.941"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread inside");
	}

	@Test
	void aPassThatBeginsBelowTheCrests() {
		assertThat(said(BOLT)).isEmpty();
		assertThat(said(BOLT.replace("X24. Z6.", "X19. Z6."))).singleElement().asString()
				.startsWith("exit-scars-thread the tool goes back along Z on diameter 19 mm, the crests of M20x1.5 stand at 20 mm");
	}

	@Test
	void aParallelThreadStaysParallel() {
		assertThat(said(BOLT.replace("Z-25. F1.5", "Z-25. R-.4 F1.5"))).singleElement().asString()
				.startsWith("taper-off the pass ends 0.4 mm farther from the axis than it begins, over 31 mm: M20x1.5 is parallel");
		assertThat(said(BOLT.replace("Z-25. F1.5", "Z-25. R-.02 F1.5"))).as("what makes up for a lathe that turns a cone").isEmpty();
		assertThat(said(BOLT.replace("Z-25. F1.5", "Z-25. R-.9688 F1.5"))).as("the taper of a pipe")
				.noneMatch(finding -> finding.startsWith("taper-off"));
		String named = """
				G18 G21 G90 G95
				T5 (GEWINDE INNEN M36X3)
				G97 S400 M3
				G0 X30 Z12
				CYCLE97(3,,0,-42,32.75,%s,9,3,1.625,0.05,30,0,10,2,2,1)
				""";
		assertThat(said(named.formatted("32.75"))).isEmpty();
		assertThat(said(named.formatted("33.75"))).singleElement().asString().startsWith("taper-off");
	}

	/** Which way M3 turns a second spindle is the machine's: what bored the hole there tells. */
	@Test
	void aBackSpindleTurnsAsItBored() {
		String program = """
				G21 G99
				T0101 (BACK DRILL 20)
				G97 S900 M4
				G0 X0 Z-3.
				G1 Z32. F.12
				G0 Z-20.
				T0202 (BACK BORE 22.5)
				G0 X22.5 Z-2.
				G1 Z24. F.08
				X20.
				G0 Z-20.
				T0303 (BACK THREAD M24X1.5)
				G97 S800 M4
				G0 X21. Z-6.
				G92 X23. Z20. F1.5
				X23.4
				X23.7
				X23.9
				X24.
				G0 Z-20.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("S900 M4", "S900 M3"))).singleElement().asString().startsWith("spindle-wrong-way M4");
	}

	@Test
	void oneLeadIsRoundedTwice() {
		String program = """
				G20 G99
				T0505 (THREAD 1-12 UNF)
				G97 S450 M3
				G0 X1.1 Z.35
				G92 X.97 Z-1.4 E.083333
				X.945
				G92 X.925 Z-1.4 E.08333
				G92 X.908 Z-1.4 E.083333
				X.8978
				G0 X4.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("E.08333\n", "E.0833\n"))).as("deeper passes of the tool follow").isEmpty();
		assertThat(said(program.replace("E.08333\n", "E.088333\n"))).singleElement().asString().startsWith("feed-off-pitch E0.08833");
	}

	@Test
	void aThreadThatIsPickedUpIsThereAlready() {
		String program = """
				G21 G99
				T0404 (RECUT M50X1.5)
				G97 S200 M3
				G0 X54. Z9.
				G92 X48.2 Z-30. F1.5
				X48.16
				G0 X100. Z100.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X48.2 ", "X49.2 ").replace("\nX48.16", "\nX48.8\nX48.16"))).as("cut anew").isEmpty();
		assertThat(said(program.replace("X48.16", "X48.6\nX48.16").replace("X48.2 ", "X48.7 "))).singleElement().asString()
				.startsWith("passes-too-heavy");
	}

	@Test
	void theFeedAMinuteIsNoLead() {
		assertThat(said(BOLT.replace("F1.5", "F900.")))
				.containsExactly("feed-in-wrong-mode F900 is the feed a minute at S600: the thread is cut by the lead a turn, of M20x1.5 "
						+ "1.500; F1.5");
		assertThat(said(BOLT.replace("G0 X24. Z6.", "G98 G0 X24. Z6."))).as("most controls read the lead all the same").isEmpty();
	}

	@Test
	void theUnitWordOfTurnedThreads() {
		String inch = """
				G20 G99
				T0707 (CHASE 3/4-16 UNF)
				G97 S900 M3
				G0 X.82 Z.25
				G92 X.732 Z-.75 F.0625
				X.71
				X.69
				X.6735
				G0 X4. Z4.
				""";
		assertThat(said(inch)).isEmpty();
		assertThat(said(inch.replace("G20", "G21"))).singleElement().asString()
				.startsWith("inch-metric-mixup lengths are read in mm, and every thread of the program fits in inches: 3/4-16 UNF needs "
						+ "1.588 mm a turn and gets 0.063");
	}

	/** A number before START counts the starts and is no size; the roots of trapezoids lie beyond the crests that go with them. */
	@Test
	void trapezoids() {
		String acme = """
				G20 G99
				T0505 (THREAD 1.25-.1P-.2L ACME 2 START)
				G97 S250 M3
				G0 X1.4 Z.6
				G92 X1.235 Z-2.9 F.2
				X1.2
				X1.17
				X1.14
				G0 X5. Z5.
				""";
		assertThat(said(acme)).isEmpty();
		String trapezoid = """
				G21 G99
				T0707 (TR30X6)
				G97 S200 M3
				G0 X36. Z12.
				G92 X29.2 Z-66. F6.
				X28.
				X26.8
				X25.6
				X24.4
				X23.
				G0 X120. Z120.
				""";
		assertThat(said(trapezoid)).isEmpty();
		assertThat(said(trapezoid.replace("X23.\n", ""))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 24.4 mm");
	}

	/** The title names the one thread; lead and depth are near enough to be it. */
	@Test
	void theTitlesThreadCutTooShallow() {
		String program = """
				O2606 (COUPLING 1 1/4-12 UNF X 2.0 LONG)
				G20 G99
				T0505
				G97 S600 M3
				G0 X1.35 Z.4
				G76 P020060 Q30 R.002
				G76 X1.1478 Z-2.3 P511 Q140 F.083333
				G0 X6. Z4.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X1.1478", "X1.1978"))).singleElement().asString().startsWith("helix-off-size");
		assertThat(said(program.replace("X1.1478", "X1.7478"))).as("another thread").isEmpty();
	}

	@Test
	void aHolderThatFloatsByItsName() {
		String program = """
				G18 G71 G90 G95
				T4 ; BOHRER 8.5
				G97 S1200 M3
				G0 X0 Z5
				G1 Z-30 F0.15
				G0 Z100
				T5 ; GEWINDEBOHRER M10 AUSGLEICHSFUTTER
				G97 S300 M3
				G0 X0 Z8
				G63 Z-20 F1.5
				M4
				G63 Z8 F1.5
				M5
				G0 Z100
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M4\n", "").replace("GEWINDEBOHRER ", ""))).singleElement().asString()
				.startsWith("spindle-wrong-way the tap comes out under M3");
	}

	/** The second thread's way in runs over the end of the first: each is a thread of its own, at its own speed. */
	@Test
	void threadsOfOneLeadOneBehindTheOther() {
		String program = """
				G21 G99
				T303 (SINGLE POINT)
				G97 S900 M3
				(M20X1.5)
				G0 X23. Z5.
				G76 P010060 Q60 R.03
				G76 X18.16 Z-22.5 P920 Q220 F1.5
				(M30X1.5)
				G0 X33. Z-20.
				S650
				G76 P010060 Q60 R.03
				G76 X28.16 Z-57.5 P920 Q220 F1.5
				G0 X150.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X28.16", "X27.16"))).singleElement().asString().startsWith("helix-off-size").contains("M30x1.5");
		assertThat(said(program.replace("Z-57.5 P920", "Z-57.5 P92"))).singleElement().asString().startsWith("passes-too-heavy");
	}

	@Test
	void aPassThatRunsOutOfTheWallByAMoveOfItsOwn() {
		StringBuilder program =
				new StringBuilder("G21 G99\nT0202 (OD 35.9)\nG97 S700 M3\nG0 X42. Z2.\nX35.9\nG1 Z-50. F.2\nX48.\nG0 X100. Z100.\n"
						+ "T0606 (M36X2)\nG97 S500 M3\nG0 X40. Z8.\n");
		for (String x : List.of("35.2", "34.6", "34.1", "33.75", "33.546")) {
			program.append("X").append(x).append("\nG33 Z-44. F2.\nG33 U5. W-2. F2.\nG0 X40.\nZ8.\n");
		}
		assertThat(said(program.toString())).isEmpty();
		assertThat(said(program.toString().replace("G33 Z-44.", "G33 Z-55."))).singleElement().asString()
				.startsWith("thread-into-shoulder the thread goes on to Z-55");
	}

	/** R3/4 may be a radius: what is cut tells that it is none. */
	@Test
	void aPipeThreadWithoutAWordForIt() {
		String program = """
				G21 G99
				T0303 (PIPE NIPPLE R3/4 DIN2999)
				G97 S700 M3
				G0 X30. Z5.
				G92 X26.1 Z-15. R-.625 F1.814
				X25.6
				X25.2
				X24.9
				X24.55
				G0 X80. Z80.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("R-.625", "R.625"))).singleElement().asString().startsWith("taper-off");
		assertThat(said(program.replace("F1.814", "F2.309"))).singleElement().asString().startsWith("feed-off-pitch").contains("R 3/4");
		assertThat(said(program.replace("R3/4 DIN2999", "RADIUS R1/2"))).as("a radius").isEmpty();
	}

	/** D8_5 may be 8.5, or the fifth drill of 8. */
	@Test
	void aDrillsNameWithItsPointUnderlined() {
		String program = """
				G18 G90 G95
				T="BOHRER_%s" D1
				G97 S1200 M3
				G0 X0 Z5
				G1 Z-30 F0.15
				G0 Z100
				T="GEWINDEBOHRER_M10" D1
				G97 S300 M3
				G0 X0 Z8
				G331 Z-20 K1.5
				G332 Z8 K1.5
				""";
		assertThat(said(program.formatted("D8_5"))).isEmpty();
		assertThat(said(program.formatted("D8_5_L60"))).isEmpty();
		assertThat(said(program.formatted("D8.5"))).isEmpty();
		assertThat(said(program.formatted("D8_HSS"))).singleElement().asString().startsWith("drill-too-small the hole is drilled 8 mm");
	}

	/** A groove may be wider by what the pitch diameter is allowed: 0.19 mm of M20x1.5-6H are 0.11 mm beside. */
	@Test
	void aFlankMayBeOffByTheTolerance() {
		String program = BOLT.replace("X18.4\nX18.16\n", "X18.4\nX18.2\nG0 Z%s\nG92 X18.16 Z-25. F1.5\n");
		assertThat(said(program.formatted("6.1"))).isEmpty();
		assertThat(said(program.formatted("6.14"))).singleElement().asString()
				.startsWith("helix-uneven the pass to diameter 18.2 mm begins 0.14 mm beside");
	}

	private static List<String> said(String program) {
		return Samples.heard(MachineProfile.named("turning").with("G90", "absolute").with("G94", "feed-per-minute"), program + "M30\n");
	}
}
