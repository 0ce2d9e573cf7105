package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/**
 * A number typed in a program that is open makes a helix of what was none, or the other way round: what is said of the tool as a whole
 * comes and goes with it.
 */
class EditedThreadMadeTest {

	private static final String TAPPED = """
			T%1$d M6 (DRILL 5.0)
			G54 G0 X%2$d Y200 S2500 M3
			G43 H%1$d Z10
			G81 Z-18 R3 F300
			G80
			T%3$d M6 (M6X1 TAP)
			G0 X%2$d Y200 S520 M3
			G43 H%3$d Z10
			G84 Z-12 R5 F520
			G80
			""";

	/** Some tapped holes, and a thread mill between them that goes half round. */
	private static String program() {
		StringBuilder text = new StringBuilder("G21 G90 G94 G17 G40\n");
		for (int i = 0; i < 12; i++) {
			if (i == 6) {
				text.append("T90 M6 (DRILL 18.5)\nG54 G0 X0 Y0 S700 M3\nG43 H90 Z10\nG81 Z-25 R3 F100\nG80\n"
						+ "T91 M6 (THREAD MILL D12 M20X1.5)\nG0 X0 Y0 S2400 M3\nG43 H91 Z10\nG1 Z-15 F500\n"
						+ "G3 X4 Y0 Z-15 I2 J0 F150\nG1 X0 F500\nG0 Z10\n");
			}
			text.append(TAPPED.formatted(2 * i + 1, 50 * i, 2 * i + 2));
		}
		return text.append("G0 Z50\nM30\n").toString();
	}

	@Test
	void aToolThatMakesNoThreadIsToldOfAsLongAsItMakesNone() {
		EditedProgram open = new EditedProgram();
		ProgramText none = ProgramText.of(program());
		assertThat(found(open, none)).anyMatch(said -> said.startsWith("no-thread-made"));
		ProgramText helix = none.changedTo(program().replace("X4 Y0 Z-15 I2", "X4 Y0 Z-14.25 I2"));
		assertThat(found(open, helix)).isEqualTo(found(new EditedProgram(), ProgramText.of(helix.toString())));
		ProgramText again = helix.changedTo(program());
		assertThat(found(open, again)).isEqualTo(found(new EditedProgram(), ProgramText.of(program())));
	}

	private static List<String> found(EditedProgram open, ProgramText text) {
		return open.check(new ProgramFile("A.NC", text), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(), RuleSettings.DEFAULT,
				Budget.of(MachineProfile.generic())).findings().stream().map(finding -> finding.rule() + " " + finding.at().line() + " "
						+ finding.message()).toList();
	}
}
