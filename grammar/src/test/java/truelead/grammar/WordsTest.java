package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Word-address blocks as they are typed on all kinds of machines. */
class WordsTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = true, quoteCharacter = '~', value = {
		"G84G99Z-.5R.25F.03125             | G84 G99 Z-0.5 R0.25 F0.03125",
		"N110G54G0X1Y2                     | N110 G54 G0 X1 Y2",
		"g1 x1. y-.45 z+.5 f100            | G1 X1. Y-0.45 Z0.5 F100",
		"X -1.5 Y + 2 Z - .5               | X-1.5 Y2 Z-0.5",
		"Z [ #1 ] F [ #2 * #4 ]            | Z[#1] F[(#2 * #4)]",
		"G00 G49 G40.1 G17 G80 G50 G90     | G00 G49 G40.1 G17 G80 G50 G90",
		"X#1Y-#2Z-[#3+1]F#<feed>           | X#1 Y-#2 Z-[(#3 + 1)] F<feed>",
		"XSIN[30]                          | XSIN(30)",
		"O0051( NAME )                     | O0051 parentheses{ NAME }",
		"O10068;                           | O10068 semicolon{}",
		"N10 G30 Z-20 *                    | N10 G30 Z-20 semicolon{}",
		":1234                             | O1234",
		"N0010O7                           | N0010 O7",
		"/M00                              | /1 M00",
		"/2M98P8001                        | /2 M98 P8001",
		"/Y-5.8125                         | /1 Y-5.8125",
		"N10 G0 X10 /2 M8                  | N10 G0 X10 /2 M8",
		"N10/G0 X1                         | N10 /1 G0 X1",
		"X10. ,R2. ,C1                     | X10. ,R2. ,C1",
		"S1=500 M2=3 X=5 Y=R1              | S1=500 M2=3 X5 Y<r1>",
		"G0 @25.5 ^[#1*60]                 | G0 @25.5 ^[(#1 * 60)]",
		"G28 X Z                           | G28 X? Z?",
		"M84 X Y E                         | M84 X? Y? E?",
		"G65 <SIDE_HOLES> A1.              | G65 angle_brackets{SIDE_HOLES} A1.",
		"M98<SIDE>L2                       | M98 angle_brackets{SIDE} L2",
		"M98 P<SIDE>                       | M98 P'SIDE'",
		"<SIDE>(M6)                        | angle_brackets{SIDE} parentheses{M6}",
		"#1=[#65<#2]*[#98>3]               | #1:=([(#65 LT #2)] * [(#98 GT 3)])",
		"O<SIDE>(M6)                       | O'SIDE' parentheses{M6}",
		"M3 S400 $1                        | M3 S400 $1",
		"G84 Z-18 F500$0 X[#1]$2           | G84 Z-18 F500 $0 X[#1] $2",
		"M30%                              | M30 %",
		"$FLANGE-2.MIN%                    | %",
		"% TEXT BEHIND                     | %"
	})
	void wordsAreReadAsTyped(String line, String shape) {
		assertThat(Shape.of(line)).isEqualTo(leadingZeros(shape, line));
		assertThat(BlockReader.read(line).problems()).isEmpty();
	}

	/** Numbers are compared by value: {@code O0051} reads as 51. */
	private static String leadingZeros(String shape, String line) {
		return line.contains("0051") ? shape.replace("O0051", "O51")
				: shape.replace("N0010", "N10").replace("G00", "G0").replace("M00", "M0");
	}

	@Test
	void aWordKnowsItsDecimalsAndItsPlace() {
		Element.Word word = BlockReader.read("G1 Z-12.50 F80").words().get(1);
		assertThat(word.span()).isEqualTo(new Span(3, 10));
		assertThat(word.value()).isEqualTo(new Expression.Number(-12.5, 2, true, new Span(4, 10)));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
		"S1127(note)           | S1127 parentheses{note}",
		"S300()                | S300 parentheses{}",
		"(a)G0(b) X1 (c)       | parentheses{a} G0 parentheses{b} X1 parentheses{c}",
		"(2D Contour2 (2))     | parentheses{2D Contour2 (2)}",
		"(TAP (M8) G84 Z-10.   | parentheses{TAP (M8} G84 Z-10.",
		"(G0X11.9Y355.4)       | parentheses{G0X11.9Y355.4}",
		"(DRILL 8.5            | parentheses{DRILL 8.5}",
		"G0 X1 ; to (the) side | G0 X1 semicolon{ to (the) side}",
		"//NOTE                | slashes{NOTE}",
		"G0X1;                 | G0 X1 semicolon{}",
		"\".375-16 UNC 2b\"    | quotes{.375-16 UNC 2b}",
		"#4= 1.75 (PITCH)      | #4:=1.75 parentheses{PITCH}",
		"/(TAP)                | /1 parentheses{TAP}"
	})
	void commentsAreKeptApart(String line, String shape) {
		assertThat(Shape.of(line)).isEqualTo(shape);
		assertThat(BlockReader.read(line).problems()).isEmpty();
	}

	@Test
	void aCommentThatIsNeverClosedSaysSo() {
		assertThat(BlockReader.read("(DRILL 8.5").comments()).singleElement().matches(comment -> !comment.closed());
		assertThat(BlockReader.read("(DRILL 8.5)").comments()).singleElement().matches(Element.Comment::closed);
	}

	@Test
	void endOfFileMarksAndZeroBytesAreWhiteSpace() {
		assertThat(Shape.of("\uFEFF%")).isEqualTo("%");
		assertThat(Shape.of("M30\u0000\u001A")).isEqualTo("M30");
		assertThat(BlockReader.read("\u001A").problems()).isEmpty();
	}
}
