package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bytes that are looked at eight at a time give the lines that their text gives. */
class PlainBytesTest {

	@Property(tries = 3000)
	void linesStartWhereTheTextHasThem(@ForAll("texts") String text) {
		byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
		ProgramText fromBytes = ProgramText.read(bytes);
		ProgramText fromText = ProgramText.of(text);
		assertThat(fromBytes.toString()).isEqualTo(text);
		assertThat(fromBytes.lineCount()).isEqualTo(fromText.lineCount());
		for (int line = 0; line < fromText.lineCount(); line++) {
			assertThat(fromBytes.lineStart(line)).isEqualTo(fromText.lineStart(line));
		}
		assertThat(fromBytes.bytes()).isEqualTo(bytes);
	}

	@ParameterizedTest
	@ValueSource(strings = {"", "X1", "X1\n", "\n\n\n\n\n\n\n\n\n", "X1\r\nY1\r\n", "1234567\r\n", "123456\r\n8\r\n"})
	void itTakesPlainText(String text) {
		assertThat(PlainBytes.starts(text.getBytes(StandardCharsets.UTF_8))).isPresent();
	}

	@ParameterizedTest
	@ValueSource(strings = {"X1\rY1", "1234567\r", "1234567\rX", "\r\r\n", "(Ø8)", "1234567\u00e9"})
	void itLeavesTheRest(String text) {
		assertThat(PlainBytes.starts(text.getBytes(StandardCharsets.UTF_8))).isEmpty();
	}

	@Provide
	Arbitrary<String> texts() {
		Arbitrary<String> pieces = Arbitraries.of(List.of("\n", "\n", "\r\n", "\r\n", "\r", "X1", "Y-12.5", "(Ø8)", "\u0000", "\u007f",
				" ", "1234567"));
		return pieces.list().ofMaxSize(30).map(parts -> String.join("", parts));
	}
}
