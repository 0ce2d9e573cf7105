package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** Threads that a lathe cuts by a single point: lead words, hand, speed, starts, taper and the way before the face. */
class TurnedThreadTest {

	private static final String HEAD = "G21 G99 G40\nT0505 (OD THREAD %s)\n";

	@Test
	void oldLathesSayTheLeadByE() {
		assertThat(said("G20 G99\nT0202 (OD THREAD 3/4-10 UNC)\nG97 S600 M3\nG0 X.85 Z.3\nG92 X.73 Z-1.25 E.11\nX.65\nX.6273\n"))
				.singleElement().asString().startsWith("feed-off-pitch E0.11 cuts").endsWith("E0.1");
		assertThat(said("G20 G99\nT0202 (OD THREAD 3/4-10 UNC)\nG97 S600 M3\nG0 X.85 Z.3\nG92 X.73 Z-1.25 E.1\nX.65\nX.6273\n")).isEmpty();
		assertThat(said("G20 G99\nT0202 (OD THREAD 3/4-10 UNC)\nG97 S600 M3\nG0 X.85 Z.3\nG92 X.73 Z-1.25\nX.65\nX.6273\n"))
				.containsExactly("feed-missing no F is in force in the threading block: the thread has no lead; F0.1");
	}

	@Test
	void theCycleOfTheOtherCodeSystemIsG78() {
		assertThat(passes("M16X2", "M3", "G0 X20. Z6.", "G78 X15.2 Z-25. F1.5", "X13.55")).singleElement().asString()
				.contains("M16x2 has 2.000");
		assertThat(passes("M16X2", "M3", "G0 X20. Z6.", "G78 X15.2 Z-25. F2.", "X13.55")).isEmpty();
	}

	@Test
	void theHandFollowsTheSpindleAndTheWayAlongZ() {
		assertThat(passes("M20X1.5 LH", "M3", "G0 X22. Z6.", "G92 X19. Z-28. F1.5", "X18.16"))
				.containsExactly("spindle-wrong-way M3 and passes towards the chuck cut a right-hand thread, M20x1.5-LH is left-hand; M4, "
						+ "or passes the other way along Z");
		assertThat(passes("M20X1.5 LH", "M4", "G0 X22. Z6.", "G92 X19. Z-28. F1.5", "X18.16")).isEmpty();
		assertThat(passes("M20X1.5 LH", "M3", "G0 X22. Z-33.", "G92 X19. Z3. F1.5", "X18.16")).isEmpty();
		assertThat(passes("M20X1.5", "M4", "G0 X22. Z-33.", "G92 X19. Z3. F1.5", "X18.16")).as("right-hand, drawn out under M4").isEmpty();
	}

	@Test
	void aThreadWantsOneSpeedAndASpindleThatTurns() {
		assertThat(said(HEAD.formatted("M20X1.5") + "G96 S150 M3\nG0 X22. Z6.\nG92 X19. Z-28. F1.5\nX18.16\n")).singleElement().asString()
				.startsWith("speed-changed the thread is cut at constant surface speed");
		assertThat(passes("M20X1.5", "M3", "G0 X22. Z6.", "G92 X19. Z-28. F1.5", "S900", "X18.16")).singleElement().asString()
				.startsWith("speed-changed S900 from here on, the passes before were cut at S600");
		assertThat(passes("M20X1.5", "M3", "M5", "G0 X22. Z6.", "G92 X19. Z-28. F1.5", "X18.16")).singleElement().asString()
				.startsWith("spindle-not-turning M5 stopped the spindle");
		assertThat(passes("M20X1.5", "M3", "M5", "M213", "G0 X22. Z6.", "G92 X19. Z-28. F1.5", "X18.16"))
				.as("a code that may start it").isEmpty();
	}

