package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loops that never end are named after a few passes; those that do end, however late, are followed. */
class EndlessLoopsTest {

	@Test
	void aForgottenCountIsNamedAfterFewPasses() {
		Followed run = Followed.milling("#1=0", "WHILE [#1 LT 6] DO1", "G81 X[#1*20] Y10. Z-10. R2. F500", "G80", "END1", "M30");
		assertThat(run.lost()).containsExactly("the loop from line 2 to 5 has no end: a pass leaves everything as it was, so the next one "
				+ "is the same");
		assertThat(run.strokes()).hasSizeLessThan(5);
	}

	@Test
	void aCountTheWrongWayIsNamed() {
		Followed run = Followed.milling("#1=0", "WHILE [#1 LT 6] DO1", "G81 X[#1*20] Y10. Z-10. R2. F500", "G80", "#1=#1-1", "END1", "M30");
		assertThat(run.lost()).containsExactly("the loop from line 2 to 6 seems to have no end: in 10000 passes what it asks for has not "
				+ "come nearer");
		assertThat(run.strokes()).hasSizeLessThan(10_100);
	}

	@Test
	void aCountThatStepsOverItsEndIsNamed() {
		Followed run = Followed.milling("#1=0", "N5 G0 X#1", "#1=#1+0.7", "IF [#1 NE 6] GOTO 5", "M30");
		assertThat(run.lost()).hasSize(1).first().asString().startsWith("the loop from line 2 to 4 seems to have no end");
	}

	@Test
	void theOutermostLoopIsNamed() {
		Followed run = Followed.milling("N5 #1=0", "WHILE [#1 LT 6] DO1", "G0 X#1", "#1=#1+1", "END1", "GOTO 5", "M30");
		assertThat(run.lost()).hasSize(1).first().asString().startsWith("the loop from line 1 to 6 has no end");
		assertThat(run.ends()).hasSizeLessThan(60);
	}

	@Test
	void aLoopThroughSubprogramsIsNamedAtItsFirstEnd() {
		Followed run = Followed.milling("O1", "N5 M98 P2", "GOTO 5", "M30", "O2", "G91 G0 X1.", "M99");
		assertThat(run.lost()).containsExactly("the loop from line 2 to 3 has no end: nothing in it leads out");
		assertThat(run.ends()).hasSize(1);
	}

	@Test
	void loopsThatEndAreFollowedToTheirEnd() {
		assertThat(Followed.milling("#1=0", "WHILE [#1 LT 30000] DO1", "#1=#1+1", "END1", "G0 X#1").end().x()).isEqualTo(30_000);
		assertThat(Followed.milling("#1=0", "N5 #1=#1+1", "IF [#1 GE 15000] GOTO 9", "IF [#2 NE #0] GOTO 7", "N7 GOTO 5", "N9 G0 X#1").end()
				.x()).isEqualTo(15_000);
		assertThat(Followed.milling("o1 repeat [20000]", "G91 G0 X1.", "o1 endrepeat", "G90 G0 X5.").end().x()).isEqualTo(5);
		assertThat(Followed.milling("G90 G0 X0", "G91", "o1 repeat [20000]", "X1.", "o1 endrepeat").end().x()).isEqualTo(20_000);
	}

	/** Parts are counted in a variable that the machine keeps: whether this one is the last nobody knows. */
	@Test
	void aLoopThatACounterOfPartsLeavesHasAnEnd() {
		for (String out : List.of("IF [#500 GE 10] GOTO 9", "IF [#500 GE 10] N9", "IF [VC1 GE 10] NEND")) {
			Followed run = Followed.milling("N5 G0 X1.", out, "#500=#500+1", "GOTO 5", "N9 M9", "NEND M2");
			assertThat(run.lost()).isEmpty();
		}
	}

	/** The way out may lie in a subprogram, whichever way it goes there. */
	@Test
	void aLoopLeftThroughASubprogramIsFollowed() {
		Followed run = Followed.milling("O1", "#1=0", "N5 M98 P2", "GOTO 5", "N9 G0 X#1", "M30", "O2", "#1=#1+1", "IF [#1 GE 4] GOTO 7",
				"M99", "N7 M99 P9");
		assertThat(run.lost()).isEmpty();
		assertThat(run.end().x()).isEqualTo(4);
	}

	@Test
	void aMainProgramThatBeginsAgainEndsThere() {
		Followed run = Followed.milling("O1", "G90", "N10 G0 X1.", "G81 Y1. Z-5. R2. F100", "G80", "M99 P10");
		assertThat(run.lost()).isEmpty();
		assertThat(run.strokes()).hasSize(1);
		assertThat(run.events(Step.EventKind.PROGRAM_END)).hasSize(1);
	}

	@Test
	void aMainProgramThatBeginsAgainSoManyTimesIsCounted() {
		Followed run = Followed.milling("#1=0", "N10 G0 X#1", "#1=#1+1", "IF [#1 GE 4] GOTO 20", "M99 P10", "N20 M30");
		assertThat(run.lost()).isEmpty();
		assertThat(run.ends()).hasSize(4);
	}

	@Test
	void aLoopThatStopsForTheOperatorIsWorthAWord() {
		Followed run = Followed.milling("N10 G0 X1.", "M0 (NEXT PART)", "GOTO 10", "M30");
		assertThat(run.lost()).isEmpty();
		assertThat(run.remarks()).containsExactly("the loop from line 1 to 3 has no end: nothing in it leads out but by the operator, for "
				+ "whom it stops");
	}

	@Test
	void aProgramThatCallsItselfByACountIsStoppedAtOnce() {
		Followed run = Followed.milling("O1000", "G0 X1.", "M98 P771000", "M30");
		assertThat(run.lost()).containsExactly("the program calls itself without end (P771000 is read as 77 calls of O1000): a control "
				+ "stops here with an alarm");
		assertThat(run.ends()).hasSize(1);
	}

	@Test
	void callsWithAWayOutMayBeDeep() {
		Followed run = Followed.milling("O1", "#1=0", "M98 P2", "M30", "O2", "#1=#1+1", "IF [#1 GE 9] GOTO 9", "M98 P2",
				"N9 G0 X#1", "M99");
		assertThat(run.lost()).isEmpty();
		assertThat(run.end().x()).isEqualTo(9);
		assertThat(run.ends()).hasSize(9);
	}

	/** Loops of every length and way in, whose state comes back only after some passes. */
	@Test
	void aStateThatComesBackLateIsFound() {
		for (int length : List.of(1, 2, 3, 7, 30)) {
			List<String> lines = new ArrayList<>(List.of("#1=0", "#3=0", "N5 #1=#1+1", "IF [#1 LT " + length + "] GOTO 8", "#1=0",
					"N8 G0 X#1", "#3=1", "IF [#3 GT 0] GOTO 5"));
			Followed run = Followed.milling(lines.toArray(String[]::new));
			assertThat(run.lost()).hasSize(1).first().asString().startsWith("the loop from line 3 to 8 has no end: a pass");
			assertThat(run.ends()).hasSizeLessThan(5 * length + 8);
		}
	}
}
