package truelead.checker.tool;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** The stays of tools of a program, with what rules have gathered of all of them. */
public final class ToolUses {

	private final List<ToolUse> all;
	private final Map<Class<?>, Object> gathered;

	private ToolUses(List<ToolUse> all, Map<Class<?>, Object> gathered) {
		this.all = all;
		this.gathered = gathered;
	}

	/** Stays, the number of each being its place in the list. */
	public static ToolUses of(List<ToolUse> all) {
		return new ToolUses(List.copyOf(all), new ConcurrentHashMap<>());
	}

	/** As many stays of an edited text, of which rules of other tools know the same: numbers, facts, offsets, coolant and kinds of cycles. */
	public ToolUses edited(List<ToolUse> others) {
		return new ToolUses(List.copyOf(others), gathered);
	}

	/** The stays in the order of execution. */
	public List<ToolUse> all() {
		return all;
	}

	/** What is gathered of all stays, made once; it is made of nothing but their numbers, facts, offsets, coolant and kinds of cycles, so that it outlives an edit that leaves these alone. */
	public <T> T gathered(Class<T> kind, Function<List<ToolUse>, T> maker) {
		Object known = gathered.get(kind);
		if (known == null) {
			known = maker.apply(all);
			gathered.put(kind, known);
		}
		return kind.cast(known);
	}
}
