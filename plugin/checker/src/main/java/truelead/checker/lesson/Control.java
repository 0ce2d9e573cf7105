package truelead.checker.lesson;

import java.util.List;

/**
 * One number of a lesson that a person can move.
 *
 * @param name    as the models know it
 * @param label   as a person reads it
 * @param unit    of the number; empty for a count or a choice
 * @param least   smallest value, in that unit
 * @param most    largest value, in that unit
 * @param step    of a slider, in that unit; finer values may be typed
 * @param usual   where it stands at first, in that unit
 * @param choices names of the values 0, 1, 2...; empty for a plain number
 */
public record Control(String name, String label, String unit, double least, double most, double step, double usual, List<String> choices) {

	public Control {
		choices = List.copyOf(choices);
	}

	static Control number(String name, String label, String unit, double least, double most, double step, double usual) {
		return new Control(name, label, unit, least, most, step, usual, List.of());
	}

	static Control choice(String name, String label, int usual, String... choices) {
		return new Control(name, label, "", 0, choices.length - 1.0, 1, usual, List.of(choices));
	}

	/** The nearest value in range, in its own unit; a choice is rounded; what is no number becomes the usual value. */
	public double inRange(double value) {
		double kept = Double.isNaN(value) ? usual : Math.max(least, Math.min(most, value));
		return choices.isEmpty() ? kept : Math.rint(kept);
	}
}
