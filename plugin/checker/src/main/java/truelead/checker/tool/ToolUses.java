package truelead.checker.tool;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** The stays of tools of a program, with what rules have gathered of all of them. */
public final class ToolUses {

	private final List<ToolUse> all;
	private final Map<Class<?>, Object> gathered;
	private final BitSet judged;

	private ToolUses(List<ToolUse> all, Map<Class<?>, Object> gathered, BitSet judged) {
		this.all = all;
		this.gathered = gathered;
		this.judged = judged;
	}

	/** Stays, the number of each being its place in the list. */
	public static ToolUses of(List<ToolUse> all) {
		return new ToolUses(List.copyOf(all), new ConcurrentHashMap<>(), every(all));
	}

	/**
	 * As many stays of an edited text, in a list that nobody changes, of which rules of other tools know the same: numbers, facts, offsets,
	 * coolant and kinds of cycles.
	 */
	public ToolUses edited(List<ToolUse> others) {
		return new ToolUses(Collections.unmodifiableList(others), gathered, every(others));
	}

	/** The same stays, of which some are judged by themselves. */
	public ToolUses judging(BitSet some) {
		return new ToolUses(all, gathered, some);
	}

	/** Whether a stay is among those that are judged. */
	public boolean judges(int stay) {
		return judged.get(stay);
	}

	/** Those that are judged. */
	public Stream<ToolUse> judged() {
		return judged.stream().mapToObj(all::get);
	}

	private static BitSet every(List<ToolUse> all) {
		BitSet every = new BitSet(all.size());
		every.set(0, all.size());
		return every;
	}

	/** The stays in the order of execution. */
	public List<ToolUse> all() {
		return all;
	}

	/**
	 * What is gathered of all stays, made once; it is made of nothing but their numbers, facts, offsets, coolant and kinds of cycles, so
	 * that it outlives an edit that leaves these alone.
	 */
	public <T> T gathered(Class<T> kind, Function<List<ToolUse>, T> maker) {
		Object known = gathered.get(kind);
		if (known == null) {
			known = maker.apply(all);
			gathered.put(kind, known);
		}
		return kind.cast(known);
	}
}
