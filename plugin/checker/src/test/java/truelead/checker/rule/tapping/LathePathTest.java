package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/** The path of a lathe's threading tool: where its passes begin, how it goes back, how dies are taken off. */
class LathePathTest {

	@Test
	void aPassBeginsWhereThereIsRoomForThePoint() {
		String bolt = """
				G21 G40 G99
				T0101
				G97 S900 M3
				G0 X40. Z2.
				G1 X29.85 F.2
				Z-50.
				X40.
				G0 X100. Z100.
				%sT0505 (THREAD M30X2)
				G97 S600 M3
				G0 X36. Z-8.
				G76 P010060 Q80 R.05
				G76 X27.55 Z-46. P1225 Q300 F2.
				G0 X100. Z100.
				M30
				""";
		assertThat(said(String.format(bolt, ""))).singleElement().asString()
				.startsWith("start-too-close the pass begins at Z-8, 8 mm behind where the work begins");
		assertThat(said(String.format(bolt, "T0303 (GROOVE)\nG97 S500 M3\nG0 X40. Z-8.\nG1 X27. F.1\nG0 X40.\nG0 X100. Z100.\n")))
				.as("in a relief").isEmpty();
		String nut = """
				G21 G40 G99
				T0202 (DRILL 40)
				G97 S500 M3
				G0 X0 Z3.
				G1 Z-60. F.15
				G0 Z3.
				X150. Z100.
				T0404 (BORE)
				G97 S900 M3
				G0 X50. Z2.
				G1 Z-15. F.1
				X43.4
				Z-45.
				X38.
				G0 Z3.
				X150. Z100.
				T0808 (THREAD M45X1.5)
				G97 S500 M3
				G0 X42. Z5.
				Z-10.
				G76 P010060 Q50 R.05
				G76 X45. Z-38. P812 Q200 F1.5
				G0 X42.
				Z5.
				X150. Z100.
				M30
				""";
		assertThat(said(nut)).as("in the counterbore").isEmpty();
		assertThat(said(nut.replace("Z-10.\nG76", "Z-20.\nG76"))).singleElement().asString()
				.startsWith("start-too-close the pass begins at Z-20, 5 mm behind where the work begins");
	}

	@Test
	void aThreadWithoutAFeedOfItsOwnGetsTheGroovingTools() {
		assertThat(said("G21 G40 G99\nT0202 (GROOVE)\nG97 S500 M3\nG0 X40. Z-48.\nG1 X26.8 F.08\nG0 X40.\nG0 X100. Z100.\n"
				+ "T0303 (THREAD M30X2)\nG97 S600 M3\nG0 X36. Z8.\nG76 P020060 Q50 R.03\nG76 X27.546 Z-46. P1227 Q300\n"
				+ "G0 X100. Z100.\nM30\n"))
				.containsExactly("feed-missing F.08 was last written before the change to T3 and is left over from the tool before: the "
						+ "thread gets a lead of 0.08; F2");
	}

	@Test
	void aWayBackAslantTearsThroughTheThreadWhereTheToolHasNotLeftIt() {
		String passes = """
				G21 G40 G99
				T0505 (THREAD M20X1.5)
				G97 S500 M3
				G0 X22. Z5.
				X19.2
				G32 Z-26. F1.5
				G0 X22.
				Z5.
				X18.7
				G32 Z-26. F1.5
				G0 X22.
				X24. Z5.
				X18.16
				G32 Z-26. F1.5
				G0 X22.
				X100. Z100.
				M30
				""";
		assertThat(said(passes)).isEmpty();
		assertThat(said(passes.replace("G0 X22.\nX24. Z5.", "G0 X19.\nX24. Z5."))).singleElement().asString()
				.startsWith("exit-scars-thread the tool goes back along Z on diameter 19 mm");
		assertThat(said(passes.replace("G0 X22.\nX24. Z5.", "G0 X24. Z5."))).as("both axes at once, from a relief").isEmpty();
	}

