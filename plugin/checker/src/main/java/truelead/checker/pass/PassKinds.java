package truelead.checker.pass;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import truelead.checker.hole.Holes;
import truelead.checker.hole.PairNumbers;
import truelead.checker.hole.Place;

/** The kinds of the passes of a table: those of one kind differ in place, block and time alone, and so do the cuts at their holes. */
final class PassKinds {

	/** The key of a kind that nobody has asked for. */
	private static final int NOT_YET = 0;

	private final PassTable table;
	private final Holes holes;
	private final PassShapes shapes;
	private final int[] of;
	private int count;
	private int[] firsts = new int[2];
	private int[] keys = new int[2];
	private MillPass[] typical = new MillPass[2];

	/** @param shapes those of the operation; used by who holds the monitor of {@link Holes#pairs} alone */
	PassKinds(PassTable table, Holes holes, PassShapes shapes) {
		this.table = table;
		this.holes = holes;
		this.shapes = shapes;
		this.of = new int[table.size()];
		if (of.length == 1) {
			add(0, NOT_YET);
			return;
		}
		synchronized (holes.pairs()) {
			sort(holes.pairs());
		}
	}

	private void sort(PairNumbers pairs) {
		Map<Integer, Integer> numbers = new HashMap<>();
		int last = NOT_YET;
		int at = 0;
		for (PassRow row : table.rows()) {
			for (int i = 0; i < row.count(); i++, at++) {
				int key = key(row, i, at, pairs);
				if (key == last) {
					of[at] = of[at - 1];
					continue;
				}
				Integer known = numbers.putIfAbsent(key, count);
				of[at] = known == null ? count : known;
				if (known == null) {
					add(at, key);
				}
				last = key;
			}
		}
	}

	private int key(PassRow row, int index, int at, PairNumbers pairs) {
		if (table.hole(at) < 0) {
			return shapes.another();
		}
		Place place = row.place(index);
		return pairs.of(row.shape(index, shapes), pairs.of(holes.history(table.hole(at), row.order(index)),
				shapes.offset(holes.u(table.hole(at)) - place.u(), holes.v(table.hole(at)) - place.v())));
	}

	private void add(int at, int key) {
		if (count == firsts.length) {
			firsts = Arrays.copyOf(firsts, count * 2);
			keys = Arrays.copyOf(keys, count * 2);
			typical = Arrays.copyOf(typical, count * 2);
		}
		firsts[count] = at;
		keys[count++] = key;
	}

	/** The kind of a pass. */
	int of(int index) {
		return of[index];
	}

	/** How many there are. */
	int count() {
		return count;
	}

	/** The first pass of a kind. */
	int first(int kind) {
		return firsts[kind];
	}

	/**
	 * The number that tells a kind. A pass by itself has it when somebody asks for it: most operations of one pass are compared with
	 * nothing.
	 */
	int key(int kind) {
		if (keys[kind] == NOT_YET) {
			synchronized (holes.pairs()) {
				keys[kind] = key(table.rows().get(0), 0, 0, holes.pairs());
			}
		}
		return keys[kind];
	}

	/** The first pass of a kind, made once. */
	MillPass typical(int kind) {
		if (typical[kind] == null) {
			typical[kind] = table.pass(firsts[kind]);
		}
		return typical[kind];
	}
}
