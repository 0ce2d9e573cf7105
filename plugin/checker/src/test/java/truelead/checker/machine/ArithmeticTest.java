package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.profile.MachineProfile;

/** What expressions come to, to three decimals. */
class ArithmeticTest {

	private static final MachineProfile RS274 = MachineProfile.named("rs274");

	private static String value(MachineProfile profile, String expression) {
		Followed run = Followed.on(profile, "#1=3.", "#2=-2.8", "#3=2.8", "#12=7", "#9=12", "#<pitch>=1.25",
				"#120=" + expression, "G1 X#120");
		return run.lost().isEmpty() ? Followed.number(run.end().x()) : "? " + run.lost().get(0);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
		"1+2*3                  | 7",
		"[1+2]*3                | 9",
		"2*3**2                 | 18",
		"-2**2                  | 4",
		"10/4-1                 | 1.5",
		"7-2-1                  | 4",
		"7 MOD 4                | 3",
		"[-7] MOD 3             | 2",
		"7.5 MOD 2              | 1.5",
		"FIX[#3]                | 2",
		"FUP[#3]                | 3",
		"FIX[#2]                | -2",
		"FUP[#2]                | -3",
		"ROUND[#3]              | 3",
		"ROUND[#2]              | -3",
		"ROUND[2.5]             | 3",
		"ROUND[-2.5]            | -3",
		"FIX[0.3/0.1]           | 3",
		"ABS[#2]                | 2.8",
		"SQRT[16]               | 4",
		"EXP[0]                 | 1",
		"LN[EXP[2]]             | 2",
		"SIN[30]                | 0.5",
		"COS[60]                | 0.5",
		"COS[90]                | 0",
		"TAN[45]                | 1",
		"ASIN[.5]               | 30",
		"ACOS[.5]               | 60",
		"ATAN[1]                | 45",
		"ATAN[-1]/[0]           | -90",
		"ATAN[1]/[-1]           | 135",
		"ATAN[-1]/[-1]          | -135",
		"BIN[37]                | 25",
		"BCD[25]                | 37",
		"BIN[BCD[1999]]         | 1999",
		"6 AND 3                | 2",
		"6 OR 3                 | 7",
		"6 XOR 3                | 5",
		"[1 EQ 1] AND [2 LT 1]  | 0",
		"[1 EQ 1] OR [2 LT 1]   | 1",
		"[1 EQ 1] XOR [2 GT 1]  | 0",
		"#1 EQ 3                | 1",
		"#1 NE 3                | 0",
		"#1 GT 2                | 1",
		"#1 GE 3                | 1",
		"#1 LT 3                | 0",
		"#1 LE 3                | 1",
		"#1 == 3                | 1",
		"#1 <> 3                | 0",
		"#1 != 3                | 0",
		"#1 > 2                 | 1",
		"#1 >= 3                | 1",
		"#1 < 3                 | 0",
		"#1 <= 3                | 1",
		"0.1+0.2 EQ 0.3         | 1",
		"##1                    | 2.8",
		"#[#1*4]                | 7",
		"#[#[#9]+2]             | 12",
		"-#1                    | -3",
		"#<pitch>*2             | 2.5",
		"EXISTS[#<pitch>]       | 1",
		"EXISTS[#<lead>]        | 0"
	})
	void expressionsComeTo(String expression, String value) {
		assertThat(value(MachineProfile.generic(), expression)).isEqualTo(value);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
		"FIX[#2]                | -3",
		"FUP[#2]                | -2",
		"FIX[2.8]               | 2",
		"6 AND 1                | 1",
		"0 OR 8                 | 1",
		"6 XOR 3                | 0",
		"5 MOD 3                | 2"
	})
	void rs274RoundsByValueAndJoinsByTruth(String expression, String value) {
		assertThat(value(RS274, expression)).isEqualTo(value);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
		"1/0                    | X is not known: something is divided by zero",
		"7 MOD 0                | X is not known: something is divided by zero",
		"SQRT[-1]               | X is not known: the result is no number",
		"LN[0]                  | X is not known: the result is no number",
		"ASIN[2]                | X is not known: the result is no number",
		"BCD[-1]                | X is not known: BCD takes numbers from 0 to 999999999999",
		"#500*2                 | X is not known: #500 is not set in the program",
		"#[#500]                | X is not known: the number of a variable is not known: #500 is not set in the program"
	})
	void whatHasNoValueIsNotKnown(String expression, String why) {
		assertThat(value(MachineProfile.generic(), expression)).isEqualTo("? " + why);
	}

	@Test
	void oneSideAloneMayDecide() {
		assertThat(value(MachineProfile.generic(), "[#500 GT 1] AND [1 GT 2]")).isEqualTo("0");
		assertThat(value(MachineProfile.generic(), "[#500 GT 1] OR [2 GT 1]")).isEqualTo("1");
	}

	@Test
	void whatACallLeavesOutIsVacantAndCountsAsNought() {
		Followed run = Followed.milling("O1", "G65 P9 A5.", "M30", "O9", "IF [#2 EQ #0] GOTO 5", "G0 X99.",
				"N5 G0 X[#1+#2] Y#2 Z[#2 EQ 0]", "M99");
		assertThat(run.ends()).containsExactly("5,?,0");
	}

	@Test
	void numbersThatNothingHasSetAreZeroBesideOWords() {
		assertThat(Followed.milling("G90 G0 X0 Y0", "o1 if [1 gt 0]", "X[5+#500]", "o1 endif").ends()).contains("5,0,?");
		assertThat(Followed.milling("G90 G0 X0 Y0", "o1 if [1 gt 0]", "X#500", "o1 endif").lost()).as("a word forgotten").isNotEmpty();
	}
}
