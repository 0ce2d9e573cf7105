package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** Whole jobs of a lathe: subprograms that say their threads, several parts in one program, tools that come back, dies, where passes begin and how the tool goes back. */
class LatheJobsTest {

	private static final String SEATS = "T0101\nG97 S1000 M3\nG0 X40. Z2.\nG1 X19.9 F.2\nZ-18.\nX29.9 Z-20.\nZ-48.\nX34.9 Z-50.\nZ-78.\nX45.\nG0 X150. Z100.\n";

	@Test
	void aSubprogramSaysWhichThreadItCuts() {
		String job = "O1 (PIN M6X1)\nG21 G40 G99\nM98 P2\nM98 P3\nM30\nO2 (TURN)\nT0101\nG97 S2000 M3\nG0 X12. Z1.\nG1 X5.92 F.1\nZ-14.\nX9.\nG0 X60. Z40.\nM99\n"
				+ "O3 (THREAD M6X1)\nT0303\nG97 S1200 M3\nG0 X8. Z4.\nG92 X5.5 Z-11. F1.\nX5.2\nX4.98\nX4.83\nX4.77\nG0 X60. Z40.\nM99\n";
		assertThat(said(job)).isEmpty();
		assertThat(said(job.replace("(THREAD M6X1)", "(THREAD M8X1)"))).singleElement().asString().startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 4.77 mm, M8x1 needs at least");
	}

	@Test
	void seatsThatOneCommentNamesAreThreadsOfTheirOwn() {
		String three = "(T5 THREAD M20X1.5 / M30X1.5 / M35X1.5)\nG21 G40 G99\n" + SEATS + "T0505\nG97 S600 M3\nG0 X24. Z5.\nG76 P020060 Q50 R.03\nG76 X18.16 Z-15. P920 Q250 F1.5\nG0 X34.\nZ-14.\n"
				+ "G76 P020060 Q50 R.03\nG76 X28.16 Z-45. P920 Q250 F1.5\nG0 X39.\nZ-44.\nG76 P020060 Q50 R.03\nG76 X33.16 Z-75. P920 Q250 F1.5\nG0 X150. Z100.\nM30\n";
		assertThat(said(three)).isEmpty();
		assertThat(said(three.replace("X28.16", "X29.16"))).singleElement().asString().startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 29.16 mm, M30x1.5 needs at most");
		assertThat(said(three.replace("Z-44.\n", "Z-54.\n"))).singleElement().asString().startsWith("start-too-close the pass begins at Z-54, 4 mm behind where the work begins");
	}

	@Test
	void aPassBeginsWhereThereIsRoomForThePoint() {
		String bolt = "G21 G40 G99\nT0101\nG97 S900 M3\nG0 X40. Z2.\nG1 X29.85 F.2\nZ-50.\nX40.\nG0 X100. Z100.\n%sT0505 (THREAD M30X2)\nG97 S600 M3\nG0 X36. Z-8.\nG76 P010060 Q80 R.05\nG76 X27.55 Z-46. P1225 Q300 F2.\nG0 X100. Z100.\nM30\n";
		assertThat(said(String.format(bolt, ""))).singleElement().asString().startsWith("start-too-close the pass begins at Z-8, 8 mm behind where the work begins");
		assertThat(said(String.format(bolt, "T0303 (GROOVE)\nG97 S500 M3\nG0 X40. Z-8.\nG1 X27. F.1\nG0 X40.\nG0 X100. Z100.\n"))).as("in a relief").isEmpty();
		String nut = "G21 G40 G99\nT0202 (DRILL 40)\nG97 S500 M3\nG0 X0 Z3.\nG1 Z-60. F.15\nG0 Z3.\nX150. Z100.\nT0404 (BORE)\nG97 S900 M3\nG0 X50. Z2.\nG1 Z-15. F.1\nX43.4\nZ-45.\nX38.\nG0 Z3.\nX150. Z100.\n"
				+ "T0808 (THREAD M45X1.5)\nG97 S500 M3\nG0 X42. Z5.\nZ-10.\nG76 P010060 Q50 R.05\nG76 X45. Z-38. P812 Q200 F1.5\nG0 X42.\nZ5.\nX150. Z100.\nM30\n";
		assertThat(said(nut)).as("in the counterbore").isEmpty();
		assertThat(said(nut.replace("Z-10.\nG76", "Z-20.\nG76"))).singleElement().asString().startsWith("start-too-close the pass begins at Z-20, 5 mm behind where the work begins");
	}

