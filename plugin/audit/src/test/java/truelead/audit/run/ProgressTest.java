package truelead.audit.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.Main;
import truelead.audit.terminal.Terminal;

/** Progress is for a person at a screen, not for a pipe, and leaves nothing behind. */
class ProgressTest {

	@TempDir
	Path folder;

	@Test
	void aPersonSeesHowManyProgramsAreDoneAndTheLineIsClearedAtTheEnd() throws IOException {
		programs(9);
		assertThat(errors(true)).startsWith("1 of 9 programs\r").endsWith(" \r").doesNotContain("\n");
	}

	@Test
	void aPipeGetsNone() throws IOException {
		programs(9);
		assertThat(errors(false)).isEmpty();
	}

	@Test
	void forAFewProgramsItIsNotWorthIt() throws IOException {
		programs(3);
		assertThat(errors(true)).isEmpty();
	}

	@Test
	void aComplaintWritesOverTheProgress() throws IOException {
		programs(9);
		Files.createFile(folder.resolve("p0.nc"));
		assertThat(errors(true)).contains("1 of 10 programs\rtruelead: " + folder.resolve("p0.nc") + ": empty file");
	}

	private void programs(int count) throws IOException {
		for (int i = 1; i <= count; i++) {
			Files.writeString(folder.resolve("p" + i + ".nc"), "G21\nM30\n");
		}
	}

	private String errors(boolean watched) {
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		PrintStream out = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
		Main.run(List.of("check", folder.toString()), new Terminal(out, new PrintStream(err, true, StandardCharsets.UTF_8), watched));
		return err.toString(StandardCharsets.UTF_8);
	}
}
