package truelead.editor.guide;

import java.util.Optional;
import truelead.checker.lesson.Lessons;
import truelead.editor.lesson.LessonView;
import truelead.help.HelpPage;

/**
 * What the guide is opened with.
 *
 * @param finding message of the finding that led there; empty where none did
 * @param why     the way to the lesson that tells more about it
 */
public record Reading(HelpPage page, String finding, Optional<Why> why) {

	/**
	 * A way to a lesson.
	 *
	 * @param words what stands on it
	 */
	public record Why(String words, Runnable show) {

		/** The lesson of a rule with usual numbers; empty where no lesson tells more about it. */
		static Optional<Why> usual(String rule) {
			return Lessons.ofRule(rule).map(lesson -> new Why("Show me why: " + lesson.title(), () -> LessonView.show(lesson)));
		}
	}
}
