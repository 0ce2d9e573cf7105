package truelead.checker.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

/** The quiet notes behind threading blocks of a lathe. */
class ThreadNotesTest {

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
	private static final String RING = """
			G21 G40 G99
			T0404 (BORE)
			G97 S900 M3
			G0 X22.4 Z2.
			G1 Z-25. F.1
			X21.
			G0 Z100.
			T0505 (M24X1.5 INSIDE)
			G97 S500 M3
			G0 X21. Z6.
			G92 X22.9 Z-20. F1.5
			X23.5
			X24.
			G0 Z100.
			M30
			""";

	private static List<String> notes(String program) {
		return ThreadNotes.of(WorkReader.read(new ProgramFile("shaft.nc", ProgramText.of(program)), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.named("turning")), block -> true).map(note -> (note.block().line() + 1) + ": " + note.text()).toList();
	}

	@Test
	void aThreadOutsideTellsItsLeadItsPassesAndTheWayToTheShoulder() {
		assertThat(notes(SHAFT)).containsExactly("12: M20x1.5 · 1.5 a turn, pitch 1.500 ✓ · 3 passes, first 0.35 mm deep, last to 18.16 mm "
				+ "· 3 mm to the shoulder");
		assertThat(notes(SHAFT.replace("Z-27.", "Z-30.5").replace("F1.5", "F1.25"))).containsExactly(
				"12: M20x1.5 · 1.25 a turn, pitch 1.500 ✗ · 3 passes, first 0.35 mm deep, last to 18.16 mm · 0.5 mm into the shoulder");
	}

	@Test
	void aThreadInsideTellsWhatIsLeftOfItsBore() {
		assertThat(notes(RING)).containsExactly("11: M24x1.5 · 1.5 a turn, pitch 1.500 ✓ · 3 passes, first 0.25 mm deep, last to 24 mm · 5 "
				+ "mm to the end of the bore");
		assertThat(notes(RING.replace("Z-20.", "Z-27."))).singleElement().asString().endsWith(" · 2 mm beyond the end of the bore");
	}

	@Test
	void aCycleThatDividesTheDepthTellsItsFirstPass() {
		assertThat(notes(SHAFT.replace("G92 X19.3 Z-27. F1.5\nX18.7\nX18.16\n", "G76 P020060 Q50 R.02\nG76 X18.16 Z-27. P920 Q250 F1.5\n")))
				.containsExactly("13: M20x1.5 · 1.5 a turn, pitch 1.500 ✓ · first 0.25 mm deep, last to 18.16 mm · 3 mm to the shoulder");
	}

	@Test
	void severalStartsAreHeldToTheirLead() {
		assertThat(notes(SHAFT.replace("M20X1.5", "M20X3P1.5").replace("F1.5", "F3.").replace("X18.7\n", "")
				.replace("X18.16\n", "X18.16\nG0 Z7.5\nG92 X19.3 Z-27. F3.\nX18.16\n"))).first().asString()
				.contains(" · 3 a turn, lead 3.000 ✓ · ");
	}

	@Test
	void whatIsNotKnownIsLeftOut() {
		assertThat(notes(SHAFT.replace(" M20X1.5", "").replace("Z-30.\n", "")))
				.containsExactly("11: 1.5 a turn · 3 passes, first to 19.3 mm, last to 18.16 mm");
	}

	@Test
	void tappedHolesHaveTheirsToo() {
		assertThat(notes("G21 G99\nT0606 (M8 TAP)\nG97 S300 M3\nG0 X0 Z5.\nG84 Z-15. F1.25\nG80\nM30\n"))
				.containsExactly("5: M8x1.25 · 1.25 a turn, pitch 1.250 ✓ · 15 mm deep");
	}
}
