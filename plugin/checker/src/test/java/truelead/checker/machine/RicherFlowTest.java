package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;

/** Branches, loops, jumps and calls of richer control languages. */
class RicherFlowTest {

	private static Followed beside(Map<String, String> folder, String... lines) {
		return Followed.with(folder, MachineProfile.generic(), lines);
	}

	@Test
	void theBranchWhoseConditionHoldsIsTaken() {
		String[] program = {"", "IF R1 == 1", "G0 X1", "ELSEIF R1 == 2", "G0 X2", "ELSE", "G0 X3", "ENDIF", "G0 Y1", "M30"};
		for (int way = 1; way <= 3; way++) {
			program[0] = "R1=" + way;
			assertThat(Followed.milling(program).ends()).containsExactly(way + ",?,?", way + ",1,?");
		}
	}

	/** X1 and Z1 are axes of the machine: the block leads to its reference points, and taps nothing. */
	@Test
	void theWayToTheReferencePointsIsNoTapping() {
		Followed run = Followed.milling("G0 X1 Y1 Z1", "G74 X1=0 Z1=0", "G0 Y5");
		assertThat(run.strokes()).isEmpty();
		assertThat(run.ends()).endsWith("?,5,?");
	}

	/** A frame is told by its values: in a loop the same words turn elsewhere each time, and for the next tool to the same places again. */
	@Test
	void aFrameIsToldByItsValues() {
		Followed run = Followed.milling("R1=0", "FOR R1=0 TO 2", "ROT RPL=R1*50", "G81 X1 Y1 Z-5 R2", "G80", "ENDFOR", "ROT",
				"FOR R1=0 TO 2", "ROT RPL=R1*50", "G81 X1 Y1 Z-5 R2", "G80", "ENDFOR");
		List<Integer> frames = run.strokes().stream().map(stroke -> stroke.modal().frame()).toList();
		assertThat(frames.subList(0, 3)).doesNotHaveDuplicates();
		assertThat(frames.subList(3, 6)).isEqualTo(frames.subList(0, 3));
	}

	/** Where the pole is is not followed: a thread there is said to be somewhere, never where the tool was before. */
	@Test
	void anAngleAndARadiusLeadAboutThePole() {
		assertThat(Followed.milling("G0 X1 Y1 Z1", "G0 RP=30 AP=90", "AP=0", "G111 X50 Y40", "AP=180 RP=10", "AP=IC(90)", "G112 X5",
				"G0 RP=20", "G110 X1 Y0", "G0 AP=0", "G0 X2").ends()).containsExactly("1,1,1", "0,30,1", "30,0,1", "40,40,1", "50,30,1",
						"55,20,1", "76,20,1", "2,20,1");
	}

	/** Without a radius said before, the place is not known. */
	@Test
	void anAngleAloneAboutAPoleLeadsToNoKnownPlace() {
		assertThat(Followed.milling("G0 X1 Y1 Z1", "G0 AP=90", "G0 Z5").ends()).containsExactly("1,1,1", "?,?,1", "?,?,5");
	}

	/** On other controls G111 is a work offset. */
	@Test
	void withoutWordsAboutAPoleG111IsAWorkOffset() {
		assertThat(Followed.milling("G90 G54 G0 X1 Y1 Z1", "G111 X5 Y5").state().workOffset()).isEqualTo(111);
	}

	/** G[8]=2 is G54, G[8]=6 the first offset beyond G57. */
	@Test
	void aCodeChosenByItsGroup() {
		assertThat(Followed.milling("G90 G0 X1 Y1 Z1", "R1=1", "G[8]=R1+2").state().workOffset()).isEqualTo(55);
		assertThat(Followed.milling("G90 G0 X1 Y1 Z1", "G[8]=6").state().workOffset()).isEqualTo(505);
		assertThat(Followed.milling("G90 G0 X1 Y1 Z1", "G[6]=2", "G0 X2").state().plane()).isEqualTo(truelead.checker.program.Plane.ZX);
	}

	/** The number beside the axis of a mirror means nothing. */
	@Test
	void aMirrorIsAFrameOfItsOwnWhateverItsNumber() {
		assertThat(Followed.milling("G0 X1 Y1", "MIRROR X0", "G0 X1", "MIRROR", "G0 X1").ends()).containsExactly("1,1,?", "1,?,?", "1,?,?");
	}