	@Test
	void passesShareTheirGroove() {
		assertThat(passes("M30X3.5", "M3", "G0 X34. Z10.", "G92 X29. Z-60. F3.5", "X27.", "G0 Z11.", "G92 X26.4 Z-60. F3.5", "X25.71"))
				.containsExactly("helix-uneven passes from here on begin 1 mm beside the groove of the first one: they cut away the thread "
						+ "between; begin at Z10, or whole pitches of 3.500 from there");
		assertThat(passes("M30X3.5", "M3", "G0 X34. Z10.", "G92 X29. Z-60. F3.5", "G0 Z9.7", "G92 X28. Z-60. F3.5", "G0 Z9.4",
				"G92 X27. Z-60. F3.5", "G0 Z9.", "G92 X25.71 Z-60. F3.5")).as("fed in along the flank").isEmpty();
	}

	@Test
	void severalStartsLieWholePitchesApart() {
		String[] starts = { "G0 X44. Z18.", "G76 P010060 Q60 R.03", "G76 X36.32 Z-30. P1840 Q350 F9.", "G0 X44. Z21.",
				"G76 P010060 Q60 R.03", "G76 X36.32 Z-30. P1840 Q350 F9.", "G0 X44. Z24.", "G76 P010060 Q60 R.03",
				"G76 X36.32 Z-30. P1840 Q350 F9." };
		assertThat(passes("M40X9 (P3)", "M3", starts)).isEmpty();
		assertThat(passes("M40X9 (P3)", "M3", String.join("!", starts).replace("Z21.", "Z22.").split("!"))).singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 1 mm beside");
		assertThat(passes("M40X9 (P3)", "M3", String.join("!", starts).replace("Z24.", "Z21.").split("!"))).singleElement().asString()
				.contains("at 2 places: 2 grooves are cut, M40x9P3 has 3 starts");
		assertThat(passes("TR20X8(P4)", "M3", "G0 X24. Z16.", "G92 X17. Z-60. F8.", "X15.5", "G92 X17. Z-60. F8. Q180000", "X15.5 Q180000"))
				.isEmpty();
		assertThat(passes("TR20X8(P4)", "M3", "G0 X24. Z16.", "G92 X17. Z-60. F8.", "X15.5", "G92 X17. Z-60. F8. Q0", "X15.5 Q0"))
				.singleElement().asString().contains("one groove is cut");
	}

