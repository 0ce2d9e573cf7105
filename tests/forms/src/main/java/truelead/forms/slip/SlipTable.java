package truelead.forms.slip;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What became of the slips of each class. */
final class SlipTable {

	/** Rules that a line names at most. */
	private static final int MOST_RULES = 4;

	private final Map<Slip.Kind, Count> counts = new TreeMap<>();

	/** Of one class, or of several together. */
	private static final class Count {
		private int put;
		private int told;
		private int information;
		private final Map<String, Integer> rules = new TreeMap<>();

		private void add(Count other) {
			put += other.put;
			told += other.told;
			information += other.information;
			other.rules.forEach((rule, times) -> rules.merge(rule, times, Integer::sum));
		}
	}

	/**
	 * Counts one.
	 *
	 * @param rules       those that tell of it above information
	 * @param information whether other information is given than without it
	 */
	void add(Slip.Kind kind, Set<String> rules, boolean information) {
		Count count = counts.computeIfAbsent(kind, one -> new Count());
		count.put++;
		count.told += rules.isEmpty() ? 0 : 1;
		count.information += rules.isEmpty() && information ? 1 : 0;
		rules.forEach(rule -> count.rules.merge(rule, 1, Integer::sum));
	}

	int put(Slip.Kind kind) {
		return counts.containsKey(kind) ? counts.get(kind).put : 0;
	}

	int told(Slip.Kind kind) {
		return counts.containsKey(kind) ? counts.get(kind).told : 0;
	}

	/** A line a class that was put in so many times at least, in their order; behind them a line a tool, and all together. */
	String written(int least) {
		List<String> lines = new ArrayList<>();
		Map<String, Count> tools = new TreeMap<>();
		counts.forEach((kind, count) -> {
			if (count.put >= least) {
				lines.add(line(kind.toString(), count));
			}
			tools.computeIfAbsent(kind.tool(), tool -> new Count()).add(count);
		});
		lines.add("");
		tools.forEach((tool, count) -> lines.add(line(tool, count)));
		lines.add(line("all", together(tools.values())));
		return String.join("\n", lines) + "\n";
	}

	private static Count together(Collection<Count> counts) {
		Count all = new Count();
		counts.forEach(all::add);
		return all;
	}

	private static String line(String name, Count count) {
		List<String> rules = count.rules.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue()).limit(MOST_RULES)
				.map(rule -> rule.getValue() + " " + rule.getKey()).toList();
		return String.format(Locale.ROOT, "%-52s %6d put in, told %5d, %3.0f %%, information %4d, silent %5d  %s", name, count.put,
				count.told, 100.0 * count.told / count.put, count.information, count.put - count.told - count.information,
				String.join(", ", rules)).stripTrailing();
	}
}
