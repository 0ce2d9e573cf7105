package truelead.checker.pass;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import truelead.checker.hole.Place;

/** Some of the passes of a table, or all of them. */
final class PassPart {

	private final PassTable table;
	/** Those that it has; empty for all. */
	private final Optional<int[]> chosen;
	private volatile Kinds kinds;

	/** The kinds there are, in the order of their first passes, with these, and how many passes are of each. */
	private record Kinds(int[] numbers, int[] firsts, int[] counts) {
	}

	/** @param chosen in order; empty for all passes of the table */
	PassPart(PassTable table, Optional<int[]> chosen) {
		this.table = table;
		this.chosen = chosen;
	}

	int size() {
		return chosen.map(some -> some.length).orElse(table.size());
	}

	/** One of them, from 0. */
	MillPass get(int index) {
		return table.made(pass(index));
	}

	private int pass(int index) {
		return chosen.isPresent() ? chosen.get()[index] : index;
	}

	/** Whether the hole of one of them is at a place. */
	boolean at(Place place) {
		boolean found = false;
		for (int i = 0; i < size() && !found && (i > 0 || !table.isBeside(place)); i++) {
			found = table.isAt(pass(i), place);
		}
		return found;
	}

	/** Passes that stand by themselves, and the first and the last of those that come again; of all in the table. */
	List<MillPass> outermost() {
		return table.outermost();
	}

	/** The number that tells a kind among all of the operation. */
	int key(int kind) {
		return table.key(kinds().numbers[kind]);
	}

	/** The first pass of a kind. */
	MillPass typical(int kind) {
		return table.made(kinds().firsts[kind]);
	}

	/** How many passes are of each kind, in the order of the first passes of the kinds; not to be changed. */
	int[] counts() {
		return kinds().counts;
	}

	/** Those of the kinds that are as wanted; empty where there are none. */
	Optional<PassPart> ofKinds(IntPredicate wanted) {
		boolean[] kindIs = new boolean[table.kindCount()];
		int found = 0;
		Kinds known = kinds();
		for (int kind = 0; kind < known.counts.length; kind++) {
			if (wanted.test(kind)) {
				kindIs[known.numbers[kind]] = true;
				found += known.counts[kind];
			}
		}
		if (found == 0) {
			return Optional.empty();
		}
		if (found == size()) {
			return Optional.of(this);
		}
		int[] some = new int[found];
		int at = 0;
		for (int i = 0; at < found; i++) {
			if (kindIs[table.kind(pass(i))]) {
				some[at++] = pass(i);
			}
		}
		return Optional.of(new PassPart(table, Optional.of(some)));
	}

	private Kinds kinds() {
		Kinds known = kinds;
		return known != null ? known : sortOnce();
	}

	private synchronized Kinds sortOnce() {
		if (kinds == null) {
			kinds = sorted();
		}
		return kinds;
	}

	private Kinds sorted() {
		int[] counts = new int[table.kindCount()];
		List<Integer> numbers = new ArrayList<>();
		int[] firsts = new int[counts.length];
		for (int i = 0; i < size(); i++) {
			int kind = table.kind(pass(i));
			if (counts[kind]++ == 0) {
				firsts[numbers.size()] = pass(i);
				numbers.add(kind);
			}
		}
		int[] present = numbers.stream().mapToInt(Integer::intValue).toArray();
		return new Kinds(present, Arrays.copyOf(firsts, present.length), Arrays.stream(present).map(kind -> counts[kind]).toArray());
	}
}
