package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/** Threads that only the title of a lathe's program names: the screw that is turned, and a thread far too deep on what is turned for it. */
class TurnedTitleTest {

	private static final String STUD = """
			(%s)
			G21 G40 G99
			T0101 (OD TURN)
			G97 S1200 M3
			G0 X15. Z2.
			X11.9
			G1 Z-25. F.2
			X20.
			G0 X100. Z100.
			T0303 (OD THREAD 60)
			G97 S600 M3
			G0 X14. Z5.
			G92 X11.3 Z-20. F1.75
			X10.8
			X10.4
			X10.1
			X9.85
			G0 X100. Z100.
			M30
			""";

	@Test
	void theScrewOfTheTitleIsWhatIsTurned() {
		String stud = STUD.formatted("STUD M12X1.75 BOTH ENDS");
		assertThat(said(stud)).isEmpty();
		assertThat(said(stud.replace("F1.75", "F1.5"))).singleElement().asString()
				.startsWith("feed-off-pitch F1.5 cuts a lead of 1.500 mm, M12x1.75 has 1.750");
	}

	@Test
	void aThreadMoreThanAPitchTooDeepIsTheTitlesWhereTheOutsideIsTurnedForIt() {
		String stud = STUD.formatted("STUD M12X1.75 BOTH ENDS").replace("X11.3", "X11.").replace("X9.85", "X7.6");
		assertThat(said(stud)).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread outside goes to diameter 7.6 mm");
		assertThat(said(stud.replace("X11.9", "X8.9"))).as("on what is turned for another thread").isEmpty();
	}

	@Test
	void aCoreHoleBesideItDoesNotHideTheThreadOfTheTitle() {
		String nut = """
				(GEHAEUSE M33X2 INNEN, KERNLOCH 30.9)
				G21 G40 G99
				T0303 (BORING BAR)
				G96 S160 M3
				G0 X30.9 Z2.
				G1 Z-32. F.2
				X28.
				G0 Z100.
				T0606
				G97 S500 M3
				G0 X28. Z6.
				G76 P020060 Q50 R-.03
				G76 X33. Z-29. P1083 Q250 F2.
				G0 Z150.
				M30
				""";
		assertThat(said(nut)).isEmpty();
		assertThat(said(nut.replace("F2.", "F1.5"))).singleElement().asString().startsWith("feed-off-pitch");
		assertThat(said(nut.replace("X30.9 Z2.", "X31.9 Z2."))).singleElement().asString().startsWith("drill-too-big");
	}

	@Test
	void aWholeInchOfPipeInTheTitleIsAThreadWhereItIsCut() {
		String nipple = STUD.formatted("KOERPER G1").replace("X11.9", "X33.2").replace("X14.", "X36.").replace("X11.3", "X32.")
				.replace("X10.8\nX10.4\nX10.1\nX9.85", "X31.\nX30.292").replace("F1.75", "F2.309");
		assertThat(said(nipple)).isEmpty();
		assertThat(said(nipple.replace("F2.309", "F1.814"))).singleElement().asString()
				.startsWith("feed-off-pitch F1.814 cuts a lead of 1.814 mm, G 1 has 2.309");
	}

	private static List<String> said(String program) {
		return Samples.heard(MachineProfile.named("turning"), program);
	}
}