	@Test
	void aThreadWithoutAFeedOfItsOwnGetsTheGroovingTools() {
		assertThat(said("G21 G40 G99\nT0202 (GROOVE)\nG97 S500 M3\nG0 X40. Z-48.\nG1 X26.8 F.08\nG0 X40.\nG0 X100. Z100.\nT0303 (THREAD M30X2)\nG97 S600 M3\nG0 X36. Z8.\nG76 P020060 Q50 R.03\nG76 X27.546 Z-46. P1227 Q300\n"
				+ "G0 X100. Z100.\nM30\n")).containsExactly("feed-missing F.08 was last written before the change to T3 and is left over from the tool before: the thread gets a lead of 0.08; F2");
	}

	@Test
	void aWayBackAslantTearsThroughTheThreadWhereTheToolHasNotLeftIt() {
		String passes = "G21 G40 G99\nT0505 (THREAD M20X1.5)\nG97 S500 M3\nG0 X22. Z5.\nX19.2\nG32 Z-26. F1.5\nG0 X22.\nZ5.\nX18.7\nG32 Z-26. F1.5\nG0 X22.\nX24. Z5.\nX18.16\nG32 Z-26. F1.5\nG0 X22.\nX100. Z100.\nM30\n";
		assertThat(said(passes)).isEmpty();
		assertThat(said(passes.replace("G0 X22.\nX24. Z5.", "G0 X19.\nX24. Z5."))).singleElement().asString().startsWith("exit-scars-thread the tool goes back along Z on diameter 19 mm");
		assertThat(said(passes.replace("G0 X22.\nX24. Z5.", "G0 X24. Z5."))).as("both axes at once, from a relief").isEmpty();
	}

	/** The crests of a thread inside stand where it is bored. */
	@Test
	void aBoreThatIsWiderThanItsThreadLeavesRoomForTheWayBack() {
		String nut = "G21 G40 G99\nT0404 (BORE)\nG97 S900 M3\nG0 X28. Z2.\nG1 Z-45. F.1\nX26.\nG0 Z3.\nX150. Z100.\nT0808 (THREAD M30X2)\nG97 S500 M3\nG0 X%s Z8.\nG92 X28.5 Z-38. F2.\nX29.\nX29.4\nX29.7\nX29.9\nX30.\nG0 X26.\nZ8.\nX150. Z100.\nM30\n";
		assertThat(said(String.format(nut, "27."))).isEmpty();
		assertThat(said(String.format(nut, "29."))).singleElement().asString().contains("the crests of M30x2 stand at 28 mm");
	}

	@Test
	void startsThatAMacroCutsBeginAPitchApart() {
		String screw = "G21 G40 G99\nT0505 (TR24X10 P5)\n#1=0\nG97 S150 M3\nG0 X28. Z20.\nWHILE [#1 LT 2] DO1\n#2=23.4\nWHILE [#2 GT 18.5] DO2\nG0 Z[20.+#1*5.]\nX#2\nG32 Z-150. F10.\nG0 X28.\n#2=#2-.3\nEND2\nG0 Z[20.+#1*5.]\nX18.5\nG32 Z-150. F10.\n"
				+ "G0 X28.\n#1=#1+1\nEND1\nG0 X150. Z50.\nM30\n";
		assertThat(said(screw)).isEmpty();
		assertThat(said(screw.replace("#1*5.", "#1*4."))).singleElement().asString().startsWith("helix-uneven passes from here on begin 1 mm beside the groove of the first one");
	}