	/** The crests of a thread inside stand where it is bored. */
	@Test
	void aBoreThatIsWiderThanItsThreadLeavesRoomForTheWayBack() {
		String nut = """
				G21 G40 G99
				T0404 (BORE)
				G97 S900 M3
				G0 X28. Z2.
				G1 Z-45. F.1
				X26.
				G0 Z3.
				X150. Z100.
				T0808 (THREAD M30X2)
				G97 S500 M3
				G0 X%s Z8.
				G92 X28.5 Z-38. F2.
				X29.
				X29.4
				X29.7
				X29.9
				X30.
				G0 X26.
				Z8.
				X150. Z100.
				M30
				""";
		assertThat(said(String.format(nut, "27."))).isEmpty();
		assertThat(said(String.format(nut, "29."))).singleElement().asString().contains("the crests of M30x2 stand at 28 mm");
	}

	@Test
	void startsThatAMacroCutsBeginAPitchApart() {
		String screw = """
				G21 G40 G99
				T0505 (TR24X10 P5)
				#1=0
				G97 S150 M3
				G0 X28. Z20.
				WHILE [#1 LT 2] DO1
				#2=23.4
				WHILE [#2 GT 18.5] DO2
				G0 Z[20.+#1*5.]
				X#2
				G32 Z-150. F10.
				G0 X28.
				#2=#2-.3
				END2
				G0 Z[20.+#1*5.]
				X18.5
				G32 Z-150. F10.
				G0 X28.
				#1=#1+1
				END1
				G0 X150. Z50.
				M30
				""";
		assertThat(said(screw)).isEmpty();
		assertThat(said(screw.replace("#1*5.", "#1*4."))).singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 1 mm beside the groove of the first one");
	}

	/** RS-274 (from memory): J is the depth of the first pass, K the whole. */
	@Test
	void theFirstPassOfAnRs274Cycle() {
		String bolt = """
				(MACHINE PROFILE: turning)
				G20 G18 G90 G95 G40
				T4 (THREAD 5/16-18 UNC)
				G97 S600 M3
				G0 X.4 Z.3
				G76 P.055556 Z-.9 I-.092 J.008 R1.5 K.0678 Q29.5 H1
				G0 X2 Z2
				M2
				""";
		assertThat(said(bolt)).isEmpty();
		assertThat(said(bolt.replace("J.008", "J.06"))).singleElement().asString().startsWith("passes-too-heavy the first pass takes 0.03");
	}

	@Test
	void dieHeadsArePulledBackAndDiesAreTurnedBack() {
		String stud = """
				G21 G40 G99
				T0202 (DRILL 5)
				G97 S1500 M3
				G0 X0 Z3.
				G1 Z-25. F.1
				G0 Z3.
				X80. Z60.
				T0101 (TURN)
				G97 S1500 M3
				G0 X18. Z1.
				G1 X15.9 F.1
				Z-30.
				X20.
				G0 X80. Z60.
				T0404 (%s M16X1.5)
				G97 S200 M3
				G0 X0 Z5.
				G32 Z-26. F1.5
				G0 Z5.
				X80. Z60.
				M30
				""";
		assertThat(said(String.format(stud, "SELF OPENING DIE HEAD"))).as("nor is the centre hole drilled for it").isEmpty();
		assertThat(said(String.format(stud, "DIE HEAD").replace("F1.5", "F1."))).singleElement().asString()
				.startsWith("feed-off-pitch F1. advances 1.000 mm a turn, M16x1.5 needs 1.500");
		assertThat(said(String.format(stud, "BUTTON DIE"))).singleElement().asString()
				.startsWith("spindle-wrong-way the die comes off under M3");
		assertThat(said(String.format(stud, "BUTTON DIE").replace("G0 Z5.\nX80. Z60.\nM30", "M4\nG32 Z5. F1.5\nM5\nG0 X80. Z60.\nM30")))
				.isEmpty();
	}

	private static List<String> said(String program) {
		return Samples.heard(MachineProfile.named("turning"), program);
	}
}
