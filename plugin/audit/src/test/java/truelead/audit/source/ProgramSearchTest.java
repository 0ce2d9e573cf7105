package truelead.audit.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramSearchTest {

	@TempDir
	Path folder;

	@BeforeEach
	void aShopsFolder() throws IOException {
		for (String name : List.of("plate.nc", "PLATE2.NC", "jobs/flange.tap", "jobs/old/flange.mpf", "notes.txt", "picture.png",
				".hidden.nc", ".git/x.nc")) {
			Path file = folder.resolve(name);
			Files.createDirectories(file.getParent());
			Files.writeString(file, "M30\n");
		}
	}

	@Test
	void takesProgramsByTheirExtensionInOrder() {
		assertThat(search(NamePatterns.NONE)).containsExactly("PLATE2.NC", "jobs/flange.tap", "jobs/old/flange.mpf", "plate.nc");
	}

	@Test
	void takesATextThatBeginsLikeAProgram() throws IOException {
		Files.writeString(folder.resolve("plate.txt"), "%\nO0012 (PLATE)\n(T1 DRILL 5.0)\nG21 G90\nT1 M6\nG0 X0 Y0\nM30\n%\n");
		Files.writeString(folder.resolve("tools.TXT"), "T1 DRILL 5.0\nT2 M6X1 TAP\nT3 SPOT DRILL\nG54 at the left corner\n");
		Files.writeString(folder.resolve("letter.txt"),
				"G84 taps with T2.\nPlease look at G84 before the run.\nX10 Y20 is the first hole.\n");
		assertThat(search(NamePatterns.NONE)).containsExactly("PLATE2.NC", "jobs/flange.tap", "jobs/old/flange.mpf",
				"plate.nc", "plate.txt");
	}

	@Test
	void anIncludePatternDecidesAlone() {
		assertThat(search(new NamePatterns(List.of("*.txt"), List.of()))).containsExactly("notes.txt");
		assertThat(search(new NamePatterns(List.of("jobs/**"), List.of()))).containsExactly("jobs/flange.tap", "jobs/old/flange.mpf");
	}

	@Test
	void anExcludePatternTakesFilesAndFoldersOut() {
		assertThat(search(new NamePatterns(List.of(), List.of("old", "PLATE?.nc")))).containsExactly("jobs/flange.tap", "plate.nc");
		assertThat(search(new NamePatterns(List.of(), List.of("**/*.mpf")))).doesNotContain("jobs/old/flange.mpf");
	}

	@Test
	void doesNotFollowLinksOutOfTheFolder(@TempDir Path elsewhere) throws IOException {
		Files.writeString(elsewhere.resolve("other.nc"), "M30\n");
		Files.createSymbolicLink(folder.resolve("way-out"), elsewhere);
		Files.createSymbolicLink(folder.resolve("other.nc"), elsewhere.resolve("other.nc"));
		assertThat(search(NamePatterns.NONE)).doesNotContain("way-out/other.nc", "other.nc");
	}

	@Test
	void aPatternCanMatchFoldersInTheMiddle() {
		assertThat(NamePatterns.matches("a/**/z.nc", "a/z.nc")).isTrue();
		assertThat(NamePatterns.matches("a/**/z.nc", "a/b/c/z.nc")).isTrue();
		assertThat(NamePatterns.matches("a/*/z.nc", "a/b/c/z.nc")).isFalse();
		assertThat(NamePatterns.matches("**/z.nc", "z.nc")).isTrue();
		assertThat(NamePatterns.matches("**/z.nc", "a/fuzz.nc")).isFalse();
		assertThat(NamePatterns.matches("a/**", "a/b/c")).isTrue();
		assertThat(NamePatterns.matches("a?b", "a/b")).isFalse();
		assertThat(NamePatterns.matches("*".repeat(60) + "a", "b".repeat(60))).as("stars take no time").isFalse();
		assertThat(NamePatterns.matches("*a".repeat(60), "a".repeat(59) + "b")).as("stars take no time").isFalse();
		assertThat(NamePatterns.matches("O?.nc", "deep/down/o1.NC")).isTrue();
	}

	private List<String> search(NamePatterns patterns) {
		List<String> troubles = new ArrayList<>();
		List<Source> found = new ProgramSearch(patterns, (shown, why) -> troubles.add(shown + why)).search(folder, ".");
		assertThat(troubles).isEmpty();
		return found.stream().map(Source::shown).toList();
	}
}
