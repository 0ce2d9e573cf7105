package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/**
 * Passes of a lathe's thread one by one: out of their order, less deep at the end, of forms other than the V; reliefs; a bar that Z grows
 * into.
 */
class TurnedPassesTest {

	private static final String[] M16 = { "G0 X20. Z6.", "G92 X15.5 Z-27. F1.5", "X15.1", "X14.8", "X14.55", "X14.35", "X14.22", "X14.16" };

	@Test
	void aPassOutOfItsOrderTakesTooMuch() {
		assertThat(said("M16X1.5", "M3", String.join("\n", M16))).isEmpty();
		assertThat(said("M16X1.5", "M3", String.join("\n", M16).replace("X14.8\n", "X14.08\n"))).singleElement().asString()
				.startsWith("passes-too-heavy the pass to diameter 14.08 mm takes 0.51 mm of the thread's 0.96 mm at once, and the next, "
						+ "to 14.55 mm, cuts air");
		String twice = String.join("\n", M16) + "\n" + String.join("\n", M16);
		assertThat(said("M16X1.5", "M3", twice)).as("begun anew, as for the next part").isEmpty();
	}

	@Test
	void aFirstPassAsDeepAsTheLastLeavesAirToTheOthers() {
		String m4 = "G0 X6. Z3.\nG92 X3.7 Z-9. F.7\nX3.5\nX3.35\nX3.2\nX3.141";
		assertThat(said("M4X0.7", "M3", m4)).isEmpty();
		assertThat(said("M4X0.7", "M3", m4.replace("X3.7", "X3.1"))).singleElement().asString()
				.startsWith("passes-too-heavy the first pass, to diameter 3.1 mm, takes all of the thread at once, and those behind it, "
						+ "the next to 3.5 mm, cut air; a diameter before 3.5 mm");
	}

	@Test
	void passesTwoThatCutAirAreNoBurr() {
		String pipe = "G0 X22. Z6.\nG92 X24.9 Z-19. F1.814\nX25.3\nX25.65\nX25.95\nX26.2\nX26.38\nX26.441\nX26.441";
		assertThat(said("G3/4 INTERNAL", "M3", pipe)).isEmpty();
		assertThat(said("G3/4 INTERNAL", "M3", pipe.replace("X26.441", "X24.641"))).singleElement().asString()
				.startsWith("passes-too-heavy the last pass, to diameter 24.641 mm, cuts air");
	}

	private static final String NUT_SEAT = """
			T0101 (TURN)
			G96 S180 M3
			G0 X14. Z2.
			G1 Z-30. F.2
			X%s Z-31.5
			Z-50.
			X45.
			G0 X60. Z60.
			T0303 (THREAD M30X1.5)
			G97 S500 M3
			G0 X35. Z-22.
			G92 X29.3 Z-%s F1.5
			X28.8
			X28.4
			X28.16
			G0 X60. Z60.
			""";

	@Test
	void theThreadInTheMiddleOfAShaftHasAShoulderToo() {
		assertThat(said("M30X1.5", "M3", NUT_SEAT.formatted("29.85", "47."))).isEmpty();
		assertThat(said("M30X1.5", "M3", NUT_SEAT.formatted("29.85", "60."))).singleElement().asString()
				.startsWith("thread-into-shoulder the thread goes on to Z-60, the outside is turned to its diameter as far as Z-50");
	}

	/** Both ends of a part, the other one on the second spindle: neither thread goes on with the other. */
	@Test
	void theOtherEndsThreadDoesNotExcuseThisOne() {
		String ends = """
				G0 X26. Z5.
				G76 P010060 Q60 R.03
				G76 X20.16 Z-30. P920 Q260 F1.5
				G0 X100. Z100.
				T0404 (THREAD M22X1.5)
				G97 S600 M3
				G0 X26. Z-5.
				G76 P010060 Q60 R.03
				G76 X20.16 Z30. P920 Q260 F1.5
				""";
		assertThat(said("M22X1.5", "M3", ends)).isEmpty();
		assertThat(said("M22X1.5", "M3", ends.replace("X20.16 Z-30", "X21.06 Z-30"))).singleElement().asString()
				.startsWith("helix-off-size");
	}

	@Test
	void onePassAtAnotherLeadIsToldWhereTheTitleNamesTheThread() {
		String plug = """
				(PLUG R3/4)
				G21 G99
				T0303
				G97 S600 M3
				G0 X32. Z6.
				X25.1
				G33 X26.446 Z-15.5 F1.814
				G0 X32.
				Z6.
				X24.5
				G33 X25.846 Z-15.5 F1.814
				G0 X32.
				Z6.
				X23.6
				G33 X24.946 Z-15.5 F1.814
				G0 X32.
				Z6.
				X23.22
				G33 X24.564 Z-15.5 F1.814
				G0 X100. Z100.
				M30
				""";
		assertThat(Samples.heard(MachineProfile.named("turning"), plug)).isEmpty();
		assertThat(Samples.heard(MachineProfile.named("turning"), plug.replace("X24.946 Z-15.5 F1.814", "X24.946 Z-15.5 F1.841")))
				.singleElement().asString().startsWith("feed-off-pitch F1.841 cuts a lead of 1.841 mm, the other 3 passes of the thread");
	}

