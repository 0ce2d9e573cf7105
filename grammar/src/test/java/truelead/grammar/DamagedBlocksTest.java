package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The usual mistakes: where exactly they are, and what to type. */
class DamagedBlocksTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
		"GO1 Z-60           | O       | The letter O stands where the digit 0 is meant. Type G01.",
		"G1XO.5             | O       | The letter O stands where the digit 0 is meant. Type X0.5.",
		"G1X1O.5            | O       | The letter O stands where the digit 0 is meant. Type X10.5.",
		"Z-O.5              | O       | The letter O stands where the digit 0 is meant. Type Z-0.5.",
		"F52O.              | O       | The letter O stands where the digit 0 is meant. Type F520. instead.",
		"S12OO M3           | OO      | The letter OO stands where the digit 00 is meant. Type S1200.",
		"N1l G0             | l       | The letter l stands where the digit 1 is meant. Type N11.",
		"M3 $1200           | $       | A dollar sign stands where the letter S is meant. Type S1200.",
		"X1.2.3 Y2          | 1.2.3   | 1.2.3 has more than one decimal point. Leave only one.",
		"G1 X Y5            | X       | X has no number. Type the number behind it, or take X away.",
		"XY5                | X       | X has no number. Type the number behind it, or take X away.",
		"X- Y5              | -       | - has no number behind it. Type the number, or take the sign away.",
		"X[#1+2 Y5          | [       | This [ is never closed. Type ] behind the value.",
		"G84 Z--10 R2       | --      | More than one sign stands before a number. Leave only one.",
		"G84 Z-10 R2 F      | F       | F has no number. Type the number behind it, or take F away.",
		"G84 Z-I0.          | -       | - has no number behind it. Type the number, or take the sign away.",
		"M98 P              | P       | P has no number. Type the number behind it, or take P away.",
		"IF [#1 EQ 2 GOTO 10 | [      | This [ is never closed. Type ] behind the value.",
		"IF [#1 EQ] GOTO 10 | EQ      | EQ has no value behind it. Type the value that is missing.",
		"IF [#1 EQ 2] GOTO  | GOTO    | GOTO has no value behind it. Type the value that is missing.",
		"WHILE [#1 LT 3] DO | DO      | DO has no value behind it. Type the value that is missing.",
		"FOR R1=1 TO        | TO      | TO has no value behind it. Type the value that is missing.",
		"MCALL HOLE(5       | (       | This ( is never closed. Type ) behind the value.",
		"R1=                | =       | = has no value behind it. Type the value that is missing.",
		"# =5               | #       | # has no number behind it. Type the number of the variable, as in #100.",
		"/10 G0 X1          | /10     | A number from 1 to 9 may stand right behind the slash. Type the address letter before 10, or take it away.",
		"G84 Z10-           | -       | - cannot stand outside brackets here. Put the whole value into [ and ].",
		"X#1] Y5            | ]       | This ] has no [ before it. Type [ before the value, or take ] away.",
		"F[] X1             | []      | These brackets are empty. Type the value between [ and ].",
		"#1=                | =       | = has no value behind it. Type the value that is missing.",
		"#1=5+              | +       | + has no value behind it. Type the value that is missing.",
		"#1=SIN 30          | SIN 30  | SIN needs its value in brackets. Type SIN[30].",
		"X5+3               | +3      | + cannot stand outside brackets here. Put the whole value into [ and ].",
		"X1,5 Y2            | ,5      | A comma cannot stand here. Type a point if that is meant; only a corner's ,C2. or ,R2. begins with a comma.",
		"#5                 | #5      | #5 stands alone. Type = and its value behind it, or an address letter before it.",
		"G0 X1) Y2          | )       | This ) has no ( before it. Type ( before the comment, or take ) away.",
		"01000              | 01000   | A program number begins with the letter O. Type O1000, or take the number away.",
		"(G0 X1)9           | 9       | 9 has no address letter. Type the letter before it, or take it away.",
		"X1.5E-05           | 1.5E-05 | 1.5E-05 is written with an exponent, which controls read as an E word. Type it as a plain decimal number.",
		"G0 X1 @ Y2         | @       | @ has no meaning in a block. Take it away, or put it into a comment.",
		"(TAP M8 G0X1.Y2.   | (TAP M8 G0X1.Y2. | This comment is never closed and words of code stand in it, which are not done. Type ) where the comment ends."
	})
	void theMistakeIsNamedWhereItStands(String line, String part, String message) {
		assertThat(BlockReader.read(line).problems()).singleElement().satisfies(problem -> {
			assertThat(line.substring(problem.span().start(), problem.span().end())).isEqualTo(part);
			assertThat(problem.message()).isEqualTo(message);
		});
	}

	@Test
	void readingGoesOnBehindTheMistake() {
		assertThat(Shape.of("GO1 X[#1+2 Y5 F100")).isEqualTo("G1 X[(#1 + 2)] Y5 F100");
		assertThat(Shape.of("G1 X1..5 Y5")).isEqualTo("G1 X? Y5");
	}

	@Test
	void aNumberThatCannotBeReadIsMissingAndNeverGuessed() {
		assertThat(BlockReader.read("G1 X1..5").words().get(1).value()).isEqualTo(new Expression.Missing(new Span(4, 8)));
	}
}
