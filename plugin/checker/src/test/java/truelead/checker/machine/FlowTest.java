package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Setting;

class FlowTest {

	private static final MachineProfile RS274 = MachineProfile.named("rs274");

	@Test
	void aSubprogramBehindTheEndIsRunWhereItIsCalled() {
		Followed run = Followed.milling("O1", "G0 X0 Y0 Z5.", "M98 P100 L2", "M30", "O100", "G91 X10.", "G90", "M99");
		assertThat(run.ends()).containsExactly("0,0,5", "10,0,5", "20,0,5");
		assertThat(run.moves().get(2).block().caller().get().line()).isEqualTo(2);
		assertThat(run.events(Step.EventKind.PROGRAM_END)).hasSize(1);
	}

	@Test
	void packedRepeatsCountBeforeTheLastFourDigits() {
		assertThat(Followed.milling("O1", "G0 X0", "M98 P30050", "M30", "O0050", "G91 X1.", "M99").ends()).hasSize(4);
	}

	@Test
	void aNumberThatExistsIsNotUnpacked() {
		assertThat(Followed.milling("O1", "G0 X0", "M98 P30050", "M30", "O30050", "G91 X1.", "M99").ends()).hasSize(2);
	}

	@Test
	void localCallsGoToABlockNumber() {
		Followed run = Followed.milling("G0 X0", "M97 P1000 L2", "M30", "N1000 G91 X3.", "M99");
		assertThat(run.ends()).containsExactly("0,?,?", "3,?,?", "6,?,?");
	}

	@Test
	void aNeighbouringFileHasTheProgram() {
		Followed run = Followed.with(Map.of("8001", "%\nO8001\nG0 X7.\nM99\n%"), MachineProfile.generic(), "G0 X0", "M98 P8001", "M30");
		assertThat(run.ends()).containsExactly("0,?,?", "7,?,?");
		assertThat(run.moves().get(1).block().file().name()).isEqualTo("8001.nc");
	}

	@ParameterizedTest
	@ValueSource(strings = {"M98 P\"SIDE\"", "M98 <SIDE>", "M98 P<side>", "M98 \"SIDE\"", "G65 <SIDE> A5.", "G65 \"SIDE\" A5.",
			"G65 P\"SIDE\" A5."})
	void aProgramIsCalledByItsNameInTheFileOrBesideIt(String call) {
		Followed inside = Followed.milling("O<MAIN>", "G0 X0", call, "M30", "O<SIDE>", "G0 X7.", "M99");
		assertThat(inside.ends()).containsExactly("0,?,?", "7,?,?");
		assertThat(inside.lost()).isEmpty();
		assertThat(Followed.with(Map.of("SIDE", "G0 X7.\nM99", "side", "G0 X7.\nM99"), MachineProfile.generic(), "G0 X0", call, "M30")
				.ends()).containsExactly("0,?,?", "7,?,?");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {"G65 \"SIDE.NC\" A5. | program SIDE.NC is neither", "M98 <SIDE> | program SIDE is neither",
			"G65 A5. | G65 says no program with P", "M98 | M98 says no program with P"})
	void aProgramThatIsNotHereIsNamedAsTheCallNamesIt(String call, String why) {
		assertThat(Followed.milling("G0 X0", call, "M30").lost()).singleElement().asString().startsWith(why);
	}

	@Test
	void everyMotionCallsAMacroByItsName() {
		Followed run = Followed.milling("O1", "G0 X0", "G66 \"SIDE\" A3.", "X10.", "G67", "M30", "O<SIDE>", "G0 Y#1", "M99");
		assertThat(run.ends()).containsExactly("0,?,?", "10,?,?", "10,3,?");
	}

	@Test
	void aMissingProgramIsNotFollowedAndLosesThePlace() {
		Followed run = Followed.milling("G0 X0 Y0 Z0", "M98 P8001", "G0 X1.", "M30");
		assertThat(run.lost()).containsExactly("program 8001 is neither in this file nor beside it: what it does is not known");
		assertThat(run.ends()).containsExactly("0,0,0", "1,?,?");
	}

