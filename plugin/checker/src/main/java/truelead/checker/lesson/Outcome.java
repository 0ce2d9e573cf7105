package truelead.checker.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What comes of a lesson's values: numbers and tracks by name, and which of the lesson's sentences hold. */
public final class Outcome {
	private final Map<String, Double> numbers = new LinkedHashMap<>();
	private final Map<String, Track> tracks = new LinkedHashMap<>();
	private final List<Integer> says = new ArrayList<>();

	Outcome() {
	}

	void put(String name, double value) {
		numbers.put(name, value);
	}

	void put(String name, Track track) {
		tracks.put(name, track);
	}

	void say(int sentence) {
		says.add(sentence);
	}

	/** A number in the unit of its {@link Reading}; NaN where there is none of that name. */
	public double number(String name) {
		return numbers.getOrDefault(name, Double.NaN);
	}

	/** All numbers by name, each in the unit of its {@link Reading}. */
	public Map<String, Double> numbers() {
		return Collections.unmodifiableMap(numbers);
	}

	/** All tracks by the names of the curves. */
	public Map<String, Track> tracks() {
		return Collections.unmodifiableMap(tracks);
	}

	/** Numbers of the sentences that hold, in the order they are said. */
	public List<Integer> says() {
		return List.copyOf(says);
	}
}
