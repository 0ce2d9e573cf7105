package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What programs that compute do beyond single expressions. */
class ComputedProgramsTest {

	/** The row is said last, so it runs behind the program's moves, and the hole behind those of the row. */
	@Test
	void ofTwoModalMacrosTheLastRunsBehindTheProgramAndTheFirstBehindThatOne() {
		Followed run = Followed.milling("O1", "G90 G0 X0 Y0 Z10.", "G66 P9710 Z-5.", "G66 P9700 A2. B30.", "X10.", "G67", "X50.", "G67",
				"X60.", "M30", "O9700", "#10=#5001", "#12=1", "WHILE[#12LT#1]DO1", "G0 X[#10+#12*#2]", "#12=#12+1", "END1", "M99", "O9710",
				"G1 Z#26", "G0 Z10.", "M99");
		assertThat(run.ends()).containsExactly("0,0,10", "10,0,10", "40,0,10", "40,0,-5", "40,0,10", "50,0,10", "50,0,-5", "50,0,10",
				"60,0,10");
	}

	/** G66 said again for another depth, G67 left out: the hole is made once. */
	@Test
	void aModalMacroSaidAgainTakesThePlaceOfItself() {
		Followed run = Followed.milling("O1", "G90 G0 X0 Y0 Z10.", "G66 P9710 Z-5.", "G66 P9710 Z-7.", "X10.", "G67", "X20.", "M30",
				"O9710", "G1 Z#26", "G0 Z10.", "M99");
		assertThat(run.ends()).containsExactly("0,0,10", "10,0,10", "10,0,-7", "10,0,10", "20,0,10");
	}

	@Test
	void aRowOfPlacesIsDefinedWithItsValues() {
		Followed run = Followed.milling("DEF REAL PX[3]=SET(10,,30), QY[2,2]=SET(1,2,3,4), RZ[2]=REP(7)", "G0 X=PX[0] Y=QY[1,0] Z=RZ[1]",
				"G0 X=PX[2]");
		assertThat(run.ends()).containsExactly("10,3,7", "30,3,7");
	}

	@Test
	void aRowOfPlacesIsSetFromOneOn() {
		Followed run = Followed.milling("DEF REAL PX[3]", "PX[0]=1", "PX[1]=SET(20,30)", "R[5]=SET(4,6)", "G0 X=PX[0] Y=PX[2] Z=R6");
		assertThat(run.ends()).containsExactly("1,30,6");
	}
}