	@Test
	void aPipeThreadNeedsItsTaper() {
		String program = """
				G20 G99 G40
				T0505 (OD THREAD)
				(1-11.5 NPT)
				G97 S500 M3
				G0 X1.5 Z.4
				G76 P010060 Q30 R10
				G76 X1.1845 Z-.85 R-.0391 P696 Q120 F.08696
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("R-.0391", "R.0391")))
				.containsExactly("taper-off the pass ends 0.0391 in nearer to the axis than it begins, over 1.25 in a taper of 1 in 16 "
						+ "needs 0.0391 in farther from it; R-0.0391");
		assertThat(said(program.replace(" R-.0391", ""))).singleElement().asString().endsWith("; R-0.0391");
	}

	@Test
	void thePassBeginsBeforeTheFace() {
		assertThat(passes("M30X3.5", "M3", "G0 X34. Z.5", "G92 X29. Z-60. F3.5", "X25.71")).singleElement().asString()
				.startsWith("start-too-close the pass begins 0.5 mm before the face").endsWith("begin at Z7");
	}

	@Test
	void twoThreadsOfOneToolHaveTheirOwnLeads() {
		String[] two = { "(M12X1.25)", "G0 X15. Z5.", "G92 X11.6 Z-20. F1.25", "X10.47", "G0 X25. Z-30.", "(M20X1.5 BEHIND SHOULDER)",
				"G92 X19.4 Z-50. F1.25", "X18.16" };
		assertThat(passes("", "M3", two)).singleElement().asString().startsWith("feed-off-pitch F1.25 cuts").endsWith("; F1.5");
	}

	@Test
	void aNutMayBeWhatIsTurned() {
		String nut = """
				(LOCK NUT M45X1.5)
				G21 G99 G40
				T0404
				G97 S800 M3
				G0 X42. Z5.
				G76 P010060 Q100 R50
				G76 X45. Z-15. P974 Q300 F2.
				""";
		assertThat(said(nut)).singleElement().asString().endsWith("; F1.5");
	}

	@Test
	void theDeepestPassIsCutOut() {
		assertThat(passes("M20X1.5", "M3", "G0 X22. Z6.", "G92 X19. Z-28. F1.5", "X18.66"))
				.containsExactly("helix-off-size the deepest pass of the thread outside goes to diameter 18.66 mm, M20x1.5 needs at most "
						+ "18.421 mm: 0.239 mm too large, the thread is not cut out and no gauge goes on; 18.16 mm");
		assertThat(passes("M20X1.5", "M3", "G0 X22. Z6.", "G92 X19.3 Z-28. F1.5", "X18.7", "X17.16")).singleElement().asString()
				.endsWith("the thread is too deep and loose; 18.16 mm");
		assertThat(passes("M20X1.5", "M3", "G0 X22. Z6.", "G92 X19.3 Z-28. F1.5", "X18.7", "X18.376"))
				.as("the minor diameter of the nut").isEmpty();
		assertThat(passes("M20X1.5 INTERNAL", "M3", "G0 X17.5 Z6.", "X18.9", "G32 Z-20. F1.5", "G0 X17.5", "Z6.", "X19.6", "G32 Z-20. F1.5",
				"G0 X17.5", "Z6.")).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread inside goes to diameter 19.6 mm, M20x1.5 needs at "
						+ "least 19.85 mm");
	}

	@Test
	void aTaperThreadIsMeasuredWhereItsPassEnds() {
		String program = """
				G20 G99 G40
				T0303 (OD THREAD 1/2-14 NPT)
				G97 S500 M3
				G0 X1. Z.2
				G76 P020060 Q30 R.002
				G76 X.7419 Z-.65 R-.0266 P571 Q150 F.0714
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("X.7419", "X.6419"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 0.6419 in, 1/2-14 NPT needs at least "
						+ "0.7062 in there");
	}

	/** A tool that has begun the thread before, or another thread of the same tool, explains the diameter. */
	@Test
	void whatIsCutFurtherOrNamedElsewhereIsNotJudged() {
		assertThat(passes("M20X1.5", "M3", "G0 X22. Z6.", "G92 X19.3 Z-28. F1.5", "X18.66", "G0 X100. Z100.",
				"T0707 (FINISH THREAD M20X1.5)", "G0 X22. Z6.", "G92 X18.3 Z-28. F1.5", "X18.16")).isEmpty();
		assertThat(passes("M20X1.5", "M3", "G0 X22. Z6.", "G92 X19.3 Z-28. F1.5", "X18.16", "G0 X40. Z-40.", "G92 X35. Z-60. F1.5",
				"X34.16")).isEmpty();
	}

	@Test
	void theFirstPassLeavesSomeForTheOthers() {
		assertThat(passes("M30X3.5", "M3", "G0 X34. Z10.", "G92 X26.8 Z-60. F3.5", "X25.71")).singleElement().asString()
				.startsWith("passes-too-heavy the first pass takes 1.6 mm of the thread's 2.145 mm at once, and the point breaks; some "
						+ "0.57 mm at first");
		assertThat(passes("M6X1", "M3", "G0 X8. Z5.", "G92 X5.2 Z-12. F1.", "X4.77")).as("a fine thread in brass").isEmpty();
		assertThat(passes("M30X2", "M3", "G0 X34. Z6.", "G76 X27.55 Z-25. I0 K.122 D350 F2. A60")).singleElement().asString()
				.startsWith("passes-too-heavy K makes the thread 0.122 mm deep, it is 1.225 mm: the first pass takes 1.225 mm at once");
		assertThat(passes("M30X2", "M3", "G0 X34. Z6.", "G76 P010060 Q80 R.05", "G76 X27.55 Z-25. P12250 Q300 F2.")).singleElement()
				.asString().startsWith("passes-too-heavy P makes the thread 12.25 mm deep");
	}

