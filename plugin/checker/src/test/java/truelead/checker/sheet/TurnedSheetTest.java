package truelead.checker.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.drawing.Ink;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.thread.Hand;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

/** The numbers of threads that a lathe cuts by a single point. */
class TurnedSheetTest {

	private static final String SHAFT = """
			G21 G40 G99
			T0101 (TURN)
			G97 S1200 M3
			G0 X26. Z2.
			G1 X19.9 F.2
			Z-30.
			X40.
			G0 X100. Z100.
			T0303 (THREAD M20X1.5)
			G97 S600 M3
			G0 X24. Z6.
			G92 X19.3 Z-27. F1.5
			X18.7
			X18.16
			G0 X100. Z100.
			M30
			""";
	private static final String CYCLE = SHAFT.replace("G92 X19.3 Z-27. F1.5\nX18.7\nX18.16\n",
			"G76 P020060 Q50 R.02\nG76 X18.16 Z-27. P920 Q250 F1.5\n");

	private static TurnedSheet sheet(String program) {
		List<TurnedSheet> all = Sheets.turned(WorkReader.read(new ProgramFile("shaft.nc", ProgramText.of(program)), ProgramFolder.EMPTY,
				Job.EMPTY, MachineProfile.named("turning")));
		assertThat(all).hasSize(1);
		return all.get(0);
	}

	private static List<String> figures(String program) {
		return SheetFigures.of(sheet(program)).stream().map(figure -> figure.name() + ": " + figure.value()).toList();
	}

	@Test
	void tellsEachPassOfACycleBlockByBlock() {
		assertThat(figures(SHAFT)).contains("a turn: advances 1.500 mm, the thread needs 1.500 mm (0.000)",
				"hand: right, by spindle and way of the passes", "starts: 1", "outside: turned to Z-30, line 6", "along Z: Z6 to Z-27",
				"first pass: to diameter 19.3 mm", "passes: 3: 19.3 · 18.7 · 18.16", "goes to: diameter 18.16 mm, line 14");
	}

	@Test
	void aPassBesideTheGrooveIsNoFurtherStart() {
		String beside = SHAFT.replace("X18.7\nX18.16\n", "X18.16\nG0 Z6.5\nG92 X18.7 Z-27. F1.5\n");
		assertThat(sheet(beside).cut().passes()).as("passes").hasSize(3);
		assertThat(figures(beside)).contains("starts: 1");
		String second = SHAFT.replace("M20X1.5", "M20X3P1.5").replace("F1.5\nX18.7\nX18.16\n",
				"F3.\nX18.16\nG0 Z7.5\nG92 X18.7 Z-27. F3.\nX18.16\n");
		assertThat(figures(second)).contains("starts: 2");
	}

	@Test
	void tellsTheLimitsOfTheScrewAndWhatIsLeftToTheShoulder() {
		assertThat(figures(SHAFT)).contains("left behind it: 3 mm to the shoulder")
				.anySatisfy(figure -> assertThat(figure)
						.startsWith("limits: 6g: major diameter 19.732 mm to 19.968 mm, pitch diameter 18.854 mm to 18.994 mm, ")
						.contains("ISO 965-1", "from memory"));
		assertThat(sheet(SHAFT).room()).isEqualTo(3);
		assertThat(sheet(SHAFT).turns()).isEqualTo(18);
		assertThat(figures(SHAFT.replace("Z-30.\n", ""))).noneSatisfy(figure -> assertThat(figure).startsWith("left"));
	}

	@Test
	void isDrawnInSection() {
		assertThat(Drawings.of(sheet(SHAFT), Ink.BLACK).orElseThrow().text())
				.isEqualTo("Passes from Z6 to Z-27, the first to diameter 19.3 mm, the deepest to diameter 18.16 mm. 3 mm before: "
						+ "shoulder Z-30.");
		assertThat(Drawings.of(sheet(SHAFT.replace("Z-27.", "Z-31.")), Ink.BLACK).orElseThrow()).satisfies(drawing -> {
			assertThat(drawing.text()).endsWith("1 mm beyond: shoulder Z-30.");
			assertThat(drawing.svg()).contains("font-weight=\"bold\">ends Z-31<");
		});
		assertThat(Drawings.of(sheet(SHAFT.replace("X18.16", "X#1")), Ink.BLACK)).isPresent();
		assertThat(Drawings.of(sheet(SHAFT.replace("Z-27.", "Z#1")), Ink.BLACK)).isEmpty();
	}

	@Test
	void saysOfACycleThatDividesTheDepthWhatItsBlockSays() {
		assertThat(figures(CYCLE)).contains("first pass: 0.25 mm deep", "passes: as many as the control makes",
				"goes to: diameter 18.16 mm, line 13", "height by the cycle: 0.92 mm");
		assertThat(sheet(CYCLE).firstDiameter()).isNaN();
		assertThat(figures(CYCLE.replace("P920 Q250", "P#1 Q#2")))
				.contains("first pass: depth not known", "passes: as many as the control makes");
	}

	@Test
	void inventsNoPassesOfACycleThatIsCalledByName() {
		String named = SHAFT.replace("G92 X19.3 Z-27. F1.5\nX18.7\nX18.16\n", "CYCLE97(1.5,,0,-25,20,20,6,2,0.92,0.05,30,0,8,1,3,1)\n");
		assertThat(figures(named)).contains("first pass: depth not known", "passes: 9", "along Z: Z6 to Z-27",
				"goes to: diameter 18.16 mm, line 12");
	}

	@Test
	void theHandFollowsSpindleAndWay() {
		assertThat(sheet(SHAFT.replace("S600 M3", "S600 M4")).hand()).contains(Hand.LEFT);
		assertThat(sheet(SHAFT.replace("S600 M3", "S600 M5")).hand()).isEmpty();
		assertThat(figures(SHAFT.replace("S600 M3", "S600 M5"))).contains("hand: not known");
	}

	@Test
	void aThreadThatNothingNamesHasNoLeadToBeHeldTo() {
		TurnedSheet unnamed = sheet(SHAFT.replace(" M20X1.5", ""));
		assertThat(unnamed.name()).isEqualTo("thread not named");
		assertThat(unnamed.lead()).isNaN();
		assertThat(unnamed.advance()).isEqualTo(1.5);
	}

	@Test
	void constantSurfaceSpeedIsNoSpeedOfTheSpindle() {
		assertThat(figures(SHAFT.replace("G97 S600", "G96 S120"))).contains("spindle: constant surface speed, clockwise");
	}
}
