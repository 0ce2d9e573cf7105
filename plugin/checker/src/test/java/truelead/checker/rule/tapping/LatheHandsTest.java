package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** Single-point threads as further hands write them: start angles by name, a tool that comes along Z alone, back spindles, threads picked up, tapers left over. */
class LatheHandsTest {

	private static final String BOLT = "G21 G99\nT0101 (OD)\nG97 S800 M3\nG0 X24. Z2.\nX19.95\nG1 Z-40. F.2\nX30.\nG0 X80. Z80.\nT0303 (THREAD M20X1.5)\nG97 S600 M3\nG0 X24. Z6.\nG92 X19.4 Z-25. F1.5\nX18.8\nX18.4\nX18.16\nG0 X80. Z80.\n";

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
		assertThat(said(program.toString().replace("SF=180", "SF=0"))).singleElement().asString().startsWith("feed-off-pitch").contains("one groove is cut");
		assertThat(said(program.toString().replace("SF=180", "SF=120"))).singleElement().asString().startsWith("helix-uneven passes from here on begin 0.667 mm beside");
		assertThat(said(program.toString().replace("SF=180", "SF=R5"))).as("an angle that nobody knows").isEmpty();
	}

	/** The tool before stood on the same X: the only way across is the cycle's own. */
	@Test
	void aToolThatComesAlongZAlone() {
		String program = "G21 G99\nT0101 (DRILL 22)\nG97 S900 M3\nG0 X0 Z4.\nG1 Z-30. F.15\nG0 Z60.\nT0202 (BORE 24.3)\nG0 X24.3 Z2.\nG1 Z-22. F.1\nX22.\nG0 Z60.\nT0303 (THREAD INSIDE G3/4)\nG97 S600 M3\nG0 X22. Z6.\n"
				+ "G76 P021055 Q60 R.03\nG76 X26.441 Z-17. P1162 Q260 F1.814\nG0 Z60.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X26.441", "X25.441"))).singleElement().asString().startsWith("helix-off-size the deepest pass of the thread inside goes to diameter 25.441 mm");
		assertThat(said(program.replace("X26.441", "X27.941"))).singleElement().asString().startsWith("helix-off-size the deepest pass of the thread inside");
	}

	@Test
	void aPassThatBeginsBelowTheCrests() {
		assertThat(said(BOLT)).isEmpty();
		assertThat(said(BOLT.replace("X24. Z6.", "X19. Z6."))).singleElement().asString().startsWith("exit-scars-thread the tool goes back along Z on diameter 19 mm, the crests of M20x1.5 stand at 20 mm");
	}

	@Test
	void aParallelThreadStaysParallel() {
		assertThat(said(BOLT.replace("Z-25. F1.5", "Z-25. R-.4 F1.5"))).singleElement().asString().startsWith("taper-off the pass ends 0.4 mm farther from the axis than it begins, over 31 mm: M20x1.5 is parallel");
		assertThat(said(BOLT.replace("Z-25. F1.5", "Z-25. R-.02 F1.5"))).as("what makes up for a lathe that turns a cone").isEmpty();
		assertThat(said(BOLT.replace("Z-25. F1.5", "Z-25. R-.9688 F1.5"))).as("the taper of a pipe").noneMatch(finding -> finding.startsWith("taper-off"));
		String named = "G18 G21 G90 G95\nT5 (GEWINDE INNEN M36X3)\nG97 S400 M3\nG0 X30 Z12\nCYCLE97(3,,0,-42,32.75,%s,9,3,1.625,0.05,30,0,10,2,2,1)\n";
		assertThat(said(named.formatted("32.75"))).isEmpty();
		assertThat(said(named.formatted("33.75"))).singleElement().asString().startsWith("taper-off");
	}

	/** Which way M3 turns a second spindle is the machine's: what bored the hole there tells. */
	@Test
	void aBackSpindleTurnsAsItBored() {
		String program = "G21 G99\nT0101 (BACK DRILL 20)\nG97 S900 M4\nG0 X0 Z-3.\nG1 Z32. F.12\nG0 Z-20.\nT0202 (BACK BORE 22.5)\nG0 X22.5 Z-2.\nG1 Z24. F.08\nX20.\nG0 Z-20.\nT0303 (BACK THREAD M24X1.5)\nG97 S800 M4\nG0 X21. Z-6.\n"
				+ "G92 X23. Z20. F1.5\nX23.4\nX23.7\nX23.9\nX24.\nG0 Z-20.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("S900 M4", "S900 M3"))).singleElement().asString().startsWith("spindle-wrong-way M4");
	}

	@Test
	void oneLeadIsRoundedTwice() {
		String program = "G20 G99\nT0505 (THREAD 1-12 UNF)\nG97 S450 M3\nG0 X1.1 Z.35\nG92 X.97 Z-1.4 E.083333\nX.945\nG92 X.925 Z-1.4 E.08333\nG92 X.908 Z-1.4 E.083333\nX.8978\nG0 X4.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("E.08333\n", "E.0833\n"))).as("deeper passes of the tool follow").isEmpty();
		assertThat(said(program.replace("E.08333\n", "E.088333\n"))).singleElement().asString().startsWith("feed-off-pitch E0.08833");
	}

	@Test
	void aThreadThatIsPickedUpIsThereAlready() {
		String program = "G21 G99\nT0404 (RECUT M50X1.5)\nG97 S200 M3\nG0 X54. Z9.\nG92 X48.2 Z-30. F1.5\nX48.16\nG0 X100. Z100.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X48.2 ", "X49.2 ").replace("\nX48.16", "\nX48.8\nX48.16"))).as("cut anew").isEmpty();
		assertThat(said(program.replace("X48.16", "X48.6\nX48.16").replace("X48.2 ", "X48.7 "))).singleElement().asString().startsWith("passes-too-heavy");
	}

	@Test
	void theFeedAMinuteIsNoLead() {
		assertThat(said(BOLT.replace("F1.5", "F900."))).containsExactly("feed-in-wrong-mode F900 is the feed a minute at S600: the thread is cut by the lead a turn, of M20x1.5 1.500; F1.5");
		assertThat(said(BOLT.replace("G0 X24. Z6.", "G98 G0 X24. Z6."))).as("most controls read the lead all the same").isEmpty();
	}

	@Test
	void theUnitWordOfTurnedThreads() {
		String inch = "G20 G99\nT0707 (CHASE 3/4-16 UNF)\nG97 S900 M3\nG0 X.82 Z.25\nG92 X.732 Z-.75 F.0625\nX.71\nX.69\nX.6735\nG0 X4. Z4.\n";
		assertThat(said(inch)).isEmpty();
		assertThat(said(inch.replace("G20", "G21"))).singleElement().asString().startsWith("inch-metric-mixup lengths are read in mm, and every thread of the program fits in inches: 3/4-16 UNF needs 1.588 mm a turn and gets 0.063");
	}

	/** A number before START counts the starts and is no size; the roots of trapezoids lie beyond the crests that go with them. */
	@Test
	void trapezoids() {
		String acme = "G20 G99\nT0505 (THREAD 1.25-.1P-.2L ACME 2 START)\nG97 S250 M3\nG0 X1.4 Z.6\nG92 X1.235 Z-2.9 F.2\nX1.2\nX1.17\nX1.14\nG0 X5. Z5.\n";
		assertThat(said(acme)).isEmpty();
		String trapezoid = "G21 G99\nT0707 (TR30X6)\nG97 S200 M3\nG0 X36. Z12.\nG92 X29.2 Z-66. F6.\nX28.\nX26.8\nX25.6\nX24.4\nX23.\nG0 X120. Z120.\n";
		assertThat(said(trapezoid)).isEmpty();
		assertThat(said(trapezoid.replace("X23.\n", ""))).singleElement().asString().startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 24.4 mm");
	}

	/** The title names the one thread; lead and depth are near enough to be it. */
	@Test
	void theTitlesThreadCutTooShallow() {
		String program = "O2606 (COUPLING 1 1/4-12 UNF X 2.0 LONG)\nG20 G99\nT0505\nG97 S600 M3\nG0 X1.35 Z.4\nG76 P020060 Q30 R.002\nG76 X1.1478 Z-2.3 P511 Q140 F.083333\nG0 X6. Z4.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X1.1478", "X1.1978"))).singleElement().asString().startsWith("helix-off-size");
		assertThat(said(program.replace("X1.1478", "X1.7478"))).as("another thread").isEmpty();
	}

	@Test
	void aHolderThatFloatsByItsName() {
		String program = "G18 G71 G90 G95\nT4 ; BOHRER 8.5\nG97 S1200 M3\nG0 X0 Z5\nG1 Z-30 F0.15\nG0 Z100\nT5 ; GEWINDEBOHRER M10 AUSGLEICHSFUTTER\nG97 S300 M3\nG0 X0 Z8\nG63 Z-20 F1.5\nM4\nG63 Z8 F1.5\nM5\nG0 Z100\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M4\n", "").replace("GEWINDEBOHRER ", ""))).singleElement().asString().startsWith("spindle-wrong-way the tap comes out under M3");
	}

	/** The second thread's way in runs over the end of the first: each is a thread of its own, at its own speed. */
	@Test
	void threadsOfOneLeadOneBehindTheOther() {
		String program = "G21 G99\nT303 (SINGLE POINT)\nG97 S900 M3\n(M20X1.5)\nG0 X23. Z5.\nG76 P010060 Q60 R.03\nG76 X18.16 Z-22.5 P920 Q220 F1.5\n(M30X1.5)\nG0 X33. Z-20.\nS650\nG76 P010060 Q60 R.03\nG76 X28.16 Z-57.5 P920 Q220 F1.5\nG0 X150.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X28.16", "X27.16"))).singleElement().asString().startsWith("helix-off-size").contains("M30x1.5");
		assertThat(said(program.replace("Z-57.5 P920", "Z-57.5 P92"))).singleElement().asString().startsWith("passes-too-heavy");
	}

	@Test
	void aPassThatRunsOutOfTheWallByAMoveOfItsOwn() {
		StringBuilder program = new StringBuilder("G21 G99\nT0202 (OD 35.9)\nG97 S700 M3\nG0 X42. Z2.\nX35.9\nG1 Z-50. F.2\nX48.\nG0 X100. Z100.\nT0606 (M36X2)\nG97 S500 M3\nG0 X40. Z8.\n");
		for (String x : List.of("35.2", "34.6", "34.1", "33.75", "33.546")) {
			program.append("X").append(x).append("\nG33 Z-44. F2.\nG33 U5. W-2. F2.\nG0 X40.\nZ8.\n");
		}
		assertThat(said(program.toString())).isEmpty();
		assertThat(said(program.toString().replace("G33 Z-44.", "G33 Z-55."))).singleElement().asString().startsWith("thread-into-shoulder the thread goes on to Z-55");
	}

	/** R3/4 may be a radius: what is cut tells that it is none. */
	@Test
	void aPipeThreadWithoutAWordForIt() {
		String program = "G21 G99\nT0303 (PIPE NIPPLE R3/4 DIN2999)\nG97 S700 M3\nG0 X30. Z5.\nG92 X26.1 Z-15. R-.625 F1.814\nX25.6\nX25.2\nX24.9\nX24.55\nG0 X80. Z80.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("R-.625", "R.625"))).singleElement().asString().startsWith("taper-off");
		assertThat(said(program.replace("F1.814", "F2.309"))).singleElement().asString().startsWith("feed-off-pitch").contains("R 3/4");
		assertThat(said(program.replace("R3/4 DIN2999", "RADIUS R1/2"))).as("a radius").isEmpty();
	}

	/** D8_5 may be 8.5, or the fifth drill of 8. */
	@Test
	void aDrillsNameWithItsPointUnderlined() {
		String program = "G18 G90 G95\nT=\"BOHRER_%s\" D1\nG97 S1200 M3\nG0 X0 Z5\nG1 Z-30 F0.15\nG0 Z100\nT=\"GEWINDEBOHRER_M10\" D1\nG97 S300 M3\nG0 X0 Z8\nG331 Z-20 K1.5\nG332 Z8 K1.5\n";
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
		assertThat(said(program.formatted("6.14"))).singleElement().asString().startsWith("helix-uneven the pass to diameter 18.2 mm begins 0.14 mm beside");
	}

	private static List<String> said(String program) {
		return Samples.findings(MachineProfile.named("turning").with("G90", "absolute").with("G94", "feed-per-minute"), program + "M30\n").stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION).map(finding -> finding.rule() + " " + finding.message()).toList();
	}
}
