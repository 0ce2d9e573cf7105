package truelead.checker.lesson;

import java.util.LinkedHashMap;
import java.util.Map;

/** Where the controls of a lesson stand. Immutable; every value is in its control's range. */
public final class Values {
	private final Lesson lesson;
	private final Map<String, Double> numbers;

	private Values(Lesson lesson, Map<String, Double> numbers) {
		this.lesson = lesson;
		this.numbers = numbers;
	}

	/** All controls where they stand at first. */
	public static Values usual(Lesson lesson) {
		Map<String, Double> numbers = new LinkedHashMap<>();
		lesson.controls().forEach(control -> numbers.put(control.name(), control.usual()));
		return new Values(lesson, numbers);
	}

	/**
	 * The same with one control moved, in its own unit, as far as it goes; nothing changes for a name that is none or a value that is no
	 * number.
	 */
	public Values with(String name, double value) {
		if (!numbers.containsKey(name) || Double.isNaN(value)) {
			return this;
		}
		Map<String, Double> moved = new LinkedHashMap<>(numbers);
		lesson.controls().stream().filter(control -> control.name().equals(name))
				.forEach(control -> moved.put(name, control.inRange(value)));
		return new Values(lesson, moved);
	}

	/** Where a control stands, in its own unit; a name that none has throws. */
	public double of(String name) {
		return numbers.get(name);
	}
}
