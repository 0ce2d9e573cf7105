package truelead.checker.hole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Numbers for values that are shared by all that they hold for, so that the same one is known at a glance; of an edit's values those that
 * are equal have one too.
 */
public final class Alike<T> {

	/** An operation has few of them, which are looked for one by one. */
	private static final int FEW = 8;

	private final List<T> few = new ArrayList<>(2);
	/** All values, where they are many. */
	private Map<T, Integer> many;
	/** The number of each of the few. */
	private int[] numbers = new int[2];
	/** The number of each content. */
	private final Map<Object, Integer> contents = new HashMap<>(2);
	private int count;
	private boolean edited;

	/** From now on a value that is equal to a known one has its number. */
	public void edited() {
		edited = true;
	}

	/** The number of a value. */
	public int of(T value) {
		int known = known(value);
		return known >= 0 ? known : keep(value, edited ? equal(value) : count++);
	}

	/** The number of a value that is like all of the same content. */
	public int of(T value, Function<T, Object> content) {
		int known = known(value);
		return known >= 0 ? known : keep(value, contents.computeIfAbsent(content.apply(value), fresh -> count++));
	}

	/** The number of a value that has been asked for; below 0 for another one. */
	private int known(T value) {
		for (int i = few.size() - 1; i >= 0; i--) {
			if (few.get(i) == value) {
				return numbers[i];
			}
		}
		return many == null ? -1 : many.getOrDefault(value, -1);
	}

	private int keep(T value, int number) {
		if (few.size() < FEW) {
			numbers = few.size() == numbers.length ? Arrays.copyOf(numbers, FEW) : numbers;
			numbers[few.size()] = number;
			few.add(value);
		} else {
			many = many == null ? new IdentityHashMap<>() : many;
			many.put(value, number);
		}
		return number;
	}

	private int equal(T value) {
		for (int i = 0; i < few.size(); i++) {
			if (few.get(i).equals(value)) {
				return numbers[i];
			}
		}
		for (Map.Entry<T, Integer> known : many == null ? Set.<Map.Entry<T, Integer>>of() : many.entrySet()) {
			if (known.getKey().equals(value)) {
				return known.getValue();
			}
		}
		return count++;
	}
}
