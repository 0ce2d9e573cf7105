package truelead.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What of the world outside may be seen from where. */
class OutsideWorldTest {

	@Test
	void theCheckerIsAFunction() {
		Pattern world = Pattern.compile("java\\.io\\.File\\b|java\\.nio\\.file|java\\.net\\.|java\\.time\\.|java\\.awt|javax\\.swing"
				+ "|System\\.(currentTimeMillis|nanoTime|getProperty|getenv|out|err|exit)"
				+ "|Thread\\.(sleep|currentThread|ofVirtual)|new Thread\\(|\\bExecutors?\\b|ForkJoin|CompletableFuture"
				+ "|\\.parallel(Stream)?\\(|Math\\.random|new Random\\(\\)");
		// of the text of each chunk alone, whichever is read first
		String facts = "plugin/checker/src/main/java/truelead/checker/chunk/ChunkFacts.java";
		assertThat(places(world, "grammar/", "plugin/checker/")).filteredOn(place -> !place.startsWith(facts))
				.as("same program, same findings: no clock, file, screen or thread in grammar and checker; let the caller hand in what "
						+ "it has read").isEmpty();
	}

	@Test
	void onlyGrammarsReadProgramText() {
		String lessons = "plugin/checker/src/main/java/truelead/checker/lesson/"; // which put numbers into sentences of their own
		assertThat(places(Pattern.compile("java\\.util\\.regex|\\.replaceAll\\(\"|\\.matches\\(\""), "grammar/", "plugin/checker/"))
				.filteredOn(place -> !place.startsWith(lessons))
				.as("program text and comments are read by the grammars alone, without regular expressions").isEmpty();
	}

	@Test
	void testsNeedNoClock() {
		Pattern clock = Pattern.compile("System\\.(nanoTime|currentTimeMillis)|Thread\\.sleep|assertTimeout|@Timeout");
		assertThat(House.JAVA.stream().filter(source -> source.path().contains("/src/test/"))
				.flatMap(source -> source.places(clock).stream()))
				.as("timings belong into benchmarks (tests/speed): a test that depends on them fails on a busy machine").isEmpty();
	}

	@Test
	void noFileNamesTheMachineItWasWrittenOn() {
		Pattern here = Pattern.compile("(?<![\\w.$}/])/(work|home|root|Users)/[A-Za-z]|[A-Z]:\\\\Users\\\\"
				+ "|://(repo|registry|mirror|proxy)\\d*\\.");
		List<String> ours = House.files().stream().filter(file -> !file.endsWith(".png") && !file.endsWith(".gif")
				&& !file.endsWith(".ico")).filter(file -> here.matcher(House.text(file)).find()).toList();
		assertThat(ours).as("a path of one machine, or the address of a package registry, is of no use on another").isEmpty();
	}

	private static List<String> places(Pattern pattern, String... folders) {
		return House.shipped().stream().filter(source -> source.in(folders)).flatMap(source -> source.places(pattern).stream()).toList();
	}
}
