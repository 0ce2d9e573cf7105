package truelead.checker.hole;

import java.util.IdentityHashMap;
import java.util.Map;

/** Numbers for values that are shared by all that they hold for, so that the same one is known at a glance; of an edit's values those that are equal have one too. */
public final class Alike<T> {

	/** An operation has few of them. */
	private static final int FEW = 4;

	private final Map<T, Integer> numbers = new IdentityHashMap<>(FEW);
	private int count;
	private boolean edited;

	/** From now on a value that is equal to a known one has its number. */
	public void edited() {
		edited = true;
	}

	/** The number of a value. */
	public int of(T value) {
		Integer known = numbers.get(value);
		if (known == null) {
			known = edited ? equal(value) : count++;
			numbers.put(value, known);
		}
		return known;
	}

	private int equal(T value) {
		for (Map.Entry<T, Integer> known : numbers.entrySet()) {
			if (known.getKey().equals(value)) {
				return known.getValue();
			}
		}
		return count++;
	}
}
