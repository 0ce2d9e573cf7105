package truelead.checker.pass;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;

/** The holes of passes that no others of their operation are at, in the order first reached, and which of the passes are at each. */
final class MilledHoles {

	/** Leads between the levels of two bites; the passes of one bite follow each other more closely (common practice, no source). */
	private static final double APART = 2.5;
	/** As many kinds of passes as are compared with each other at one hole. */
	private static final int MOST_KINDS = 1_000;
	/** How much less deep a pass cuts into the wall than the deepest, if it is for roughing, mm. */
	private static final double ROUGHING = 0.001;

	private final PassTable table;
	private final int count;
	private final boolean placed;
	/** The first pass of each hole; of each pass the next one at the same hole, -1 behind the last. */
	private final int[] first;
	private final int[] next;
	private List<int[]> finishing;
	private Map<List<Integer>, List<Integer>> byFinishing;

	MilledHoles(PassTable table) {
		this.table = table;
		int[] firsts = new int[table.size()];
		int[] last = new int[table.size()];
		next = new int[table.size()];
		Arrays.fill(next, -1);
		HoleOrder numbers = new HoleOrder(table.holes());
		int found = 0;
		for (int pass = 0; pass < table.size(); pass++) {
			int at = pass;
			int number = numbers.of(table.hole(pass), () -> table.place(at));
			if (number == found) {
				firsts[found++] = pass;
			} else {
				next[last[number]] = pass;
			}
			last[number] = pass;
		}
		count = found;
		first = Arrays.copyOf(firsts, found);
		placed = Arrays.stream(first).allMatch(pass -> table.hole(pass) >= 0);
	}

	int count() {
		return count;
	}

	/** A hole. */
	Hole hole(int hole) {
		return table.holeAt(first[hole]);
	}

	/** Whether each is at a place that is known. */
	boolean placed() {
		return placed;
	}

	/** Hands out the number of each hole in the program; below 0 for one at no known place. */
	void numbers(IntConsumer numbers) {
		for (int pass : first) {
			numbers.accept(table.hole(pass));
		}
	}

	/** Which of them a hole of the program is; below 0 for none of them. */
	int find(int number, Place place) {
		for (int hole = 0; hole < count; hole++) {
			if (number < 0 ? table.hole(first[hole]) < 0 && table.place(first[hole]).equals(place) : table.hole(first[hole]) == number) {
				return hole;
			}
		}
		return -1;
	}

	/** The first pass at each hole; all of them are where no hole has two. */
	Optional<int[]> firstPasses() {
		return count == table.size() ? Optional.empty() : Optional.of(first);
	}

	/** The passes at a hole, in order. */
	PassPart at(int hole) {
		return new PassPart(table, Optional.of(passes(hole)));
	}

	/**
	 * The passes of the largest radius at a hole, outside of the smallest, at each of its levels; a radius that no number holds is neither
	 * larger nor smaller than another.
	 */
	PassPart finishing(int hole) {
		return new PassPart(table, Optional.of(finishing().get(hole)));
	}

	/** All finishing passes; all passes are where none is for roughing. */
	Optional<int[]> allFinishing() {
		if (count == table.size()) {
			return Optional.empty();
		}
		int[] passes = finishing().stream().flatMapToInt(Arrays::stream).sorted().toArray();
		return passes.length == table.size() ? Optional.empty() : Optional.of(passes);
	}

	/**
	 * The holes of each kind, in the order of their first ones: at those of a kind the finishing passes are of the same kinds, by whose
	 * keys it is told.
	 */
	synchronized Map<List<Integer>, List<Integer>> byFinishing() {
		if (byFinishing == null) {
			byFinishing = new LinkedHashMap<>();
			for (int hole = 0; hole < count; hole++) {
				List<Integer> kind = new ArrayList<>(1);
				for (int pass : finishing().get(hole)) {
					kind.add(table.key(table.kind(pass)));
				}
				byFinishing.computeIfAbsent(kind, fresh -> new ArrayList<>()).add(hole);
			}
		}
		return byFinishing;
	}

	/** The first hole where no pass is for roughing. */
	Optional<Integer> cutAtOnce() {
		for (int hole = 0; hole < count; hole++) {
			if (passes(hole).length == finishing().get(hole).length) {
				return Optional.of(hole);
			}
		}
		return Optional.empty();
	}

	private synchronized List<int[]> finishing() {
		if (finishing == null) {
			finishing = new ArrayList<>(count);
			for (int hole = 0; hole < count; hole++) {
				finishing.add(finishing(passes(hole)));
			}
		}
		return finishing;
	}

	private int[] finishing(int[] here) {
		if (here.length < 2) {
			return here;
		}
		int[] kinds = Arrays.stream(here).map(table::kind).distinct().limit(MOST_KINDS).toArray();
		int[] widest = Arrays.stream(here).filter(pass -> Arrays.stream(kinds).noneMatch(other -> roughing(table.kind(pass), other)))
				.toArray();
		return widest.length == 0 ? here : widest;
	}

	private boolean roughing(int kind, int other) {
		MillPass pass = table.typical(kind);
		MillPass deepest = table.typical(other);
		double deeper = pass.external() ? pass.radius() - deepest.radius() : deepest.radius() - pass.radius();
		if (flat(pass) != flat(deepest)) {
			// a circle beside a helix breaks the edge or smooths the floor, and cuts no thread
			return flat(pass) && Math.abs(deeper) >= ROUGHING;
		}
		return deeper >= ROUGHING && (flat(pass) || !apart(pass, deepest));
	}

	private static boolean flat(MillPass pass) {
		return Math.abs(pass.advance()) < ROUGHING;
	}

	/**
	 * Whether two passes lie so far from each other along the axis that neither is for roughing the other: two bites of a cutter with many
	 * teeth.
	 */
	private static boolean apart(MillPass here, MillPass there) {
		double gap = Math.max(Math.min(here.startLevel(), here.endLevel()) - Math.max(there.startLevel(), there.endLevel()),
				Math.min(there.startLevel(), there.endLevel()) - Math.max(here.startLevel(), here.endLevel()));
		return gap > APART * Math.abs(here.lead());
	}

	private int[] passes(int hole) {
		int length = 0;
		for (int pass = first[hole]; pass >= 0; pass = next[pass]) {
			length++;
		}
		int[] passes = new int[length];
		int at = 0;
		for (int pass = first[hole]; pass >= 0; pass = next[pass]) {
			passes[at++] = pass;
		}
		return passes;
	}
}