	@Test
	void macroArgumentsBecomeLocalVariables() {
		Followed run = Followed.milling("O1", "#1=99.", "G65 P9010 A5. Z-12. R2.", "G0 X#1", "M30", "O9010", "G0 X#1 Y#26 Z#18", "M99");
		assertThat(run.ends()).containsExactly("5,-12,2", "99,-12,2");
	}

	@Test
	void anArgumentLeftOutIsVacant() {
		Followed run = Followed.milling("O1", "G65 P9010 A5.", "M30", "O9010", "IF [#2 EQ #0] THEN #2=7.", "G0 X#1 Y#2 Z#3", "M99");
		assertThat(run.ends()).containsExactly("5,7,?");
		assertThat(run.lost()).isEmpty();
	}

	@Test
	void aModalMacroRunsBehindEveryMotion() {
		Followed run = Followed.milling("O1", "G0 X0 Y0 Z10.", "G66 P9020 Z-5.", "X10.", "X20.", "G67", "X30.", "M30", "O9020", "G1 Z#26",
				"G0 Z10.", "M99");
		assertThat(run.ends()).containsExactly("0,0,10", "10,0,10", "10,0,-5", "10,0,10", "20,0,10", "20,0,-5", "20,0,10", "30,0,10");
	}

	@Test
	void aLoopRoundACircleDrillsEveryHole() {
		Followed run = Followed.milling("#1=0", "G0 X0 Y0 Z10.", "G81 Z-5. R2. F100 L0", "WHILE [#1 LT 4] DO1",
				"X[20*COS[#1*90]] Y[20*SIN[#1*90]]", "#1=#1+1", "END1", "G80", "M30");
		assertThat(run.places()).containsExactly("20,0", "0,20", "-20,0", "0,-20");
	}

	@Test
	void ifGotoCountsAndLeaves() {
		Followed run = Followed.milling("#1=0", "N10 G0 X#1", "#1=#1+5.", "IF [#1 LE 10.] GOTO 10", "Y1.", "M30");
		assertThat(run.ends()).containsExactly("0,?,?", "5,?,?", "10,?,?", "10,1,?");
	}

	@Test
	void gotoTakesAnExpression() {
		assertThat(Followed.milling("#1=2", "GOTO [#1*10]", "N10 G0 X1.", "N20 G0 X2.").ends()).containsExactly("2,?,?");
	}

	@Test
	void nestedLoopsRunRowByRow() {
		Followed run = Followed.milling("#2=0", "WHILE [#2 LT 2] DO1", "#1=0", "WHILE [#1 LT 2] DO2", "G0 X#1 Y#2", "#1=#1+1", "END2",
				"#2=#2+1", "END1");
		assertThat(run.ends()).containsExactly("0,0,?", "1,0,?", "0,1,?", "1,1,?");
	}

	@Test
	void oWordsCallBranchAndLoop() {
		Followed run = Followed.on(RS274, "o<hole> sub", "G0 X#1 Y#2", "o<hole> endsub", "#10=0", "o100 while [#10 LT 3]",
				"o101 if [#10 EQ 1]", "o<hole> call [#10] [9]", "o101 else", "o<hole> call [#10] [0]", "o101 endif", "#10=[#10+1]",
				"o100 endwhile", "M2");
		assertThat(run.ends()).containsExactly("0,0,?", "1,9,?", "2,0,?");
	}

	@Test
	void oRepeatAndDoWhile() {
		Followed run = Followed.on(RS274, "G0 X0", "G91", "o1 repeat [3]", "X1", "o1 endrepeat", "#1=0", "o2 do", "X10", "#1=[#1+1]",
				"o2 while [#1 LT 2]", "M2");
		assertThat(run.ends()).containsExactly("0,?,?", "1,?,?", "2,?,?", "3,?,?", "13,?,?", "23,?,?");
	}

