package truelead.audit.lesson;

import truelead.checker.lesson.Control;
import truelead.checker.lesson.Filled;
import truelead.checker.lesson.Outcome;
import truelead.checker.lesson.Reading;

/** Writes a lesson for people without a browser: its numbers by their names, what happens, what it rests on. */
final class LessonText {
	private static final int COLUMN = 58;

	private LessonText() {
	}

	static String write(Filled filled) {
		StringBuilder text = new StringBuilder();
		Outcome outcome = filled.lesson().outcome(filled.values());
		text.append(filled.lesson().title()).append('\n').append(filled.about().isEmpty() ? "" : "numbers of " + filled.about() + "\n")
				.append('\n');
		for (Control control : filled.lesson().controls()) {
			double value = filled.values().of(control.name());
			line(text, control.name() + ": " + control.label(), control.choices().isEmpty() ? (LessonPage.plain(value) + " "
					+ control.unit()).strip() : control.choices().get((int) value));
		}
		text.append('\n');
		filled.lesson().said(outcome).forEach(sentence -> text.append(sentence).append('\n'));
		text.append('\n');
		for (Reading reading : filled.lesson().readings()) {
			line(text, reading.label(), reading.said(outcome.number(reading.name())));
		}
		text.append("\nIt rests on:\n");
		filled.lesson().grounds().forEach(ground -> text.append("  ").append(ground).append('\n'));
		return text.toString();
	}

	private static void line(StringBuilder text, String label, String value) {
		text.append("  ").append(label).append(" ".repeat(Math.max(1, COLUMN - label.length()))).append(value).append('\n');
	}
}
