package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.grammar.ProgramText;

class LimitsTest {

	@Test
	void bracketsAThousandDeepAreNotKnown() {
		String deep = "[".repeat(1000) + "1" + "]".repeat(1000);
		assertThat(Followed.milling("G0 X" + deep, "Y1.").end().y()).isEqualTo(1);
	}

	@Test
	void aLoopWithoutAnEndStatementIsSaid() {
		assertThat(Followed.milling("#1=5", "WHILE [#1 LT 3] DO1", "G0 X1.").lost()).containsExactly("the loop has no END 1");
	}

	@Test
	void aLoopWithoutAConditionIsNamedAtItsFirstEnd() {
		Followed run = Followed.on(MachineProfile.generic().with("budget", "500"), "DO1", "G0 X1.", "END1");
		assertThat(run.lost()).containsExactly("the loop from line 1 to 3 has no end: nothing in it leads out");
	}

	@Test
	void aJumpToNowhereIsSaid() {
		assertThat(Followed.milling("GOTO 77", "G0 X1.").lost()).containsExactly("the block that the program jumps to is not in this file");
	}

	@Test
	void aBranchOnAnUnknownValueIsSaidOnceAndNotTaken() {
		Followed run = Followed.milling("IF [#100 GT 3] GOTO 10", "G0 X1.", "N10 G0 X2.");
		assertThat(run.lost()).containsExactly("which way the program goes here is not known: #100 is not set in the program");
		assertThat(run.ends()).hasSize(2);
	}

	@Test
	void aCancelledRunEndsWithoutAWord() {
		List<Step> steps = new ArrayList<>();
		String text = """
				#1=0
				G91
				N5 G0 X1.
				#1=#1+1
				IF [SIN[#1] LT 5] GOTO 5
				""";
		Interpreter.run(new ProgramFile("a.nc", ProgramText.of(text)), ProgramFolder.EMPTY, MachineProfile.generic(),
				new Budget(1_000_000, () -> true), steps::add);
		assertThat(steps).noneMatch(Step.NotFollowed.class::isInstance);
		assertThat(steps).hasSizeLessThan(10_000);
	}

	@Test
	void emptyAndBlankProgramsEnd() {
		assertThat(Followed.milling("").events(Step.EventKind.PROGRAM_END)).hasSize(1);
		assertThat(Followed.milling("%", "", "%").lost()).isEmpty();
	}

	@Test
	void loopsOfRicherLanguagesThatNeverEndAreBounded() {
		MachineProfile small = MachineProfile.generic().with("budget", "2000");
		assertThat(Followed.on(small, "AGAIN:", "IF R9 > 1", "G91 G0 X1", "GOTOB INSIDE", "INSIDE: GOTOB AGAIN", "ENDIF").lost())
				.isNotEmpty();
		assertThat(Followed.on(small, "IF R9 > 1", "INSIDE: G91 G0 X1", "GOTOB INSIDE", "ENDIF").lost()).hasSize(1).first().asString()
				.startsWith("more than 2000 blocks");
		assertThat(Followed.on(small, "FIRST: G91 G0 X1", "REPEAT FIRST LAST", "LAST: G0 Y1").lost()).hasSize(1).first().asString()
				.startsWith("the program calls itself without end");
		assertThat(Followed.on(small, "G91", "ROW: G0 X1", "REPEAT ROW P=999999999").lost()).hasSize(1).first().asString()
				.startsWith("more than 2000 blocks");
		assertThat(Followed.on(small, "R1=0", "WHILE R1 < 5", "G0 X1", "ENDWHILE").lost()).hasSize(1).first().asString()
				.startsWith("the loop from line 2 to 4 has no end");
	}

	@Test
	void aFileThatCallsItselfAmongNeighboursIsBounded() {
		Followed run = Followed.with(java.util.Map.of("7", "O7\nM98 P7\nM99"), MachineProfile.generic(), "M98 P7", "M30");
		assertThat(run.lost()).hasSize(1);
	}

	@Test
	void repeatsOfACycleCountAgainstTheBudget() {
		Followed run = Followed.on(MachineProfile.generic().with("budget", "1000"), "G91 G0 X0 Y0 Z5.",
				"G81 X1. Z-1. R-1. K99999", "G0 X5.");
		assertThat(run.strokes()).hasSizeLessThan(1001);
		assertThat(run.lost()).hasSize(1).first().asString().startsWith("more than 1000 blocks were executed");
	}

	@Test
	void variablesWithoutEndTakeBoundedRoom() {
		Followed run = Followed.on(MachineProfile.generic().with("budget", "900000"), "#1=1000", "N1 #[#1]=1", "#1=#1+1", "GOTO1");
		assertThat(run.lost()).hasSize(1);
	}

	@Test
	void aBranchToAnAlarmIsNotTakenAndOnlyRemarked() {
		Followed run = Followed.milling("IF [#5021 LT 0] GOTO 900", "G84 X0 Y0 Z-9. R2. F100", "M30", "N900 (NOT CLEAR)", "#3000=1");
		assertThat(run.lost()).isEmpty();
		assertThat(run.remarks()).hasSize(1);
		assertThat(run.strokes()).hasSize(1);
	}

	@Test
	void aBranchOverAStopMattersToNoThread() {
		assertThat(Followed.milling("IF [#500 EQ 1] GOTO 10", "M0 (CHECK)", "N10 G0 X1.").lost()).isEmpty();
	}

	@Test
	void aVariableSetOnAnUnknownConditionIsNotKnown() {
		Followed run = Followed.milling("#1=5.", "IF [#500 EQ 1] THEN #1=7.", "G0 X#1");
		assertThat(run.lost()).containsExactly("X is not known: #500 is not set in the program");
	}

	@Test
	void aLongProgramWithoutLoopsIsFollowedBeyondTheBudget() {
		String[] lines = new String[100];
		java.util.Arrays.setAll(lines, i -> "G1 X" + i + ".");
		Followed run = Followed.on(MachineProfile.generic().with("budget", "10"), lines);
		assertThat(run.lost()).isEmpty();
		assertThat(run.end().x()).isEqualTo(99);
	}
}
