package truelead.checker.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import truelead.checker.hole.Hole;

/** The holes of a thread milling operation in the order first reached, and which of its passes are at each. */
final class MilledHoles {

	/** Leads between the levels of two bites; the passes of one bite follow each other more closely (common practice, no source). */
	private static final double APART = 2.5;
	/** As many kinds of passes as are compared with each other at one hole. */
	private static final int MOST_KINDS = 1_000;
	/** How much smaller in radius a pass is than the widest, if it is for roughing, mm. */
	private static final double ROUGHING = 0.001;

	private final PassTable table;
	private final MillPasses all;
	private final int count;
	/** The first pass of each hole; of each pass the next one at the same hole, -1 behind the last. */
	private final int[] first;
	private final int[] next;
	private final Map<Object, Integer> numbers = new HashMap<>();
	private List<int[]> finishing;

	/** @param all the passes of the table */
	MilledHoles(PassTable table, MillPasses all) {
		this.table = table;
		this.all = all;
		int[] firsts = new int[table.size()];
		int[] last = new int[table.size()];
		next = new int[table.size()];
		Arrays.fill(next, -1);
		int found = 0;
		for (int pass = 0; pass < table.size(); pass++) {
			Integer known = numbers.putIfAbsent(key(pass), found);
			if (known == null) {
				firsts[found] = pass;
				last[found++] = pass;
			} else {
				next[last[known]] = pass;
				last[known] = pass;
			}
		}
		count = found;
		first = Arrays.copyOf(firsts, found);
	}

	private Object key(int pass) {
		return table.hole(pass) < 0 ? table.place(pass) : (Object) table.hole(pass);
	}

	int count() {
		return count;
	}

	/** The holes. */
	List<Hole> holes() {
		boolean known = Arrays.stream(first).allMatch(pass -> table.hole(pass) >= 0);
		return known ? table.holes().holes(Arrays.stream(first).map(table::hole).toArray()) : Arrays.stream(first).mapToObj(pass -> table.pass(pass).hole()).toList();
	}

	/** Hands out the number of each hole; below 0 for one at no known place. */
	void numbers(IntConsumer numbers) {
		for (int pass : first) {
			numbers.accept(table.hole(pass));
		}
	}

	/** Marks the numbers of the holes. */
	void mark(BitSet threaded) {
		for (int pass : first) {
			if (table.hole(pass) >= 0) {
				threaded.set(table.hole(pass));
			}
		}
	}

	/** The number of a hole among them; empty where it is none of them. */
	Optional<Integer> number(Hole hole) {
		int known = table.holes().at(hole.place(), 0);
		return Optional.ofNullable(numbers.get(known < 0 ? hole.place() : (Object) known));
	}

	/** The first pass at each hole. */
	MillPasses firstPasses() {
		return count == all.size() ? all : new MillPasses(table, first);
	}

	/** The passes at a hole, in order. */
	MillPasses at(int hole) {
		return new MillPasses(table, passes(hole));
	}

	/** The passes of the largest radius at a hole, at each of its levels; a radius that no number holds is neither larger nor smaller than another. */
	MillPasses finishing(int hole) {
		return new MillPasses(table, finishing().get(hole));
	}

	/** All finishing passes. */
	MillPasses allFinishing() {
		int[] passes = finishing().stream().flatMapToInt(Arrays::stream).sorted().toArray();
		return passes.length == all.size() ? all : new MillPasses(table, passes);
	}

	/** The first hole of each kind: at those of a kind the finishing passes are of the same kinds; and which holes are of each. */
	List<List<Integer>> byFinishing() {
		Map<List<Integer>, List<Integer>> kinds = new LinkedHashMap<>();
		for (int hole = 0; hole < count; hole++) {
			List<Integer> kind = Arrays.stream(finishing().get(hole)).map(table::kind).boxed().toList();
			kinds.computeIfAbsent(kind, fresh -> new ArrayList<>()).add(hole);
		}
		return List.copyOf(kinds.values());
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
		int[] widest = Arrays.stream(here).filter(pass -> Arrays.stream(kinds).noneMatch(other -> roughing(table.kind(pass), other))).toArray();
		return widest.length == 0 ? here : widest;
	}

	private boolean roughing(int kind, int other) {
		MillPass pass = table.typical(kind);
		MillPass wider = table.typical(other);
		return wider.radius() - ROUGHING >= pass.radius() && !apart(pass, wider);
	}

	/** Whether two passes lie so far from each other along the axis that neither is for roughing the other: two bites of a cutter with many teeth. */
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
