package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/** Whole jobs of a lathe: subprograms and comments that say their threads, several parts in one program, tools that come back. */
class LatheJobsTest {

	private static final String SEATS = """
			T0101
			G97 S1000 M3
			G0 X40. Z2.
			G1 X19.9 F.2
			Z-18.
			X29.9 Z-20.
			Z-48.
			X34.9 Z-50.
			Z-78.
			X45.
			G0 X150. Z100.
			""";

	@Test
	void aSubprogramSaysWhichThreadItCuts() {
		String job = """
				O1 (PIN M6X1)
				G21 G40 G99
				M98 P2
				M98 P3
				M30
				O2 (TURN)
				T0101
				G97 S2000 M3
				G0 X12. Z1.
				G1 X5.92 F.1
				Z-14.
				X9.
				G0 X60. Z40.
				M99
				O3 (THREAD M6X1)
				T0303
				G97 S1200 M3
				G0 X8. Z4.
				G92 X5.5 Z-11. F1.
				X5.2
				X4.98
				X4.83
				X4.77
				G0 X60. Z40.
				M99
				""";
		assertThat(said(job)).isEmpty();
		assertThat(said(job.replace("(THREAD M6X1)", "(THREAD M8X1)"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 4.77 mm, M8x1 needs at least");
	}

	@Test
	void seatsThatOneCommentNamesAreThreadsOfTheirOwn() {
		String three = "(T5 THREAD M20X1.5 / M30X1.5 / M35X1.5)\nG21 G40 G99\n" + SEATS
				+ "T0505\nG97 S600 M3\nG0 X24. Z5.\nG76 P020060 Q50 R.03\nG76 X18.16 Z-15. P920 Q250 F1.5\nG0 X34.\nZ-14.\n"
				+ "G76 P020060 Q50 R.03\nG76 X28.16 Z-45. P920 Q250 F1.5\nG0 X39.\nZ-44.\nG76 P020060 Q50 R.03\n"
				+ "G76 X33.16 Z-75. P920 Q250 F1.5\nG0 X150. Z100.\nM30\n";
		assertThat(said(three)).isEmpty();
		assertThat(said(three.replace("X28.16", "X29.16"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 29.16 mm, M30x1.5 needs at most");
		assertThat(said(three.replace("Z-44.\n", "Z-54.\n"))).singleElement().asString()
				.startsWith("start-too-close the pass begins at Z-54, 4 mm behind where the work begins");
	}

	@Test
	void threadsOfOtherPartsOfTheJobDoNotCount() {
		String job = """
				G21 G40 G99
				(PART 1)
				T0101
				G97 S1500 M3
				G0 X30. Z2.
				G1 X11.9 F.2
				Z-40.
				X26.
				G0 X150. Z100.
				T0303 (THREAD M12X1.75)
				G97 S800 M3
				G0 X16. Z6.
				G76 P010060 Q50 R.02
				G76 X9.853 Z-36. P1073 Q250 F1.75
				G0 X150. Z100.
				M1
				(PART 2)
				T0101
				G97 S1500 M3
				G0 X40. Z2.
				G1 X23.9 F.2
				Z-20.
				X36.
				G0 X150. Z100.
				T0303 (THREAD M24X1.75)
				G97 S600 M3
				G0 X28. Z6.
				G76 P010060 Q50 R.02
				G76 X21.853 Z-17. P1073 Q250 F1.75
				G0 X150. Z100.
				M30
				""";
		assertThat(said(job)).isEmpty();
		assertThat(said(job.replace("Z-17. P1073", "Z-27. P1073"))).singleElement().asString()
				.startsWith("thread-into-shoulder the thread goes on to Z-27, the outside is turned to its diameter as far as Z-20");
		assertThat(said(job.replace("Z-17. P1073", "Z-17. P107"))).singleElement().asString()
				.startsWith("passes-too-heavy P makes the thread 0.107 mm deep");
	}

	@Test
	void aToolThatComesBackCutsTheThreadItWasSaidToCut() {
		String again = """
				G21 G40 G99
				T0505 (THREAD M24X3)
				G97 S400 M3
				G0 X28. Z10.
				G92 X23.2 Z-44. F3.
				X22.6
				X22.1
				X21.6
				X21.2
				X20.8
				X20.5
				X20.32
				G0 X150. Z100.
				T0101 (TURN)
				G97 S900 M3
				G0 X28. Z2.
				X23.85
				G1 Z-44. F.3
				G0 X28.
				G0 X150. Z100.
				T0505
				G97 S400 M3
				G0 X28. Z10.
				G92 X21. Z-44. F3.
				X20.5
				X20.32
				G0 X150. Z100.
				M30
				""";
		assertThat(said(again)).isEmpty();
		assertThat(said(again.replace("X21. Z-44. F3.", "X21. Z-44. F2."))).singleElement().asString()
				.startsWith("feed-off-pitch F2 cuts a lead of 2.000 mm, M24x3 has 3.000");
	}

	@Test
	void behindAStopTheOtherEndsDrillCounts() {
		String end = """
				T0202 (DRILL 11.15)
				G97 S900 M3
				G0 X0 Z3.
				G83 Z%s Q8000 F.16
				G80
				G0 X100. Z100.
				T0606 (FORM TAP M12)
				G97 S350 M3
				G0 X0 Z8.
				G84 Z-28. R5. F1.75
				G80
				G0 X100. Z100.
				""";
		String both = "G21 G40 G80 G99\n" + end + "M0 (OTHER END)\n" + end + "M30\n";
		assertThat(said(String.format(both, "-38.", "-38."))).isEmpty();
		assertThat(said(String.format(both, "-38.", "-28."))).singleElement().asString()
				.startsWith("drill-too-shallow the tap goes 28 mm deep");
		assertThat(said(String.format(both, "-38.", "-28.").replace("OTHER END", "CHECK THREAD"))).as("the same hole").singleElement()
				.asString().startsWith("drilled-after-threading");
	}

	@Test
	void aHeadingAboveADrillSaysNothingOfIt() {
		String flange = """
				(T7 DRILL %s / T8 TAP M8X1.25)
				G21 G40 G80
				G99
				T0101
				G96 S220 M3
				G0 X125. Z0
				G1 X20. F.2
				G0 X150. Z100.
				(--- MILLING ---)
				G98
				T0707
				G97 S2200 M3
				G0 X90. Z5.
				G83 Z-25. R-2. Q5000 F180
				G80
				G0 X150. Z100.
				T0808
				G97 S500 M3
				G0 X90. Z8.
				G84 Z-18. R-3. F625.
				G80
				M30
				""";
		assertThat(said(String.format(flange, "6.8"))).isEmpty();
		assertThat(said(String.format(flange, "7.4"))).singleElement().asString().startsWith("drill-too-big the hole is drilled 7.4 mm");
	}

	@Test
	void aBoreOfTheTitleIsNotTheFirstToolsPass() {
		String shaft = """
				(SHAFT M30X2 AND BORE M20X1.5)
				G21 G40 G99
				T0101
				G97 S900 M3
				G0 X29.85 Z82.
				G1 Z50. F.2
				X40.
				G0 X150. Z200.
				T0202 (DRILL 18.5)
				G97 S900 M3
				G0 X0 Z83.
				G1 Z45. F.15
				G0 Z83.
				X150. Z200.
				T0606 (M20X1.5 INSIDE)
				G97 S800 M3
				G0 X17. Z86.
				G76 P010060 Q50 R.05
				G76 X20. Z56. P812 Q200 F1.5
				G0 Z86.
				X150. Z200.
				M30
				""";
		assertThat(said(shaft)).isEmpty();
	}

	@Test
	void aTitlesThreadTellsTheWrongUnit() {
		String axle = """
				(AXLE M18X1.5)
				G20 G40 G99
				T0101
				G97 S1100 M3
				G0 X22. Z2.
				G1 X17.9 F.25
				Z-33.
				X25.
				G0 X120. Z80.
				T0404
				G97 S650 M3
				G0 X22. Z6.
				G92 X17.4 Z-28. F1.5
				X17.
				X16.7
				X16.45
				X16.3
				X16.16
				G0 X120. Z80.
				M30
				""";
		assertThat(said(axle)).singleElement().asString()
				.startsWith("inch-metric-mixup lengths are read in inches, and every thread of the program fits in mm: M18x1.5");
		assertThat(said(axle.replace("G20", "G21"))).isEmpty();
	}

	private static List<String> said(String program) {
		return Samples.heard(MachineProfile.named("turning"), program);
	}
}
