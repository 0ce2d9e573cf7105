package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick reader gives what the grammar gives, on every block that it takes. */
class QuickReaderTest {

	@Property(tries = 4000)
	void itReadsWhatTheGrammarReads(@ForAll("lines") String line) {
		List<Element> quick = QuickReader.read(line);
		if (quick != null) {
			Block block = BlockReader.readByGrammar(line);
			assertThat(quick).isEqualTo(block.elements());
			assertThat(block.problems()).isEmpty();
		}
	}

	@ParameterizedTest
	@ValueSource(strings = {"", "N10 G1 X1.5 Y-.25 F300", "g84g99z-.5r.25f.03125", "/2M98P8001", "/ X5", "T5 M6 (M8X1.25 TAP)", "(A) (B)",
			"O1000 (PLATE)", "G0X1 ; note", "%", "% 100", "X 1. Y +2", "X=5", "g2x1 cr = -5. turn=2", "T=5",
			"C=90 A=5", "N10G01X5.*", "X5. (PLATE #2)*", "X1 A3=0.1 b3 =-.25 C3= 0.9"})
	void itTakesPlainBlocks(String line) {
		assertThat(QuickReader.read(line)).isNotNull();
	}

	@ParameterizedTest
	@ValueSource(strings = {"X[1]", "X#1", "X", "5", "GO1", "X1.2.3", "X1.5E-05", "S1=5", "(a (b))", "(a", "//a", "G0 X1 /2 M8", "GOTO10",
			"X=R5", "*", "X1*Y2", "X1 **", "X=5-2", "X==5", "X=5 AND 2", "AR=90", "CR", "CR5", "A3=R1", "A12=5", "X3=1", "A8=1", "G0 O5",
			"O.5", "AB:", "\"a\"", ":1"})
	void itLeavesTheRestToTheGrammar(String line) {
		assertThat(QuickReader.read(line)).isNull();
	}

	@Provide
	Arbitrary<String> lines() {
		Arbitrary<String> words = Arbitraries.oneOf(
				Arbitraries.of("G0", "G1", "X1.5", "Y-.25", "Z+3.", "x 1", "F300", "N10", "O1", "M3", " ", "  ", "\t", "E-05", "e1", "/",
						"/2", "(a)", "(b) ", ";c", "%", "//", "-", ".", "1", "0",
						"5.", "000123456789012345", "(", ")", "[", "#", "=", "O", "l", "IF", "é", "\u0000", "CR=5.", "cr =-2", "TURN=1",
						"X=5", "Y= -2.5", "T=3", "O=5", "+", "*", "AND", "MOD", "CR", "G=1", "E=2", " EQ ",
						"A3=0.1", "B3 = -.9", "C5=1", "A3", "B33=1", "=1", "*", "* "),
				Arbitraries.strings().withCharRange(' ', 'z').ofMaxLength(3));
		return words.list().ofMaxSize(9).map(parts -> String.join("", parts));
	}
}
