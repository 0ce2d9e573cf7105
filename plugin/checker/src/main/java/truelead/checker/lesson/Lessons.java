package truelead.checker.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;

/** The lessons there are, and which of them tells more about a rule. */
public final class Lessons {

	/** Every lesson. */
	public static final List<Lesson> ALL = List.of(new FeedLesson(), new DepthLesson(), new HelixLesson(),
			new PassesLesson());

	private static final Set<String> FEED = Set.of("feed-off-pitch", "feed-in-wrong-mode", "inch-metric-mixup", "start-too-close");
	private static final Set<String> DEPTH = Set.of("drill-too-shallow", "thread-too-short", "drill-too-small", "drill-too-big",
			"torque-high");
	private static final Set<String> HELIX = Set.of("helix-off-pitch", "helix-off-size", "helix-wrong-hand", "helix-uneven",
			"entry-off-pitch", "edge-feed-high", "cutter-too-big");
	private static final Set<String> PASSES = Set.of("speed-changed", "passes-too-heavy");
	/** What is found of threads in holes and of turned ones, and is about passes at the latter. */
	private static final Set<String> OF_TURNED = Set.of("feed-off-pitch", "feed-in-wrong-mode", "inch-metric-mixup", "start-too-close",
			"helix-uneven");

	private Lessons() {
	}

	/** A lesson by its name. */
	public static Optional<Lesson> named(String name) {
		return ALL.stream().filter(lesson -> lesson.name().equals(name)).findFirst();
	}

	/** The lesson that tells more about a rule. */
	public static Optional<Lesson> ofRule(String rule) {
		return named(FEED.contains(rule) ? "feed" : DEPTH.contains(rule) ? "depth" : HELIX.contains(rule) ? "helix"
				: PASSES.contains(rule) ? "passes" : "");
	}

	/** The lesson that tells more about what a rule finds at a thread; empty where none does, or it is about no thread. */
	public static Optional<Lesson> of(String rule, Optional<ThreadSheet> thread) {
		return thread.flatMap(sheet -> sheet instanceof OperationSheet made ? ofRule(rule).filter(lesson -> fits(lesson, made.operation()))
				: named(PASSES.contains(rule) || OF_TURNED.contains(rule) ? "passes" : ""));
	}

	/** Whether a lesson is one of how an operation makes its threads. */
	static boolean fits(Lesson lesson, ThreadingOperation operation) {
		return !lesson.name().equals("passes") && lesson.name().equals("helix") == operation instanceof ThreadMilling;
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