	/** Whether another part is made is known at the machine alone. */
	@Test
	void aJumpBackToWhereNothingIsDoneYetIsAnotherPart() {
		Followed run = Followed.milling("G21 G90", "N1 #500=#500+1", "G0 X1.", "IF [#500 LT 20] GOTO 1", "G0 X2.", "M30");
		assertThat(run.lost()).isEmpty();
		assertThat(run.ends()).containsExactly("1,?,?", "2,?,?");
	}

	@Test
	void aJumpToALabelInQuotes() {
		assertThat(Followed.milling("GOTOF \"LAST\"", "G0 X1", "LAST: G0 X2", "M30").ends()).containsExactly("2,?,?");
	}

	@Test
	void branchesStandInsideBranches() {
		Followed run = Followed.milling("R1=1 R2=2", "IF R1 == 1", "IF R2 == 1", "G0 X1", "ELSE", "G0 X2", "ENDIF", "ELSE", "G0 X3",
				"ENDIF", "M30");
		assertThat(run.ends()).containsExactly("2,?,?");
	}

	@Test
	void aBracketedConditionWithNothingBehindItOpensABranch() {
		assertThat(Followed.milling("#1=2", "IF [#1 EQ 1] THEN", "G0 X1.", "ELSE", "G0 X2.", "ENDIF").ends()).containsExactly("2,?,?");
	}

	@Test
	void aCountedLoopDrillsARow() {
		Followed run = Followed.milling("DEF INT I, N=4", "G0 X0 Y0 Z5", "G81 Z-5 R2 F100 L0", "FOR I = 1 TO N-1", "X=I*10", "ENDFOR",
				"G80", "M30");
		assertThat(run.places()).containsExactly("10,0", "20,0", "30,0");
	}

	@Test
	void aCountedLoopMayBePassedNoTimes() {
		assertThat(Followed.milling("G0 X0", "FOR R1=3 TO 2", "X=R1", "ENDFOR", "Y1").ends()).containsExactly("0,?,?", "0,1,?");
	}

	@Test
	void whileAndUntilTestAtTheirEnds() {
		assertThat(Followed.milling("R1=0", "WHILE R1 < 2", "G0 X=R1", "R1=R1+1", "ENDWHILE").ends()).containsExactly("0,?,?", "1,?,?");
		assertThat(Followed.milling("R1=5", "REPEAT", "G0 X=R1", "R1=R1+1", "UNTIL R1 > 6").ends()).containsExactly("5,?,?", "6,?,?");
	}

	@Test
	void anEndlessLoopIsLeftByAJump() {
		Followed run = Followed.milling("R1=0", "LOOP", "R1=R1+1", "G0 X=R1", "IF R1 == 3 GOTOF OUT", "ENDLOOP", "OUT: G0 Y1", "M30");
		assertThat(run.ends()).containsExactly("1,?,?", "2,?,?", "3,?,?", "3,1,?");
	}

	@Test
	void anEndlessLoopWithoutAWayOutIsOnePart() {
		Followed run = Followed.milling("LOOP", "G91 G0 X1", "ENDLOOP");
		assertThat(run.moves()).hasSize(1);
		assertThat(run.lost()).isEmpty();
	}

	@Test
	void loopsStandInsideLoopsAndIndexFieldsOfParameters() {
		Followed run = Followed.milling("FOR R1=0 TO 1", "R[R1+10]=R1*100", "ENDFOR", "FOR R1=0 TO 1", "FOR R2=1 TO 2",
				"G0 X=R[10+R1] Y=R2", "ENDFOR", "ENDFOR");
		assertThat(run.ends()).containsExactly("0,1,?", "0,2,?", "100,1,?", "100,2,?");
	}

	@Test
	void aChoiceJumpsToTheTargetThatFits() {
		String[] program = {"", "CASE R1 OF 1 GOTOF ONE 2 GOTOF TWO DEFAULT GOTOF REST", "ONE: G0 X1", "GOTOF REST", "TWO: G0 X2",
				"REST: G0 Y1", "M30"};
		program[0] = "R1=2";
		assertThat(Followed.milling(program).ends()).containsExactly("2,?,?", "2,1,?");
		program[0] = "R1=7";
		assertThat(Followed.milling(program).ends()).containsExactly("?,1,?");
	}

