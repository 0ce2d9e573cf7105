package truelead.checker.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The lessons there are, and which of them tells more about a rule. */
public final class Lessons {

	/** Every lesson. */
	public static final List<Lesson> ALL = List.of(new FeedLesson(), new DepthLesson(), new HelixLesson());

	private static final Set<String> FEED = Set.of("feed-off-pitch", "feed-in-wrong-mode", "inch-metric-mixup", "start-too-close");
	private static final Set<String> DEPTH = Set.of("drill-too-shallow", "thread-too-short", "drill-too-small", "drill-too-big",
			"torque-high");
	private static final Set<String> HELIX = Set.of("helix-off-pitch", "helix-off-size", "helix-wrong-hand", "helix-uneven",
			"entry-off-pitch", "edge-feed-high", "cutter-too-big");

	private Lessons() {
	}

	/** A lesson by its name. */
	public static Optional<Lesson> named(String name) {
		return ALL.stream().filter(lesson -> lesson.name().equals(name)).findFirst();
	}

	/** The lesson that tells more about a rule. */
	public static Optional<Lesson> ofRule(String rule) {
		return named(FEED.contains(rule) ? "feed" : DEPTH.contains(rule) ? "depth" : HELIX.contains(rule) ? "helix" : "");
	}

	/** The models as a script: an object {@code truelead} with a function a lesson. */
	public static String script() {
		try (InputStream in = Lessons.class.getResourceAsStream("lesson-model.js")) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}
}