	@Test
	void breakAndContinue() {
		Followed run = Followed.on(RS274, "#1=0", "o1 while [#1 LT 9]", "#1=[#1+1]", "o2 if [#1 EQ 2]", "o1 continue", "o2 endif",
				"o3 if [#1 EQ 4]", "o1 break", "o3 endif", "G0 X#1", "o1 endwhile", "M2");
		assertThat(run.ends()).containsExactly("1,?,?", "3,?,?");
	}

	@Test
	void aVariableThatNothingSetIsNotKnownAndNeverZero() {
		Followed run = Followed.milling("G0 X0 Y0 Z0", "G0 X#501", "M30");
		assertThat(run.lost()).containsExactly("X is not known: #501 is not set in the program");
		assertThat(run.ends()).containsExactly("0,0,0", "?,0,0");
	}

	@Test
	void notKnownSpreads() {
		Followed run = Followed.milling("#1=#5063+2.", "#2=[#1*3]", "G0 Z#2");
		assertThat(run.lost()).containsExactly("Z is not known: #5063 is known at the machine only");
	}

	@Test
	void anEndlessLoopIsNamed() {
		Followed run = Followed.on(MachineProfile.generic().with("budget", "1000"), "G0 X0", "N5 G91 X1.", "GOTO 5", "M30");
		assertThat(run.lost()).containsExactly("the loop from line 2 to 3 has no end: nothing in it leads out");
	}

	@Test
	void aProgramThatCallsItselfIsBounded() {
		Followed run = Followed.milling("O1", "M98 P2", "M30", "O2", "M98 P2", "M99");
		assertThat(run.lost()).hasSize(1).first().asString()
				.isEqualTo("the program calls itself without end: a control stops here with an alarm");
	}

	@Test
	void twoProgramsOfAFileRunEachForItself() {
		Followed run = Followed.milling("O1", "G0 X1.", "M30", "O2", "G0 Y2.", "M30");
		assertThat(run.ends()).containsExactly("1,?,?", "?,2,?");
		assertThat(run.events(Step.EventKind.PROGRAM_END)).hasSize(2);
	}

	@Test
	void aSubprogramAloneStartsFromAnUnknownState() {
		Followed run = Followed.milling("O100", "G84 X1. Y1. Z-10. R2.", "G80", "M99");
		assertThat(run.stroke(0).modal().spindle()).isEqualTo(SpindleTurn.UNKNOWN);
		assertThat(run.stroke(0).modal().feed().isSet()).isTrue();
		assertThat(run.lost()).contains("the feed of the thread is not known: the program that calls this subprogram sets it");
	}

	@Test
	void aSubprogramAloneThatMovesInIncrementsCountsFromWhereItStands() {
		Followed run = Followed.milling("O100", "G91 G1 X3. Y3. F200", "G3 I0 J-10. Z1.5", "G90 G0 X50.", "M99");
		assertThat(run.ends()).containsExactly("3,3,?", "50,3,?");
		assertThat(run.arcs().get(0).lead()).isEqualTo(1.5, org.assertj.core.api.Assertions.within(1e-9));
		assertThat(Followed.text(run.arcs().get(0).centre())).isEqualTo("3,-7,?");
		assertThat(run.moves()).extracting(move -> move.modal().frame()).doesNotHaveDuplicates().doesNotContain(0);
	}

	@Test
	void whatStandsBehindTheEndIsNotRun() {
		assertThat(Followed.milling("G0 X1.", "M30", "G0 X2.").ends()).hasSize(1);
	}

	@Test
	void toolsAreSelectedAndChanged() {
		Followed run = Followed.milling("T1 M6", "T2", "G0 X0", "M6", "G0 X1.", "M30");
		assertThat(run.moves()).extracting(move -> move.modal().tool().value()).containsExactly(1.0, 2.0);
		assertThat(run.events(Step.EventKind.TOOL_CHANGE)).hasSize(2);
		assertThat(run.events(Step.EventKind.TOOL_SELECTED)).hasSize(1);
	}