	@Test
	void threadsOfOtherPartsOfTheJobDoNotCount() {
		String job = "G21 G40 G99\n(PART 1)\nT0101\nG97 S1500 M3\nG0 X30. Z2.\nG1 X11.9 F.2\nZ-40.\nX26.\nG0 X150. Z100.\nT0303 (THREAD M12X1.75)\nG97 S800 M3\nG0 X16. Z6.\nG76 P010060 Q50 R.02\nG76 X9.853 Z-36. P1073 Q250 F1.75\nG0 X150. Z100.\nM1\n"
				+ "(PART 2)\nT0101\nG97 S1500 M3\nG0 X40. Z2.\nG1 X23.9 F.2\nZ-20.\nX36.\nG0 X150. Z100.\nT0303 (THREAD M24X1.75)\nG97 S600 M3\nG0 X28. Z6.\nG76 P010060 Q50 R.02\nG76 X21.853 Z-17. P1073 Q250 F1.75\nG0 X150. Z100.\nM30\n";
		assertThat(said(job)).isEmpty();
		assertThat(said(job.replace("Z-17. P1073", "Z-27. P1073"))).singleElement().asString().startsWith("thread-into-shoulder the thread goes on to Z-27, the outside is turned to its diameter as far as Z-20");
		assertThat(said(job.replace("Z-17. P1073", "Z-17. P107"))).singleElement().asString().startsWith("passes-too-heavy P makes the thread 0.107 mm deep");
	}

	@Test
	void aToolThatComesBackCutsTheThreadItWasSaidToCut() {
		String again = "G21 G40 G99\nT0505 (THREAD M24X3)\nG97 S400 M3\nG0 X28. Z10.\nG92 X23.2 Z-44. F3.\nX22.6\nX22.1\nX21.6\nX21.2\nX20.8\nX20.5\nX20.32\nG0 X150. Z100.\nT0101 (TURN)\nG97 S900 M3\nG0 X28. Z2.\nX23.85\nG1 Z-44. F.3\nG0 X28.\nG0 X150. Z100.\n"
				+ "T0505\nG97 S400 M3\nG0 X28. Z10.\nG92 X21. Z-44. F3.\nX20.5\nX20.32\nG0 X150. Z100.\nM30\n";
		assertThat(said(again)).isEmpty();
		assertThat(said(again.replace("X21. Z-44. F3.", "X21. Z-44. F2."))).singleElement().asString().startsWith("feed-off-pitch F2 cuts a lead of 2.000 mm, M24x3 has 3.000");
	}

	/** RS-274 (from memory): J is the depth of the first pass, K the whole. */
	@Test
	void theFirstPassOfAnRs274Cycle() {
		String bolt = "(MACHINE PROFILE: turning)\nG20 G18 G90 G95 G40\nT4 (THREAD 5/16-18 UNC)\nG97 S600 M3\nG0 X.4 Z.3\nG76 P.055556 Z-.9 I-.092 J.008 R1.5 K.0678 Q29.5 H1\nG0 X2 Z2\nM2\n";
		assertThat(said(bolt)).isEmpty();
		assertThat(said(bolt.replace("J.008", "J.06"))).singleElement().asString().startsWith("passes-too-heavy the first pass takes 0.03");
	}

	@Test
	void dieHeadsArePulledBackAndDiesAreTurnedBack() {
		String stud = "G21 G40 G99\nT0202 (DRILL 5)\nG97 S1500 M3\nG0 X0 Z3.\nG1 Z-25. F.1\nG0 Z3.\nX80. Z60.\nT0101 (TURN)\nG97 S1500 M3\nG0 X18. Z1.\nG1 X15.9 F.1\nZ-30.\nX20.\nG0 X80. Z60.\nT0404 (%s M16X1.5)\nG97 S200 M3\nG0 X0 Z5.\nG32 Z-26. F1.5\nG0 Z5.\nX80. Z60.\nM30\n";
		assertThat(said(String.format(stud, "SELF OPENING DIE HEAD"))).as("nor is the centre hole drilled for it").isEmpty();
		assertThat(said(String.format(stud, "DIE HEAD").replace("F1.5", "F1."))).singleElement().asString().startsWith("feed-off-pitch F1. advances 1.000 mm a turn, M16x1.5 needs 1.500");
		assertThat(said(String.format(stud, "BUTTON DIE"))).singleElement().asString().startsWith("spindle-wrong-way the tap comes out under M3");
		assertThat(said(String.format(stud, "BUTTON DIE").replace("G0 Z5.\nX80. Z60.\nM30", "M4\nG32 Z5. F1.5\nM5\nG0 X80. Z60.\nM30"))).isEmpty();
	}

