package truelead.checker.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import truelead.checker.CheckResult;
import truelead.checker.job.Fact;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * A program of a lesson with something to mend.
 *
 * @param lesson name of the lesson
 * @param number from 1
 * @param task   what to do, in one or two sentences
 */
public record Exercise(String lesson, int number, String task) {

	private static final List<Exercise> ALL = List.of(
			new Exercise("feed", 1, "The tap falls behind its thread. Give it the feed that S and the pitch ask for."),
			new Exercise("feed", 2, "Somebody wrote the pitch where the control reads mm a minute. Mend the value, or the mode."),
			new Exercise("feed", 3, "An inch program: 20 threads an inch at S350. Work out F in inches a minute."),
			new Exercise("depth", 1, "The tap meets the drill's cone. Give it the room it needs below, without a shorter thread."),
			new Exercise("depth", 2, "10 mm of full thread are called out and the tap goes 10 mm deep. What of its lead?"),
			new Exercise("depth", 3, "The drill leaves too much for the tap. Choose the right one, and say so where the program names it."),
			new Exercise("helix", 1, "Each turn rises 1.75 mm, the thread is M16x2. Mend all turns, in and out too."),
			new Exercise("helix", 2, "A diameter was taken for a radius. Mend the path of the centre."),
			new Exercise("helix", 3, "No screw goes into this thread. Mend its hand."),
			new Exercise("passes", 1, "One pass runs beside the groove of the others. Bring it back into it."),
			new Exercise("passes", 2, "The spindle does not turn alike in all passes. Give them one speed, in rev/min."),
			new Exercise("passes", 3, "The first pass breaks the point. Divide the depth so that the chips are alike."));

	/** The exercises of a lesson. */
	public static List<Exercise> of(String lesson) {
		return ALL.stream().filter(exercise -> exercise.lesson.equals(lesson)).toList();
	}

	/** An exercise by its number, from 1. */
	public static Optional<Exercise> of(String lesson, int number) {
		return of(lesson).stream().filter(exercise -> exercise.number == number).findFirst();
	}

	/** Name of its program's file. */
	public String file() {
		return lesson + "-" + number + ".nc";
	}

	/** The program to mend. */
	public String program() {
		try (InputStream in = Exercise.class.getResourceAsStream(file())) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}

	/**
	 * What is still to do in an answer: findings above information, accepted ones too, what could not be followed, and threads of the
	 * exercise that are no longer made. Empty when it is done.
	 *
	 * @param given  the check of {@link #program()}
	 * @param answer the check of the answer
	 */
	public static List<String> left(CheckResult given, CheckResult answer) {
		List<String> left = new ArrayList<>();
		for (Finding finding : answer.findings()) {
			if (finding.severity() != Severity.INFORMATION) {
				left.add("line " + (finding.at().line() + 1) + ": " + finding.rule() + ": " + finding.message()
						+ (finding.accepted().isPresent() ? " (accepting it is not mending it)" : ""));
			}
		}
		Map<String, Integer> made = threads(answer.work());
		threads(given.work()).forEach((thread, holes) -> {
			if (made.getOrDefault(thread, 0) < holes) {
				left.add(thread + " is wanted at " + holes + (holes == 1 ? " hole" : " holes") + ", the answer makes it at "
						+ made.getOrDefault(thread, 0));
			}
		});
		return left;
	}

	private static Map<String, Integer> threads(Work work) {
		Map<String, Integer> threads = new TreeMap<>();
		for (ThreadingOperation operation : work.operations()) {
			threads.merge(operation.wanted().thread().map(Fact::value).map(t -> t.designation()).orElse("a thread without a name"),
					operation.holes().size(), Integer::sum);
		}
		for (SinglePoint turned : work.course().singlePoints()) {
			threads.merge(turned.thread().map(Fact::value).map(t -> t.designation()).orElse("a turned thread without a name"), 1,
					Integer::sum);
		}
		return threads;
	}
}
