package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No line overflows the stack or holds up the reading. */
class LimitsTest {

	@ParameterizedTest
	@ValueSource(strings = {"[", "(", "#", "-", "#1=[", "X[", "SIN[", "+1", "A(", "IF[", "X1 ", "\"", "/", "o<", "=", "**", "NOT ",
			"#1=NOT", ",R", "WHILE", "GOTO"})
	void aMillionOfAnythingIsReadWithAProblemAndKept(String piece) {
		String line = "G1" + piece.repeat(1_000_000 / piece.length());
		Block block = BlockReader.read(line);
		Coverage.check(block);
		assertThat(block.problems()).isNotEmpty();
	}

	@ParameterizedTest
	@ValueSource(ints = {50, 51})
	void bracketsAreReadToTheDepthStated(int depth) {
		Block block = BlockReader.read("X" + "[".repeat(depth) + "1" + "]".repeat(depth) + " Y2");
		if (depth <= BlockReader.MAX_DEPTH) {
			assertThat(block.problems()).isEmpty();
			assertThat(block.words()).hasSize(2);
		} else {
			assertThat(block.problems()).singleElement().satisfies(problem -> assertThat(problem.message())
					.startsWith("this block has brackets more than 50 deep"));
		}
	}

	@ParameterizedTest
	@ValueSource(ints = {10_000, 10_001})
	void aBlockIsReadToTheLengthStated(int length) {
		Block block = BlockReader.read("G1" + " ".repeat(length - 5) + "X1 ");
		assertThat(block.problems()).hasSize(length - BlockReader.MAX_LENGTH);
	}

	@ParameterizedTest
	@ValueSource(strings = {"; ", "(", "% "})
	void aLongRemarkIsNoProblem(String mark) {
		assertThat(BlockReader.read(mark + "- = ".repeat(1000) + ")").problems()).isEmpty();
	}
}
