package truelead.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The command as a process of its own, in the poorest locale there is. */
@EnabledOnOs(OS.LINUX)
class LocaleTest {

	@TempDir
	Path folder;

	@Test
	void umlautsInAFileNameInThePosixLocale() throws IOException, InterruptedException {
		shell("printf 'G21\\nM30\\n' > 'gewinde-\u00e4\u00fc.nc'");
		assertThat(truelead("check 'gewinde-\u00e4\u00fc.nc' --report sarif")).contains("gewinde-%C3%A4%C3%BC.nc");
	}

	@Test
	void umlautsInAFolderInThePosixLocale() throws IOException, InterruptedException {
		shell("mkdir 'L\u00f6cher'; : > 'L\u00f6cher/gro\u00df.nc'");
		assertThat(truelead("check 'L\u00f6cher' 2>&1")).contains("L\u00f6cher/gro\u00df.nc: empty file");
	}

	private String truelead(String arguments) throws IOException, InterruptedException {
		String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
		return shell("'" + java + "' -cp '" + System.getProperty("java.class.path") + "' truelead.audit.Main " + arguments);
	}

	private String shell(String script) throws IOException, InterruptedException {
		Path file = Files.write(folder.resolve("script"), (script + "\n").getBytes(StandardCharsets.UTF_8));
		ProcessBuilder builder = new ProcessBuilder(List.of("sh", file.toString())).directory(folder.toFile());
		builder.environment().put("LC_ALL", "C");
		Process process = builder.start();
		String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		process.waitFor();
		return out;
	}
}
