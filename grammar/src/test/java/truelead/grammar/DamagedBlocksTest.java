package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The usual mistakes: where exactly they are, and what to type. */
class DamagedBlocksTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
		"GO1 Z-60           | O       | the letter O stands where the digit 0 is meant; type G01",
		"G1XO.5             | O       | the letter O stands where the digit 0 is meant; type X0.5",
		"G1X1O.5            | O       | the letter O stands where the digit 0 is meant; type X10.5",
		"Z-O.5              | O       | the letter O stands where the digit 0 is meant; type Z-0.5",
		"F52O.              | O       | the letter O stands where the digit 0 is meant; type F520.",
		"S12OO M3           | OO      | the letter OO stands where the digit 00 is meant; type S1200",
		"N1l G0             | l       | the letter l stands where the digit 1 is meant; type N11",
		"M3 $1200           | $       | a dollar sign stands where the letter S is meant; type S1200",
		"X1.2.3 Y2          | 1.2.3   | 1.2.3 has more than one decimal point; leave only one",
		"G1 X Y5            | X       | X has no number; type the number behind it, or take X away",
		"XY5                | X       | X has no number; type the number behind it, or take X away",
		"X- Y5              | -       | - has no number behind it; type the number, or take the sign away",
		"X[#1+2 Y5          | [       | this [ is never closed; type ] behind the value",
		"G84 Z--10 R2       | --      | more than one sign stands before a number; leave only one",
		"G84 Z-10 R2 F      | F       | F has no number; type the number behind it, or take F away",
		"G84 Z-I0.          | -       | - has no number behind it; type the number, or take the sign away",
		"o<side> X1         | o<side> | a named O word needs sub, call, if, while, repeat or the like behind it; type what it is to do",
		"M98 P              | P       | P has no number; type the number behind it, or take P away",
		"IF [#1 EQ 2 GOTO 10 | [      | this [ is never closed; type ] behind the value",
		"IF [#1 EQ] GOTO 10 | EQ      | EQ has no value behind it; type the value that is missing",
		"IF [#1 EQ 2] GOTO  | GOTO    | GOTO has no value behind it; type the value that is missing",
		"WHILE [#1 LT 3] DO | DO      | DO has no value behind it; type the value that is missing",
		"FOR R1=1 TO        | TO      | TO has no value behind it; type the value that is missing",
		"MCALL HOLE(5       | (       | this ( is never closed; type ) behind the value",
		"R1=                | =       | = has no value behind it; type the value that is missing",
		"# =5               | #       | # has no number behind it; type the number of the variable, as in #100",
		"/10 G0 X1          | /10     | a number from 1 to 9 may stand right behind the slash; type the address letter before 10, or "
				+ "take it away",
		"G84 Z10-           | -       | - cannot stand outside brackets here; put the whole value into [ and ]",
		"X#1] Y5            | ]       | this ] has no [ before it; type [ before the value, or take ] away",
		"F[] X1             | []      | these brackets are empty; type the value between [ and ]",
		"#1=                | =       | = has no value behind it; type the value that is missing",
		"#1=5+              | +       | + has no value behind it; type the value that is missing",
		"#1=SIN 30          | SIN 30  | SIN needs its value in brackets; type SIN[30]",
		"X5+3               | +3      | + cannot stand outside brackets here; put the whole value into [ and ]",
		"X1,5 Y2            | ,5      | a comma cannot stand here; type a point if that is meant; only a corner's ,C2. or ,R2. begins "
				+ "with a comma",
		"#5                 | #5      | #5 stands alone; type = and its value behind it, or an address letter before it",
		"G0 X1) Y2          | )       | this ) has no ( before it; type ( before the comment, or take ) away",
		"01000              | 01000   | a program number begins with the letter O; type O1000, or take the number away",
		"(G0 X1)9           | 9       | 9 has no address letter; type the letter before it, or take it away",
		"X1.5E-05           | 1.5E-05 | 1.5E-05 is written with an exponent, which controls read as an E word; type it as a plain "
				+ "decimal number",
		"G0 X1 & Y2         | &       | & has no meaning in a block; take it away, or put it into a comment",
		"G0 X1 @ Y2         | @       | @ has no meaning in a block; take it away, or put it into a comment",
		"(TAP M8 G0X1.Y2.   | (TAP M8 G0X1.Y2. | this comment is never closed and words of code stand in it, which are not done; type ) "
				+ "where the comment ends" }) void theMistakeIsNamedWhereItStands(String line, String part, String message) {
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