	@Test
	void behindAStopTheOtherEndsDrillCounts() {
		String end = "T0202 (DRILL 11.15)\nG97 S900 M3\nG0 X0 Z3.\nG83 Z%s Q8000 F.16\nG80\nG0 X100. Z100.\nT0606 (FORM TAP M12)\nG97 S350 M3\nG0 X0 Z8.\nG84 Z-28. R5. F1.75\nG80\nG0 X100. Z100.\n";
		String both = "G21 G40 G80 G99\n" + end + "M0 (OTHER END)\n" + end + "M30\n";
		assertThat(said(String.format(both, "-38.", "-38."))).isEmpty();
		assertThat(said(String.format(both, "-38.", "-28."))).singleElement().asString().startsWith("drill-too-shallow the tap goes 28 mm deep");
		assertThat(said(String.format(both, "-38.", "-28.").replace("OTHER END", "CHECK THREAD"))).as("the same hole").singleElement().asString().startsWith("drilled-after-threading");
	}

	@Test
	void aHeadingAboveADrillSaysNothingOfIt() {
		String flange = "(T7 DRILL %s / T8 TAP M8X1.25)\nG21 G40 G80\nG99\nT0101\nG96 S220 M3\nG0 X125. Z0\nG1 X20. F.2\nG0 X150. Z100.\n(--- MILLING ---)\nG98\nT0707\nG97 S2200 M3\nG0 X90. Z5.\nG83 Z-25. R-2. Q5000 F180\nG80\nG0 X150. Z100.\n"
				+ "T0808\nG97 S500 M3\nG0 X90. Z8.\nG84 Z-18. R-3. F625.\nG80\nM30\n";
		assertThat(said(String.format(flange, "6.8"))).isEmpty();
		assertThat(said(String.format(flange, "7.4"))).singleElement().asString().startsWith("drill-too-big the hole is drilled 7.4 mm");
	}

	@Test
	void aBoreOfTheTitleIsNotTheFirstToolsPass() {
		String shaft = "(SHAFT M30X2 AND BORE M20X1.5)\nG21 G40 G99\nT0101\nG97 S900 M3\nG0 X29.85 Z82.\nG1 Z50. F.2\nX40.\nG0 X150. Z200.\nT0202 (DRILL 18.5)\nG97 S900 M3\nG0 X0 Z83.\nG1 Z45. F.15\nG0 Z83.\nX150. Z200.\n"
				+ "T0606 (M20X1.5 INSIDE)\nG97 S800 M3\nG0 X17. Z86.\nG76 P010060 Q50 R.05\nG76 X20. Z56. P812 Q200 F1.5\nG0 Z86.\nX150. Z200.\nM30\n";
		assertThat(said(shaft)).isEmpty();
	}

	@Test
	void aTitlesThreadTellsTheWrongUnit() {
		String axle = "(AXLE M18X1.5)\nG20 G40 G99\nT0101\nG97 S1100 M3\nG0 X22. Z2.\nG1 X17.9 F.25\nZ-33.\nX25.\nG0 X120. Z80.\nT0404\nG97 S650 M3\nG0 X22. Z6.\nG92 X17.4 Z-28. F1.5\nX17.\nX16.7\nX16.45\nX16.3\nX16.16\nG0 X120. Z80.\nM30\n";
		assertThat(said(axle)).singleElement().asString().startsWith("inch-metric-mixup lengths are read in inches, and every thread of the program fits in mm: M18x1.5");
		assertThat(said(axle.replace("G20", "G21"))).isEmpty();
	}

	private static List<String> said(String program) {
		return Samples.findings(MachineProfile.named("turning"), program).stream().filter(finding -> finding.severity() != Severity.INFORMATION).map(finding -> finding.rule() + " " + finding.message()).toList();
	}
}
