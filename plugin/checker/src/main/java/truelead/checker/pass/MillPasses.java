package truelead.checker.pass;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.function.Predicate;
import truelead.checker.hole.Place;
import truelead.checker.program.InOrder;

/**
 * Passes of a thread milling operation in the order of execution. Those of helices that come again at place after place are made when they
 * are asked for, so that thousands of threads are no more than their numbers; a rule that asks for the {@link #typical()} ones judges them
 * by a few.
 */
public final class MillPasses extends AbstractList<MillPass> implements RandomAccess {

	private static final MillPasses NONE = new MillPasses(List.of());

	private final List<PassPart> parts;
	/** How many passes come before each part. */
	private final int[] starts;
	private final int size;
	private volatile Kinds kinds;

	/** The first pass of each kind, how many there are of each, and for each part which of these its own kinds are. */
	private record Kinds(List<MillPass> typical, int[] counts, int[][] ofParts) {
	}

	MillPasses(List<PassPart> parts) {
		this.parts = parts;
		this.starts = new int[parts.size()];
		int count = 0;
		for (int part = 0; part < starts.length; part++) {
			starts[part] = count;
			count += parts.get(part).size();
		}
		this.size = count;
	}

	@Override
	public int size() {
		return size;
	}

	@Override
	public MillPass get(int index) {
		int part = InOrder.row(starts, index);
		return parts.get(part).get(index - starts[part]);
	}

	/**
	 * One pass of each kind, the first of it: those of a kind differ in place, block and time alone, and so do the cuts at their holes, so
	 * that what is true of one in all other respects is true of all. In the order of execution.
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
		if (all.size() == 1) {
			return asked.test(all.get(0)) ? this : NONE;
		}
		BitSet kinds = new BitSet();
		for (int kind = 0; kind < all.size(); kind++) {
			kinds.set(kind, asked.test(all.get(kind)));
		}
		return ofKinds(kinds);
	}

	/** The passes of some of the {@link #typical()} kinds, in the order of execution. */
	public MillPasses ofKinds(BitSet wanted) {
		if (wanted.cardinality() == typical().size()) {
			return this;
		}
		List<PassPart> some = new ArrayList<>();
		for (int part = 0; part < starts.length && !wanted.isEmpty(); part++) {
			int[] here = kinds().ofParts[part];
			parts.get(part).ofKinds(kind -> wanted.get(here[kind])).ifPresent(some::add);
		}
		return new MillPasses(some);
	}

	/** Whether the hole of one of them is at a place. */
	public boolean at(Place place) {
		return parts.stream().anyMatch(part -> part.at(place));
	}

	/**
	 * The passes that stand by themselves, and the first and the last of those that come again: in the text all others lie between them.
	 */
	public List<MillPass> outermost() {
		return parts.stream().flatMap(part -> part.outermost().stream()).toList();
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
		Map<Integer, Integer> numbers = new HashMap<>();
		List<MillPass> typical = new ArrayList<>();
		int[] counts = new int[2];
		int[][] ofParts = new int[parts.size()][];
		for (int part = 0; part < ofParts.length; part++) {
			PassPart here = parts.get(part);
			int[] countsHere = here.counts();
			ofParts[part] = new int[countsHere.length];
			for (int kind = 0; kind < countsHere.length; kind++) {
				// one part alone needs no keys to tell its kinds
				Optional<Integer> known = Optional.ofNullable(ofParts.length == 1 ? null
						: numbers.putIfAbsent(here.key(kind), typical.size()));
				ofParts[part][kind] = known.orElse(typical.size());
				if (known.isEmpty()) {
					typical.add(here.typical(kind));
					counts = typical.size() > counts.length ? Arrays.copyOf(counts, counts.length * 2) : counts;
				}
				counts[ofParts[part][kind]] += countsHere[kind];
			}
		}
		return new Kinds(List.copyOf(typical), counts, ofParts);
	}
}
