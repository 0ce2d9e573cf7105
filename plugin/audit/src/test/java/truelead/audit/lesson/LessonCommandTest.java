package truelead.audit.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.audit.Recorded;

class LessonCommandTest {

	@TempDir
	private Path folder;

	@ParameterizedTest
	@ValueSource(strings = {"feed", "depth", "helix", "passes"})
	void aPageNeedsNothingBesideItAndSaysItWithoutScripts(String name) {
		String page = Recorded.run("lesson", name).out();

		assertThat(page).doesNotContain("http://", "https://", " src=", "href=")
				.contains("<noscript>", "<li>", "<svg", "type=\"range\"", "can hurt");
		assertThat(page.split("role=\"img\" aria-label=", -1)).hasSizeGreaterThan(2);
	}

	@Test
	void theNumbersOfAFindingStandOnItsLesson() throws IOException {
		Path program = program("G21 G90 G94", "(M6X1 TAP)", "T3 M6", "G0 X0 Y0 S520 M3", "G43 Z25. H3", "G84 Z-14.5 R5. F500",
				"G80", "M30");

		Recorded text = Recorded.run("lesson", "--from", program + ":6", "--report", "text");

		assertThat(text.status()).isZero();
		assertThat(text.out()).contains("numbers of part.nc:6 M6x1, feed-off-pitch: F500 at S520", "520 rev/min", "14.5 mm",
				"-0.0385 mm a turn, -0.558 mm after 14.5 turns");
	}

	@Test
	void anInchProgramIsShownInMillimetres() throws IOException {
		Path program = program("G20 G90 G94", "(1/4-20 TAP)", "T3 M6", "G0 X0 Y0 S350 M3", "G43 Z1. H3", "G84 Z-.5 R.2 F17.1",
				"G80", "M30");

		assertThat(Recorded.run("lesson", "feed", "--from", program + ":6", "--report", "text").out())
				.contains("1.27 mm", "434.34 mm/min", "12.7 mm", "6.35 mm");
	}

	@ParameterizedTest
	@ValueSource(ints = {1, 2, 3, 4, 5, 6, 7})
	void anyLineLeadsToTheNearestThread(int line) throws IOException {
		Path program = program("G21 G90 G94", "(M6X1 TAP)", "T3 M6", "G0 X0 Y0 S520 M3", "G84 Z-14.5 R5. F500", "G80", "M30");

		assertThat(Recorded.run("lesson", "--from", program + ":" + line, "--report", "text").out()).contains("numbers of part.nc:5 M6x1");
	}

	@Test
	void aThreadTurnedOnALatheHasTheLessonOfPasses() throws IOException {
		Path shaft = program("G21 G99", "T0303 (M20X1.5)", "G97 S600 M3", "G0 X24. Z6.", "G92 X19.3 Z-27. F1.5", "X18.16", "M30");

		assertThat(Recorded.run("lesson", "--from", shaft + ":5", "--report", "text").out())
				.contains("A thread turned in passes", "numbers of part.nc:5 M20x1.5", "on a bolt", "The last pass runs in the groove");
		assertThat(Recorded.run("lesson", "feed", "--from", shaft + ":5").err()).contains("it is turned");
		assertThat(Recorded.run("plan", "--from", shaft + ":5").err())
				.contains("the threads of this program are cut by a single point, and plans are of those that are tapped or milled");
	}

	@Test
	void aLineThatIsNoneAndAProgramWithoutThreadsAreSaid() throws IOException {
		Path program = program("G21 G90 G94", "G1 X5. F100", "M30");

		assertThat(Recorded.run("lesson", "--from", program + ":1").err()).contains("no thread is made in this program");
		program = program("G21 G90 G94", "G1 X5. F100", "M30");
		assertThat(Recorded.run("lesson", "--from", program + ":99").err()).contains("the program has 4 lines");
		assertThat(Recorded.run("lesson", "helix", "--from", program("G21", "(M6X1 TAP)", "T3 M6", "S520 M3", "G84 X0 Y0 Z-14.5 R5. F520",
				"M30") + ":5").err()).contains("it is tapped");
	}