	@Test
	void aPartOfTheProgramIsRepeated() {
		assertThat(Followed.milling("G91", "ROW: G0 X10", "REPEAT ROW P=2", "Y1").moves()).extracting(move -> move.block().line())
				.containsExactly(1, 1, 1, 3);
		assertThat(Followed.milling("G91", "FIRST: G0 X10", "ENDE: Y5", "G0 Z1", "REPEAT FIRST ENDE").moves())
				.extracting(move -> move.block().line()).containsExactly(1, 2, 3, 1, 2);
		assertThat(Followed.milling("G91", "N10 G0 X10", "N20 Y5", "N30 G0 Z1", "REPEAT N10 N20 P=2").moves())
				.extracting(move -> move.block().line()).containsExactly(1, 2, 3, 1, 2, 1, 2);
	}

	@Test
	void argumentsOfACallByNameAreParametersInTheirOrder() {
		Map<String, String> folder = Map.of("HOLE", "PROC HOLE(REAL _X, REAL _DEPTH=-7, INT _N)\nG0 X=_X\nG1 Z=_DEPTH F50\nRET");
		Followed run = beside(folder, "_X=99", "HOLE(5,-3)", "HOLE(8)", "G0 X=_X", "M30");
		assertThat(run.ends()).containsExactly("5,?,?", "5,?,-3", "8,?,-3", "8,?,-7", "99,?,-7");
		assertThat(run.moves().get(0).block().caller().get().line()).isEqualTo(1);
	}

	@Test
	void aParameterThatNoCallGivesIsNotKnown() {
		Followed run = beside(Map.of("HOLE", "PROC HOLE(REAL DEPTH)\nG1 Z=DEPTH F50\nRET"), "HOLE()", "M30");
		assertThat(run.lost()).containsExactly("Z is not known: no call gives it a value");
	}

	@Test
	void parametersRAreCommonToAllPrograms() {
		Followed run = beside(Map.of("DEEP", "PROC DEEP(REAL A)\nR1=A*2\nRET"), "R1=1", "DEEP(4)", "G0 X=R1", "M30");
		assertThat(run.ends()).containsExactly("8,?,?");
	}

	@Test
	void aSubprogramMayStandBehindTheMainProgramAndBeCalledSeveralTimes() {
		Followed run = Followed.milling("G91", "STEP P3", "CALL STEP", "M30", "PROC STEP", "G0 X1", "RET");
		assertThat(run.moves()).hasSize(4);
	}

	@Test
	void aProgramBesideItMayBeCalledByItsNumberBehindL() {
		Followed run = beside(Map.of("L100", "G91 G0 X1\nG90\nM17"), "G0 X0", "N20 L100 P2", "L7", "M30");
		assertThat(run.ends()).containsExactly("0,?,?", "1,?,?", "2,?,?");
	}

	@Test
	void aModalCallRunsBehindEveryMotion() {
		Followed run = beside(Map.of("PECK", "PROC PECK(REAL D)\nG1 Z=D F9\nG0 Z5\nRET"), "G0 X0 Z5", "MCALL PECK(-4)", "X1", "S500", "X2",
				"MCALL", "X3", "M30");
		assertThat(run.ends()).containsExactly("0,?,5", "1,?,5", "1,?,-4", "1,?,5", "2,?,5", "2,?,-4", "2,?,5", "3,?,5");
	}

	@Test
	void whatABranchOnSomethingUnknownChangesIsNotKnownBehindIt() {
		Followed run = Followed.milling("R1=1 G0 X1 Y1 Z5 F100", "IF _SIZE == 5", "R1=2", "G0 X2 F200", "ELSE", "G0 X2", "ENDIF",
				"G0 Y2 Z=R1");
		assertThat(Followed.text(run.end())).isEqualTo("?,2,?");
		assertThat(run.state().feed().known()).isFalse();
		assertThat(run.lost()).containsExactly("Z is not known: it depends on IF in line 2, which is not followed");
	}

