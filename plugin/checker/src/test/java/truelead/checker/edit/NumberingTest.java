package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.grammar.ProgramText;

/** Block numbers change, and every jump still goes where it went. */
class NumberingTest {

	private static final MachineProfile MILL = MachineProfile.named("milling-metric");

	@Test
	void aJumpFollowsItsBlock() {
		assertThat(renumber("N1 G0 X0.\nN2 #1=#1+1.\nIF [#1 LT 3.] GOTO 2\nN7 M30\n"))
				.isEqualTo("N10 G0 X0.\nN20 #1=#1+1.\nIF [#1 LT 3.] GOTO 20\nN30 M30\n");
	}

	@Test
	void aReturnToABlockAndTheBlocksOfATurningCycleFollowToo() {
		assertThat(applied(Numbering.renumber(ProgramText.of("G71 P100 Q200 U0.5 F0.2\nN100 G0 X10.\nN200 X40.\nM99 P100\n"),
				MachineProfile.named("turning"), 0, 4, 10, 10), "G71 P100 Q200 U0.5 F0.2\nN100 G0 X10.\nN200 X40.\nM99 P100\n"))
				.isEqualTo("G71 P10 Q20 U0.5 F0.2\nN10 G0 X10.\nN20 X40.\nM99 P10\n");
	}

	@Test
	void theSameNumberInAnotherProgramOfTheFileIsAnotherBlock() {
		assertThat(renumber("O1\nN5 G0\nGOTO 5\nM30\nO2\nN5 G1\nGOTO 5\nM99\n"))
				.isEqualTo("O1\nN10 G0\nGOTO 10\nM30\nO2\nN10 G1\nGOTO 10\nM99\n");
	}

	@Test
	void aComputedJumpForbidsIt() {
		Change change = Numbering.renumber(ProgramText.of("N1 G0\nGOTO #5\n"), MILL, 0, 2, 10, 10);
		assertThat(change.replacements()).isEmpty();
		assertThat(change.refusal()).isEqualTo("the jump in line 2 computes its block number, so no number may change");
	}

	@Test
	void aJumpToNowhereForbidsIt() {
		assertThat(Numbering.renumber(ProgramText.of("N1 G0\nGOTO 50\n"), MILL, 0, 2, 10, 10).refusal())
				.contains("line 2 jumps to N50, which is not there");
	}

	@Test
	void aNumberThatWouldStandTwiceBeforeTheTargetForbidsIt() {
		Change change = Numbering.renumber(ProgramText.of("N1 G0\nN2 X1.\nN20 Y1.\nGOTO 20\n"), MILL, 0, 1, 10, 10);
		assertThat(change.refusal()).isEqualTo("the jump in line 4 would go to line 2: N20 would stand there too; number the "
				+ "whole program");
	}

	@Test
	void repeatedBlocksAreNamedByTheirNewNumbers() {
		assertThat(renumber("N1 X1\nN2 X2\nN3 REPEAT N1 N2 P=3\nN4 REPEAT N2 P2\nN5 M30\n"))
				.isEqualTo("N10 X1\nN20 X2\nN30 REPEAT N10 N20 P=3\nN40 REPEAT N20 P2\nN50 M30\n");
	}

	@Test
	void theJumpsOfAChoiceFollowToo() {
		assertThat(renumber("N1 R1=2\nN2 CASE R1 OF 1 GOTOF N3 2 GOTOF N4 DEFAULT GOTOF N5\nN3 X1\nN4 X2\nN5 M30\n"))
				.isEqualTo("N10 R1=2\nN20 CASE R1 OF 1 GOTOF N30 2 GOTOF N40 DEFAULT GOTOF N50\nN30 X1\nN40 X2\nN50 M30\n");
	}

	@Test
	void leadingZerosAndCaseStay() {
		assertThat(renumber("n0001 G0\nn0002 X1.\n")).isEqualTo("n0010 G0\nn0020 X1.\n");
	}

	@Test
	void addingNumbersLeavesHeadsCommentsAndLabelsAlone() {
		String program = """
				%
				O1 (PART)
				(TOOL 1)
				G0 X0.
				/G1 Y1.

				M30
				%
				""";
		assertThat(applied(Numbering.add(ProgramText.of(program), MILL, 0, 8, 5, 5), program))
				.isEqualTo("%\nO1 (PART)\n(TOOL 1)\nN5 G0 X0.\n/N10 G1 Y1.\n\nN15 M30\n%\n");
	}

	@Test
	void removingKeepsWhatIsJumpedTo() {
		String program = "N1 G0 X0.\nN2 X1.\nGOTO 2\nN3M30\n";
		assertThat(applied(Numbering.remove(ProgramText.of(program), MILL, 0, 4), program)).isEqualTo("G0 X0.\nN2 X1.\nGOTO 2\nM30\n");
	}

	@Test
	void everyJumpOfRandomProgramsGoesWhereItWent() {
		Random random = new Random(7);
		for (int round = 0; round < 300; round++) {
			StringBuilder program = new StringBuilder();
			int lines = 3 + random.nextInt(8);
			for (int line = 0; line < lines; line++) {
				program.append(random.nextBoolean() ? "N" + (1 + random.nextInt(9)) + " " : "")
						.append(random.nextInt(3) == 0 ? "GOTO " + (1 + random.nextInt(9)) : "X" + line + ".").append('\n');
			}
			ProgramText before = ProgramText.of(program.toString());
			int first = random.nextInt(lines);
			Change change = Numbering.renumber(before, MILL, first, first + random.nextInt(lines - first), 1 + random.nextInt(5),
					1 + random.nextInt(3));
			ProgramText after = ProgramText.of(applied(change, program.toString()));
			for (int line = 0; line < lines; line++) {
				assertThat(target(after, line)).as(program + " line " + line).isEqualTo(target(before, line));
			}
		}
	}

	/** The line that a line jumps to: the first with that number; -1 for none. */
	private static int target(ProgramText text, int line) {
		int jump = text.line(line).indexOf("GOTO ");
		if (jump < 0) {
			return -1;
		}
		String wanted = "N" + text.line(line).substring(jump + 5) + " ";
		for (int at = 0; at < text.lineCount(); at++) {
			if (text.line(at).startsWith(wanted)) {
				return at;
			}
		}
		return -1;
	}

	private static String renumber(String program) {
		ProgramText text = ProgramText.of(program);
		return applied(Numbering.renumber(text, MILL, 0, text.lineCount() - 1, 10, 10), program);
	}

	private static String applied(Change change, String program) {
		return Replacement.apply(program, change.replacements());
	}
}
