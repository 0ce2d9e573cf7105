package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The words of a motion are those that the grammar reads, on every block that is taken for one. */
class MotionWordsTest {

	private static final String LETTERS = "NGXYZABCIJRF";
	private static final char TURNS = '*';

	private static MotionWords words(String line) {
		return new MotionWords((line + '\n').toCharArray());
	}

	@Property(tries = 6000)
	void theyAreWhatTheGrammarReads(@ForAll("lines") String line) {
		MotionWords words = words(line);
		if (!words.read(0)) {
			return;
		}
		Block block = BlockReader.readByGrammar(line);
		assertThat(block.problems()).isEmpty();
		assertThat(block.elements()).extracting(MotionWordsTest::letter).doesNotHaveDuplicates().isNotEmpty()
				.allMatch(letter -> LETTERS.indexOf(letter) >= 0 || letter == TURNS);
		assertThat(List.of(words.x(), words.y(), words.z(), words.i(), words.j(), words.r(), words.feed()))
				.isEqualTo(List.of(number(block, 'X'), number(block, 'Y'), number(block, 'Z'), number(block, 'I'), number(block, 'J'),
						number(block, 'R'), number(block, 'F')));
		assertThat(List.of(words.turned(0), words.turned(1), words.turned(2)))
				.isEqualTo(List.of(number(block, 'A'), number(block, 'B'), number(block, 'C')));
		assertThat(words.turns()).isEqualTo(block.words().stream().anyMatch(word -> "ABC".indexOf(word.address()) >= 0));
		assertThat((double) words.code()).isEqualTo(Double.isNaN(number(block, 'G')) ? -1 : number(block, 'G'));
		assertThat(words.decimals()).isEqualTo("XYZIJR".chars().map(address -> decimals(block, (char) address)).max().orElseThrow());
		assertThat(words.feedDecimals()).isEqualTo(decimals(block, 'F'));
		block.words().stream().filter(word -> word.address() == 'F').forEach(feed -> {
			assertThat(words.feedSpan()).isEqualTo(feed.span());
			assertThat(words.feedText()).isEqualTo(line.substring(feed.span().start(), feed.span().end()));
		});
	}

	@ParameterizedTest
	@ValueSource(strings = {"X1.", "N120 G1 X-12.345 Y.5 Z-0.125 F1200.", "G02X5Y0I-2.5J0", "\tX1  Y2 ", "G3 X1. Y2. R5.", "N5", "X-0",
			"G3 X1. Y2. CR=5.", "G02 X=1.5 Y=-2 I1. J0 TURN=0",
			"X1. Y2. Z-3. A10.5 C-90.", "B=45"})
	void itTakesMotions(String line) {
		assertThat(words(line).read(0)).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = {"", " ", "X", "X1 X2", "G0 G90", "G81 X1", "X1 M8", "X#1", "X[1]", "X1..2", "X1.2.3", "X1(A)", "X1;A", "/X1",
			"%", "5", "X1E-05", "X1234567890123456", "é1", "X1_", "G3 X1. TURN=2", "T0", "t0", "CR5", "X=1-2", "X=R1"})
	void itTakesNothingElse(String line) {
		assertThat(words(line).read(0)).isFalse();
	}

	/** The letter of a word, for which a word of several letters may stand; TURN=0 says nothing. */
	private static char letter(Element element) {
		if (element instanceof Element.Word word) {
			return word.extension() < 0 ? word.address() : '?';
		}
		String name = element instanceof Element.Assignment given && given.target() instanceof Expression.NamedVariable variable
				? variable.name() : "";
		return name.equals("cr") ? 'R' : name.equals("turn") && value(element).value() == 0 ? TURNS : '?';
	}

	private static Expression.Number value(Element element) {
		return (Expression.Number) (element instanceof Element.Word word ? word.value() : ((Element.Assignment) element).value());
	}

	private static double number(Block block, char address) {
		return block.elements().stream().filter(element -> letter(element) == address).mapToDouble(element -> value(element).value())
				.findFirst().orElse(Double.NaN);
	}

	private static int decimals(Block block, char address) {
		return block.elements().stream().filter(element -> letter(element) == address).mapToInt(element -> value(element).decimals())
				.findFirst().orElse(0);
	}

	@Provide
	Arbitrary<String> lines() {
		Arbitrary<String> words = Arbitraries.frequencyOf(Tuple.of(6, Arbitraries.of("G0", "G1", "G02 ", "X1.5", "X-12.345 ", "Y-.25", "Y7",
				"Z-3.", "F300", "N10", "I0.", "J-1.5", "R5.", "CR=8.5", " TURN=0", "X=-1.25", "Z=3", " F=200.", "A90.", "B-5.25",
				"C=10.")),
				Tuple.of(1, Arbitraries.of("G90", "x 1", "X-0.0", "Y000.10", " ", "\t", "E-05", "e1", "/", "(a)", ";c", "%", "-", ".", "1",
						"000123456789012345", "[", "#", "=", "M8", "l", "é", "TURN=1", "CR", "CR=-2", "CRX1", "X==1", "X=1-2", "=", "AND",
						"MOD2", "t0", "T0", "T=0", "TURN", "cr=5", "X=+1", "C=4", "X=1.E-05")),
				Tuple.of(1, Arbitraries.strings().withCharRange(' ', 'z').ofMaxLength(3)));
		return words.list().ofMaxSize(6).map(parts -> String.join("", parts));
	}
}