	@Test
	void changeBeforeNumberInTheSameBlockIsTheSame() {
		assertThat(Followed.milling("M6 T3", "G0 X0", "M30").state().tool().value()).isEqualTo(3);
	}

	@Test
	void withoutAnyChangeCodeTheToolWordChanges() {
		assertThat(Followed.milling("T3", "G0 X0").state().tool().value()).isEqualTo(3);
	}

	@Test
	void aToolCalledByNameHasNoNumber() {
		Setting tool = Followed.milling("T=\"DRILL 5\"", "M6", "G0 X0").state().tool();
		assertThat(tool.known()).isFalse();
		assertThat(tool.word().get().written()).isEqualTo("T=\"DRILL 5\"");
	}

	@Test
	void turretWordsHoldToolAndOffset() {
		Followed run = Followed.on(MachineProfile.named("turning"), "T0203", "G0 X20. Z1.", "T0200", "G0 Z2.");
		assertThat(run.moves().get(0).modal().tool().value()).isEqualTo(2);
		assertThat(run.moves().get(0).modal().lengthOffset().value()).isEqualTo(3);
		assertThat(run.moves().get(0).to().x()).isEqualTo(10);
		assertThat(run.events(Step.EventKind.TOOL_CHANGE)).hasSize(1);
	}

	@Test
	void richerAssignmentsAndJumpsAreFollowed() {
		Followed run = Followed.milling("R1=5", "AGAIN:", "G0 X=R1", "R1=R1+5", "IF R1<=10 GOTOB AGAIN", "G0 Y=IC(3)", "M30");
		assertThat(run.ends()).containsExactly("5,?,?", "10,?,?", "10,?,?");
	}

	@Test
	void anUnknownMiscellaneousCodeChangesNothing() {
		Followed run = Followed.milling("G0 X0", "M777", "X1.");
		assertThat(run.lost()).isEmpty();
		assertThat(run.remarks()).isEmpty();
		assertThat(run.ends()).containsExactly("0,?,?", "1,?,?");
	}

	@Test
	void framesOfRicherLanguagesAreFramesOfTheirOwn() {
		Followed run = Followed.milling("G0 X1. Y1. Z1.", "ROT RPL=30", "G0 X1. Y1.", "ROT", "G0 X2. Y2.", "ROT RPL=30", "G0 X1.");
		assertThat(run.moves()).extracting(move -> move.modal().frame()).satisfies(frames -> assertThat(frames.get(1)).isNotZero()
				.isEqualTo(frames.get(3)));
		assertThat(run.moves().get(2).modal().frame()).isZero();
	}

	/** TRANS shifts the zero as G52 does, ATRANS further; what is turned besides is a frame of its own. */
	@Test
	void aShiftByNameLeadsToThePlacesThatItMoves() {
		Followed run = Followed.milling("G0 X1. Y1. Z1.", "TRANS X100 Y=20*2", "G0 X1. Y1.", "ATRANS X5", "G0 X1.", "TRANS", "G0 X2. Y2.",
				"TRANS X100", "AROT RPL=30", "G0 X1.");
		assertThat(run.ends().subList(0, 4)).containsExactly("1,1,1", "101,41,1", "106,41,1", "2,2,1");
		assertThat(run.moves()).extracting(move -> move.modal().frame()).satisfies(frames -> assertThat(frames.subList(0, 4))
				.allMatch(frame -> frame == 0)).satisfies(frames -> assertThat(frames.get(4)).isNotZero());
	}

	@Test
	void aThreadInsideABranchThatIsNotFollowedIsSaid() {
		Followed run = Followed.milling("G0 X0 Y0 Z5.", "IF _SIZE == 5", "G84 X0 Y0 Z-10. R2. F100", "G80", "ENDIF", "M30");
		assertThat(run.lost()).containsExactly("whether this thread is made, and how often, depends on IF in line 2, which is "
				+ "not followed");
	}

	@Test
	void aStatementThatThreadsIsSaid() {
		assertThat(Followed.milling("CYCLE84(50,0,2,-20)").lost()).containsExactly(
				"CYCLE84(50,0,2,-20) makes threads in a way that is not followed: check them by hand");
	}