	@Test
	void theToolGoesBackOffTheThread() {
		String[] moves = { "G0 X22. Z6.", "X19.3", "G32 Z-28. F1.5", "G0 X22.", "Z6.", "X18.7", "G32 Z-28.", "G0 X22.", "Z6.", "X18.16",
				"G32 Z-28.", "G0 X22.", "Z6." };
		assertThat(passes("M20X1.5", "M3", moves)).isEmpty();
		String[] forgotten = { "G0 X22. Z6.", "X19.3", "G32 Z-28. F1.5", "G0 X22.", "Z6.", "X18.7", "G32 Z-28.", "G0 Z6.", "X18.16",
				"G32 Z-28.", "G0 X22.", "Z6." };
		assertThat(passes("M20X1.5", "M3", forgotten)).singleElement().asString()
				.startsWith("exit-scars-thread the tool goes back along Z on diameter 18.7 mm, the crests of M20x1.5 stand at 20 mm");
		assertThat(passes("M20X1.5 LH", "M3", "G0 X22. Z-33.", "G92 X19.3 Z3. F1.5", "X18.16", "G0 X22.", "Z50."))
				.as("drawn out, and away from the part").isEmpty();
	}

	/**
	 * RS-274 lathes say pitch, crests and depth in one block beside where the tool stands; cycles called by name say them in their order.
	 */
	@Test
	void cyclesOfOtherControlsAreFollowed() {
		String beside = """
				G7 G18 G20 G90 G95
				T5 (OD THREAD 3/4-16)
				G97 S500 M3
				G0 X.8 Z.25
				G76 P.0625 Z-.75 I-.05 J.012 R1.5 K.0767 Q29.5 H1 E.05 L2
				""";
		assertThat(said(beside)).isEmpty();
		assertThat(said(beside.replace("P.0625", "P.0714"))).singleElement().asString()
				.startsWith("feed-off-pitch P0.0714 cuts a lead of 0.07140 in");
		assertThat(said(beside.replace("K.0767", "K.0367"))).singleElement().asString().startsWith("helix-off-size");
		String named = """
				G18 G21 G90 G95
				T5 (AUSSENGEWINDE M42X2)
				G97 S600 M3
				G0 X50 Z10
				CYCLE97(2,,0,-28,42,42,6,3,1.227,0.1,30,0,8,2,3,1)
				""";
		assertThat(said(named)).isEmpty();
		assertThat(said(named.replace("(2,,", "(1.5,,"))).singleElement().asString().startsWith("feed-off-pitch")
				.contains("M42x2 has 2.000");
		assertThat(said(named.replace("1.227", "0.9"))).singleElement().asString().startsWith("helix-off-size");
		assertThat(said(named.replace("CYCLE97(2,,0,-28,42,42,6,3,1.227,0.1,30,0,8,2,3,1)",
				"CYCLE99(0,42,-28,42,6,3,1.083,0.1,30,0,8,2,2,2,1)").replace("AUSSEN", "INNEN"))).singleElement().asString()
				.as("depth from the major diameter inside").contains("44.166 mm");
		assertThat(said(named.replace("3,1)", "3,2)"))).as("two starts at the lead of one").singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 1 mm beside the groove");
	}

	private static List<String> passes(String thread, String spindle, String... passes) {
		return said(HEAD.formatted(thread) + "G97 S600 " + spindle + "\n" + String.join("\n", passes) + "\n");
	}

	private static List<String> said(String program) {
		return Samples.findings(MachineProfile.named("turning"), program + "G0 X100. Z100.\nM30\n").stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION)
				.map(finding -> finding.rule() + " " + finding.message()).toList();
	}
}
