package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Own samples of every form seen in real programs, kept byte for byte. */
class SamplesTest {

	@ParameterizedTest
	@MethodSource("good")
	void aFaultlessProgramHasNoProblem(Path sample) throws IOException {
		ProgramText program = ProgramText.read(Files.readAllBytes(sample));
		for (int line = 0; line < program.lineCount(); line++) {
			assertThat(program.block(line).problems()).as("line %s: %s", line + 1, program.line(line)).isEmpty();
		}
	}

	@ParameterizedTest
	@MethodSource("damaged")
	void everyLineOfADamagedProgramHasAProblem(Path sample) throws IOException {
		ProgramText program = ProgramText.read(Files.readAllBytes(sample));
		for (int line = 0; line + 1 < program.lineCount(); line++) {
			assertThat(program.block(line).problems()).as("line %s: %s", line + 1, program.line(line)).isNotEmpty();
		}
	}

	@ParameterizedTest
	@MethodSource("all")
	void theTextGivesTheSameBytesAgain(Path sample) throws IOException {
		byte[] bytes = Files.readAllBytes(sample);
		assertThat(ProgramText.read(bytes).bytes()).isEqualTo(bytes);
	}

	@ParameterizedTest
	@MethodSource("all")
	void everyCharacterIsInAnElementOrIsWhiteSpace(Path sample) throws IOException {
		ProgramText program = ProgramText.read(Files.readAllBytes(sample));
		for (int line = 0; line < program.lineCount(); line++) {
			Coverage.check(program.block(line));
		}
	}

	@Test
	void wideTextIsReadByItsByteOrderMark() {
		assertThat(ProgramText.read("\uFEFFG0 X1.".getBytes(StandardCharsets.UTF_16LE)).block(0).words()).hasSize(2);
		assertThat(ProgramText.read("\uFEFFG0 X1.".getBytes(StandardCharsets.UTF_16BE)).block(0).words()).hasSize(2);
	}

	@Test
	void aCutOffWideTextKeepsItsBytes() {
		byte[] odd = {(byte) 0xFF, (byte) 0xFE, 'G'};
		assertThat(ProgramText.read(odd).bytes()).isEqualTo(odd);
	}

	static List<Path> good() throws IOException, URISyntaxException {
		return files("/samples/good");
	}

	static List<Path> damaged() throws IOException, URISyntaxException {
		return files("/samples/damaged");
	}

	static List<Path> all() throws IOException, URISyntaxException {
		return files("/samples");
	}

	private static List<Path> files(String folder) throws IOException, URISyntaxException {
		try (Stream<Path> files = Files.walk(Path.of(SamplesTest.class.getResource(folder).toURI()))) {
			return files.filter(Files::isRegularFile).sorted().toList();
		}
	}
}