	@Test
	void otherStatementsAreRemarkedOnceAndThoseThatMayBeCallsByName() {
		assertThat(Followed.milling("COOLTOP", "WARMUP", "G0 X1.").remarks()).hasSize(1);
		Followed run = Followed.milling("POCKET3(1,2)", "WARMUP(3)", "POCKET3(2,2)", "G0 X1.");
		assertThat(run.lost()).isEmpty();
		assertThat(run.remarks()).hasSize(2);
	}

	@Test
	void aStatementCanBeANeighbouringProgram() {
		Followed run = Followed.with(Map.of("HOLES", "G0 X7.\nM17"), MachineProfile.generic(), "HOLES", "G0 Y1.");
		assertThat(run.ends()).containsExactly("7,?,?", "7,1,?");
	}

	@Test
	void machineCoordinatesByStatementLoseTheAxis() {
		assertThat(Followed.milling("G0 X1. Y1. Z1.", "G0 SUPA Z0").end()).satisfies(end -> assertThat(end.z()).isNaN());
	}

	@Test
	void programsBetweenPercentSignsRunEachForItself() {
		Followed run = Followed.milling("%", "G0 X1.", "M30", "%", "%", "G0 Y2.", "M30", "%");
		assertThat(run.ends()).containsExactly("1,?,?", "?,2,?");
	}

	@Test
	void anMBehindAMacroCallIsAnArgument() {
		Followed run = Followed.milling("O1", "M3 S500", "G65 P2 X5. M2.", "G0 X9.", "M30", "O2", "G81 X#24 Y#13 Z-4. R2. F100",
				"G80", "M99");
		assertThat(run.strokes()).singleElement().satisfies(stroke -> assertThat(stroke.place().y()).isEqualTo(2));
		assertThat(run.end().x()).isEqualTo(9);
	}

	@Test
	void aSubprogramThatNothingCallsEndsAtItsEndsubAndTheMainProgramIsRunOnce() {
		Followed run = Followed.on(RS274, "o<spare> sub", "G81 X1 Y1 Z-9 R2", "o<spare> endsub", "T1 M6", "G81 X5 Y5 Z-4 R2", "M2");
		assertThat(run.strokes()).hasSize(2);
		assertThat(run.events(Step.EventKind.TOOL_CHANGE)).hasSize(1);
	}

	@Test
	void anOWordSubprogramThatNothingCallsIsRunAlone() {
		Followed run = Followed.on(RS274, "o<tap> sub", "G84 X1 Y1 Z#1 R2", "o<tap> endsub");
		assertThat(run.lost()).contains("Z is not known: #1 is not set in the program");
	}

	@Test
	void anAlarmOfTheProgramEndsIt() {
		Followed run = Followed.milling("G0 X1.", "#3000=1 (NO ARGUMENT)", "G0 X2.");
		assertThat(run.lost()).containsExactly("the program stops here with an alarm of its own");
		assertThat(run.ends()).hasSize(1);
	}

	@Test
	void offsetVariablesMakeAFrameThatComesBack() {
		Followed run = Followed.milling("G54 G0 X0", "#5221=5.", "G0 X1.", "#5221=9.", "G0 X1.", "#5221=5.", "G0 X1.");
		assertThat(run.moves()).extracting(move -> move.modal().frame()).satisfies(frames -> assertThat(frames.get(1))
				.isEqualTo(frames.get(3)).isNotEqualTo(frames.get(2)));
	}

	@Test
	void aSpeedLimitIsNoSpeed() {
		Followed run = Followed.on(MachineProfile.named("turning"), "S300 M3", "G50 S2000", "G0 X1.");
		assertThat(run.state().speed().value()).isEqualTo(300);
	}

	@Test
	void whichProgramIsCalledMayNotBeKnown() {
		assertThat(Followed.milling("M98 P#100").lost())
				.containsExactly("which program is called is not known: #100 is not set in the program");
	}
}