	@Test
	void whatABranchOnSomethingUnknownLeavesAloneStaysKnown() {
		Followed run = Followed.milling("R1=1 G0 X1 Y1 Z5 F100", "IF _SIZE == 5", "MSG(\"BIG\")", "M8", "ENDIF", "G0 Y2 Z=R1");
		assertThat(Followed.text(run.end())).isEqualTo("1,2,1");
		assertThat(run.lost()).isEmpty();
		assertThat(run.remarks()).isEmpty();
	}

	@Test
	void aGuardThatEndsTheProgramIsPassedOver() {
		Followed run = Followed.milling("IF _CLAMPED == 0", "MSG(\"CLAMP\")", "M30", "ENDIF", "G0 X1", "M30");
		assertThat(run.ends()).containsExactly("1,?,?");
		assertThat(run.lost()).isEmpty();
		assertThat(run.remarks()).containsExactly("whether the program ends here depends on IF in line 1, which is not followed: "
				+ "taken not to");
	}

	@Test
	void aJumpOutOfABranchOnSomethingUnknownIsSaid() {
		Followed run = Followed.milling("IF _SIZE == 5", "GOTOF REST", "ENDIF", "G84 X1 Y1 Z-5 R2 F9", "G80", "REST: G0 X2", "M30");
		assertThat(run.lost()).contains("which way the program goes here is not known: it depends on IF in line 1, which is not followed");
		assertThat(run.strokes()).hasSize(1);
	}

	@Test
	void aThreadInALoopOfUnknownLengthIsSaid() {
		Followed run = Followed.milling("G0 X0 Y0 Z5", "FOR R1=1 TO _COUNT", "G84 X0 Y0 Z-10. R2. F100", "G80", "ENDFOR", "M30");
		assertThat(run.lost()).containsExactly("whether this thread is made, and how often, depends on FOR in line 2, which is "
				+ "not followed");
	}

	@Test
	void statementsWithoutTheirPartnersAreSaid() {
		assertThat(Followed.milling("ENDIF", "G0 X1").lost()).containsExactly("ENDIF has no statement here that it belongs to");
	}

	@Test
	void aSubprogramWithAHeadAloneStartsFromAnUnknownState() {
		Followed run = Followed.milling("PROC TAPS(REAL DEPTH)", "G84 X0 Y0 Z=DEPTH R2 F100", "G80", "RET");
		assertThat(run.lost()).contains("Z is not known: no call gives it a value",
				"the speed of the spindle is not known: the program that calls this subprogram sets it");
	}

	@Test
	void aLoopWithALabelAndArgumentsMakesATapInEveryHole() {
		Followed run = beside(Map.of("TAPPING", "PROC TAPPING(REAL X0, REAL LEAD)\nG0 X=X0 Z5\nG331 Z-12 K=LEAD\nG332 Z5 K=LEAD\nM17"),
				"S200 M3", "R1=0", "NEXT:", "TAPPING(R1*20,1.5)", "R1=R1+1", "IF R1 < 3 GOTOB NEXT", "M30");
		assertThat(run.all(Step.Synchronised.class)).hasSize(6);
		assertThat(run.all(Step.Synchronised.class).get(4).to().x()).isEqualTo(40);
	}

	@Test
	void headersPartTheProgramsOfAnArchiveAndNameThem() {
		Followed run = Followed.milling("%_N_PLATE_MPF", ";$PATH=/_N_WKS_DIR", "G0 X1", "HOLES", "G0 X4", "M30", "%_N_HOLES_SPF", "G0 X2",
				"M17", "%_N_COVER_MPF", "G0 X7", "M30");
		assertThat(run.ends()).as("the subprogram is run for its call alone, the second main program for itself")
				.containsExactly("1,?,?", "2,?,?", "4,?,?", "7,?,?");
	}

	@Test
	void aSubprogramOfAnArchiveThatNothingCallsStartsFromAnUnknownState() {
		Followed run = Followed.milling("%_N_PLATE_MPF", "G91 G0 X1", "M30", "%_n_row_spf", "G0 X2", "M17");
		assertThat(run.ends()).hasSize(2).last().isEqualTo("2,?,?");
	}
}