	@ParameterizedTest
	@CsvSource({"pitch=0, a number from 0.2 to 8 mm", "pitch=1e9, a number from", "pich=1, no such number",
			"holder=loose, or one of: rigid", "feed=NaN, a number from"})
	void aNumberThatCannotBeIsNamed(String setting, String complaint) {
		Recorded refused = Recorded.run("lesson", "feed", "--set", setting);

		assertThat(refused.status()).isEqualTo(2);
		assertThat(refused.err()).contains(complaint);
	}

	@ParameterizedTest
	@CsvSource({"feed, 1, F500, F520", "feed, 2, F1.25, F500.", "feed, 3, F17.1, F17.5", "depth, 1, Z-15., Z-19.",
			"depth, 2, Z-10., Z-12.5", "depth, 3, DRILL 6.4, DRILL 6.8", "helix, 1, 1.75, 2", "helix, 2, 6.02, 3.01", "helix, 3, G3, G3"})
	void anExerciseIsDoneWhenNothingIsLeftToFind(String lesson, String number, String wrong, String right) throws IOException {
		String given = Recorded.run("lesson", lesson, "--exercise", number).out();
		Path answer = folder.resolve("answer.nc");
		Files.writeString(answer, given);
		Recorded before = Recorded.run("lesson", lesson, "--exercise", number, "--check", answer);
		Files.writeString(answer, mended(lesson + number, given.replace(wrong, right)));
		Recorded after = Recorded.run("lesson", lesson, "--exercise", number, "--check", answer);

		assertThat(before.status()).isEqualTo(1);
		assertThat(before.out()).startsWith("Not yet.");
		assertThat(after.out()).startsWith("Done");
		assertThat(after.status()).isZero();
	}

	/** What one word for another does not mend: ends of arcs that follow from the radius, and the sense of all arcs. */
	private static String mended(String exercise, String program) {
		return switch (exercise) {
			case "helix1" -> rising(program, 2);
			case "helix2" -> program.replace("X56.02", "X53.01").replace("I6.02", "I3.01").replace("I3.01 J0. F", "I1.505 J0. F")
					.replace("X50. Y40. Z2.5 I-3.01", "X50. Y40. Z2.5 I-1.505");
			case "helix3" -> program.replace("G2 ", "G3 ");
			default -> program;
		};
	}

	/** The same arcs with another rise in a turn; the first and the last are a quarter turn about the hole. */
	private static String rising(String program, double rise) {
		StringBuilder out = new StringBuilder();
		double level = -22.5;
		for (String line : program.lines().toList()) {
			if (line.startsWith("G3 ")) {
				level += line.contains("1.505") ? rise / 4 : rise;
				out.append(line.replaceAll("Z\\S+", "Z" + level)).append('\n');
			} else {
				out.append(line).append('\n');
			}
		}
		return out.toString();
	}

	@Test
	void leavingTheThreadOutOrAcceptingTheFindingIsNoAnswer() throws IOException {
		String given = Recorded.run("lesson", "feed", "--exercise", "1").out();
		Path answer = folder.resolve("answer.nc");
		Files.writeString(answer, given.lines().filter(line -> !line.contains("G84")).reduce("", (a, b) -> a + b + "\n"));
		Recorded without = Recorded.run("lesson", "feed", "--exercise", "1", "--check", answer);
		Files.writeString(answer, given.replace("T3 M6", "(ALLOW: feed-off-pitch, WHY NOT)\nT3 M6"));
		Recorded accepted = Recorded.run("lesson", "feed", "--exercise", "1", "--check", answer);

		assertThat(without.status()).isEqualTo(1);
		assertThat(without.out()).contains("M6x1-6H is wanted at 2 holes");
		assertThat(accepted.status()).isEqualTo(1);
		assertThat(accepted.out()).contains("accepting it is not mending it");
	}

	private Path program(String... blocks) throws IOException {
		return Files.writeString(folder.resolve("part.nc"), String.join("\n", blocks) + "\n");
	}
}
