package truelead.audit.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.audit.Recorded;

/** The short way round the reader of options gives what the reader gives. */
class PlainCheckTest {

	@TempDir
	Path folder;

	@Test
	void theShortWayAndTheLongWaySayTheSame() throws IOException {
		Path program = Files.writeString(folder.resolve("bracket.nc"), Sample.BRACKET);
		Recorded plain = Recorded.run("check", program, "--fail-on", "error", "--report", "json");
		assertThat(plain.out()).contains("feed-off-pitch");
		assertThat(Recorded.run("check", program, "--fail-on=error", "--report=json")).isEqualTo(plain);
		assertThat(Recorded.run("check", "--gauge-every", "5", program, "--fail-on", "error", "--report", "json")).isEqualTo(plain);
	}

	@ParameterizedTest
	@ValueSource(strings = { "check", "check --help", "check a.nc --machine rs274", "check a.nc --report", "check --report html",
			"check a.nc --report --fail-on", "check a.nc --fail-on=error", "check -- a.nc", "thread M8", "" })
	void whatIsNotPlainIsLeftToTheReader(String typed) {
		assertThat(PlainCheck.of(List.of(typed.split(" ")), Recorded.terminal(new ByteArrayOutputStream(), new ByteArrayOutputStream())))
				.isEmpty();
	}
}
