package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

/** Tools, their cycles, programs and loops can be folded. */
class FoldsTest {

	@Test
	void aToolFoldsToItsChangeAndACycleToItsBlock() {
		assertThat(folds("%\nO1\nG21 G90 G17\nT1 M6 (DRILL 5.0)\nG0 X0 Y0 S2000 M3\nG99 G81 Z-20. R2. F200\nX10.\nX20.\nG80\n(TAPPING)\n"
				+ "N200\nT2 M6 (M6X1 TAP)\n" + "G0 X0 Y0 S500 M3\nG99 G84 Z-12. R5. F500\nX10.\nG80\nM30\n%\n"))
				.containsExactly("TOOL 4-9", "OPERATION 6-8", "TOOL 12-17", "OPERATION 14-15");
	}

	@Test
	void thePassesOfATurnedThreadFold() {
		assertThat(folds("O1\nG21 G99\nT0303 (THREAD M20X1.5)\nG97 S600 M3\nG0 X24. Z6.\nG92 X19.3 Z-27. F1.5\nX18.7\nX18.16\n"
				+ "G0 X100. Z100.\nM30\n", "turning")).containsExactly("TOOL 3-10", "OPERATION 6-8");
	}

	@Test
	void programsOfOneFileFoldEach() {
		assertThat(folds("O1\nT1 M6\nM98 P2\nM30\nO2\nG0 X1.\nM99\n")).containsExactly("PROGRAM 1-4", "TOOL 2-4", "PROGRAM 5-7");
	}

	@Test
	void loopsAndNamedSubprogramsFold() {
		assertThat(folds("o<holes> sub\nG0 X1\no<holes> endsub\n#1=0\nWHILE [#1 LT 3] DO 1\n#1=[#1+1]\nEND 1\nM30\n"))
				.containsExactly("PROGRAM 1-3", "LOOP 5-7");
	}

	private static List<String> folds(String program) {
		return folds(program, "milling-metric");
	}

	private static List<String> folds(String program, String machine) {
		ProgramFile file = new ProgramFile("test.nc", ProgramText.of(program));
		return Folds.of(WorkReader.read(file, ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.named(machine)), 100).stream()
				.map(fold -> fold.kind() + " " + (fold.first() + 1) + "-" + (fold.last() + 1)).toList();
	}
}