	@Test
	void everyStartIsCutOut() {
		String start = "G0 X34. Z%s\nG92 X29.2 Z-43. F6.\nX28.7\nX28.2\nX27.9\nX27.7\nX27.546\n";
		String three = start.formatted("12.") + start.formatted("14.") + start.formatted("16.");
		assertThat(said("M30X6P2", "M3", three)).isEmpty();
		assertThat(said("M30X6P2", "M3", start.formatted("12.") + start.formatted("14.") + start.formatted("16.")
				.replace("X27.546", "X28.546"))).singleElement().asString()
				.startsWith("passes-too-heavy the last pass, to diameter 28.546 mm, cuts air: one before it went to 27.7 mm");
	}

	@Test
	void aLastPassThatIsLessDeepIsTheOneToMend() {
		assertThat(said("M16X1.5", "M3", "G0 X20. Z6.", "G92 X15.5 Z-27. F1.5", "X15.1", "X14.8", "X14.55", "X14.16".replace("14.", "15.")))
				.singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 14.55 mm and the last one to 15.16 mm, "
						+ "M16x1.5 needs at most");
	}

	/** ASME B1.8, B1.9 and DIN 405-1, from memory: D - 0.6 P - 0.020 in, D - 1.325 P, D - P. */
	@Test
	void lowTrapezoidsSawTeethAndKnucklesAreMeasured() {
		assertThat(said("STUB ACME 1.250-5", "M3", "G0 X36. Z15.", "G76 X28.194 Z-40. P1778 Q200 F5.08")).isEmpty();
		assertThat(said("STUB ACME 1.250-5", "M3", "G0 X36. Z15.", "G76 X26.194 Z-40. P1778 Q200 F5.08")).singleElement().asString()
				.startsWith("helix-off-size");
		assertThat(said("2.000-10 BUTT", "M3", "G0 X56. Z15.", "G76 X47.43 Z-40. P1680 Q200 F2.54")).isEmpty();
		assertThat(said("2.000-10 BUTT", "M3", "G0 X56. Z15.", "G76 X44.9 Z-40. P1680 Q200 F2.54")).singleElement().asString()
				.startsWith("helix-off-size");
		assertThat(said("RD 28X1/8", "M3", "G0 X31. Z10.", "G76 X24.825 Z-24. P1588 Q200 F3.175")).isEmpty();
		assertThat(said("RD 28X1/8", "M3", "G0 X31. Z10.", "G76 X26.2 Z-24. P1588 Q200 F3.175")).singleElement().asString()
				.startsWith("helix-off-size");
	}

	@Test
	void aCyclesHeightIsThatOfItsThreadWhateverItsForm() {
		assertThat(said("TR30X6", "M3", "G0 X34. Z20.", "G76 X23. Z-145. P3500 Q250 F6.")).isEmpty();
		assertThat(said("TR30X6", "M3", "G0 X34. Z20.", "G76 X23. Z-145. P350 Q250 F6.")).singleElement().asString()
				.startsWith("passes-too-heavy P makes the thread 0.35 mm deep, it is 3.5 mm");
	}

	@Test
	void aReliefIsAsWideAsItsThreadIsCoarse() {
		String turned = """
				G0 X44. Z3.
				G1 X39.95 F.2
				Z-210.
				X50.
				G0 X60.
				Z-220.
				G1 X31. F.1
				G0 X60.
				""";
		assertThat(said("TR40X7", "M3", turned + "G0 X46. Z20.\nG76 X32. Z-214. P4000 Q250 F7.")).isEmpty();
		assertThat(said("TR40X7", "M3", turned + "G0 X46. Z20.\nG76 X32. Z-240. P4000 Q250 F7.")).singleElement().asString()
				.startsWith("thread-into-shoulder");
	}

	/** A bar machine: Z grows into the bar. */
	@Test
	void theOutsideTellsWhichWayZGrows() {
		String turned = """
				G97 S4000 M3
				G0 X7. Z-1.
				G1 X5.95 F.05
				Z12. F.04
				X7.
				G0 X12.
				""";
		String thread = """
				G0 X7.5 Z-3.
				G92 X5.6 Z9. F.75
				X5.4
				X5.25
				X5.15
				X5.08
				""";
		assertThat(said("M6X0.75", "M3", turned + thread)).isEmpty();
		assertThat(said("M6X0.75", "M3", turned + "M4\n" + thread)).singleElement().asString()
				.startsWith("spindle-wrong-way M4 and passes towards the chuck cut a left-hand thread");
	}

	private static List<String> said(String thread, String spindle, String... passes) {
		return Samples.heard(MachineProfile.named("turning"), "G21 G40 G99\nT0303 (THREAD " + thread + ")\nG97 S600 " + spindle + "\n"
				+ String.join("\n", passes) + "\nG0 X100. Z100.\nM30\n");
	}
}
