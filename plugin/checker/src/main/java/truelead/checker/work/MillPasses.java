package truelead.checker.work;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Predicate;

/**
 * Passes of a thread milling operation in the order of execution. Those of helices that come again at place after place are made when they are asked for, so
 * that thousands of threads are no more than their numbers; a rule that asks for the {@link #typical()} ones judges them by a few.
 */
public final class MillPasses extends AbstractList<MillPass> implements RandomAccess {

	private final PassTable table;
	private final int[] chosen;
	private Kinds kinds;

	/** The kinds there are, in the order of their first passes, with these, and how many passes are of each. */
	private record Kinds(int[] numbers, int[] counts, List<MillPass> typical) {
	}

	MillPasses(PassTable table, int[] chosen) {
		this.table = table;
		this.chosen = chosen;
	}

	@Override
	public int size() {
		return chosen.length;
	}

	@Override
	public MillPass get(int index) {
		return table.made(chosen[index]);
	}

	/**
	 * One pass of each kind, the first of it: those of a kind differ in place, block and time alone, and so do the cuts at their holes, so that what is true of
	 * one in all other respects is true of all. In the order of execution.
	 */
	public List<MillPass> typical() {
		return kinds().typical;
	}

	/** How many passes there are of the kind of one of the {@link #typical()} ones. */
	public int count(int kind) {
		return kinds().counts[kind];
	}

	/** The passes of the kinds whose {@link #typical()} pass is as asked, in the order of execution. */
	public MillPasses where(Predicate<MillPass> asked) {
		List<MillPass> all = typical();
		BitSet kinds = new BitSet();
		for (int kind = 0; kind < all.size(); kind++) {
			kinds.set(kind, asked.test(all.get(kind)));
		}
		return ofKinds(kinds);
	}

	/** The passes of some of the {@link #typical()} kinds, in the order of execution. */
	public MillPasses ofKinds(BitSet kinds) {
		Kinds known = kinds();
		boolean[] wanted = new boolean[table.kindCount()];
		int found = 0;
		for (int kind = kinds.nextSetBit(0); kind >= 0; kind = kinds.nextSetBit(kind + 1)) {
			wanted[known.numbers[kind]] = true;
			found += known.counts[kind];
		}
		if (found == chosen.length) {
			return this;
		}
		int[] some = new int[found];
		int at = 0;
		for (int i = 0; at < found; i++) {
			if (wanted[table.kind(chosen[i])]) {
				some[at++] = chosen[i];
			}
		}
		return new MillPasses(table, some);
	}

	/** The passes that stand by themselves, and the first and the last of those that come again: in the text all others lie between them. */
	public List<MillPass> outermost() {
		return table.outermost();
	}

	private synchronized Kinds kinds() {
		if (kinds == null) {
			int[] counts = new int[table.kindCount()];
			int[] numbers = new int[counts.length];
			List<MillPass> typical = new ArrayList<>();
			for (int pass : chosen) {
				int kind = table.kind(pass);
				if (counts[kind]++ == 0) {
					numbers[typical.size()] = kind;
					typical.add(table.made(pass));
				}
			}
			int[] present = Arrays.copyOf(numbers, typical.size());
			kinds = new Kinds(present, Arrays.stream(present).map(kind -> counts[kind]).toArray(), List.copyOf(typical));
		}
		return kinds;
	}
}
