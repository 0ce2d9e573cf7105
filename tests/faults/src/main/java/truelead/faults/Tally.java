package truelead.faults;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The bench's table: for each fault how often it was found, elsewhere, missed, and what was said beside it; false alarms on good programs.
 */
final class Tally {
	private final Map<String, Row> rows = new LinkedHashMap<>();
	private final Map<String, List<Verdict>> alarms = new TreeMap<>();
	private int good;
	private int alarmed;

	private static final class Row {
		String rules = "";
		int put;
		int found;
		final List<Verdict> elsewhere = new ArrayList<>();
		final List<Verdict> missed = new ArrayList<>();
		final List<Verdict> extra = new ArrayList<>();
	}

	Tally() {
		for (Fault fault : Faults.ALL) {
			rows.computeIfAbsent(fault.name(), n -> new Row()).rules = String.join(" / ", fault.rules());
		}
	}

	void add(Verdict verdict) {
		if (verdict.trial().fault().isEmpty()) {
			good++;
			if (!verdict.extra().isEmpty()) {
				alarmed++;
			}
			verdict.extra().stream().map(Said::rule).distinct().forEach(r -> alarms.computeIfAbsent(r, n -> new ArrayList<>())
					.add(verdict));
			return;
		}
		Row row = rows.get(verdict.trial().fault().get().name());
		row.put++;
		switch (verdict.outcome()) {
			case FOUND -> row.found++;
			case ELSEWHERE -> row.elsewhere.add(verdict);
			default -> row.missed.add(verdict);
		}
		if (!verdict.extra().isEmpty()) {
			row.extra.add(verdict);
		}
	}

	int put(String fault) {
		return rows.get(fault).put;
	}

	/** Of the faults whose rule the checker has, the share found by the right rule at the right block; 1 where there were none. */
	double share(Set<String> known) {
		int put = 0;
		int found = 0;
		for (Row row : rows.values()) {
			if (Set.of(row.rules.split(" / ")).stream().anyMatch(known::contains)) {
				put += row.put;
				found += row.found;
			}
		}
		return put == 0 ? 1 : (double) found / put;
	}

	int alarmed() {
		return alarmed;
	}

	/** The table; {@code known}: the rules that the checker has, others are left out of the sum. */
	String table(Set<String> known) {
		StringBuilder text = new StringBuilder();
		text.append(String.format(Locale.ROOT, "%-52s %-40s %6s %6s %6s %6s %6s%n", "fault", "rule", "put", "found", "elsew.",
				"missed", "extra"));
		int put = 0;
		int found = 0;
		for (Map.Entry<String, Row> entry : rows.entrySet()) {
			Row row = entry.getValue();
			boolean exists = row.rules.isEmpty() || Set.of(row.rules.split(" / ")).stream().anyMatch(known::contains);
			text.append(String.format(Locale.ROOT, "%-52s %-40s %6d %6d %6d %6d %6d%s%n", entry.getKey(), row.rules, row.put, row.found,
				row.elsewhere.size(), row.missed.size(), row.extra.size(), exists ? "" : "  (rule not there)"));
			put += exists ? row.put : 0;
			found += exists ? row.found : 0;
		}
		text.append(String.format(Locale.ROOT, "%ngood programs: %d, with a finding above information: %d%n", good, alarmed));
		text.append(String.format(Locale.ROOT, "faults: %d, found by the right rule at the right block: %d (%.2f %%)%n", put, found,
				put == 0 ? 0 : 100.0 * found / put));
		return text.toString();
	}

	/** The first few of each kind of offender, with the seed that prints the program again. */
	String offenders(int each) {
		StringBuilder text = new StringBuilder();
		alarms.forEach((rule, verdicts) -> {
			text.append("\nfalse alarm ").append(rule).append(": ").append(verdicts.size()).append('\n');
			verdicts.stream().limit(each).forEach(v -> text.append("  seed ").append(v.trial().seed()).append(": ")
					.append(first(v.extra(), rule)).append('\n'));
		});
		rows.forEach((name, row) -> {
			list(text, "missed", name, row.missed, each);
			list(text, "elsewhere", name, row.elsewhere, each);
			list(text, "extra", name, row.extra, each);
		});
		return text.toString();
	}

	private static void list(StringBuilder text, String kind, String name, List<Verdict> verdicts, int each) {
		if (verdicts.isEmpty()) {
			return;
		}
		text.append('\n').append(kind).append(", ").append(name).append(": ").append(verdicts.size()).append('\n');
		for (Verdict v : verdicts.stream().limit(each).toList()) {
			text.append("  seed ").append(v.trial().seed()).append(", lines ").append(v.trial().lines().stream().limit(8).toList())
					.append('\n');
			for (Said s : (kind.equals("extra") ? v.extra() : v.said()).stream().filter(s -> !s.rule().equals("edge-not-broken"))
					.limit(6).toList()) {
				text.append("    ").append(s.line()).append(' ').append(s.level()).append(' ').append(s.rule()).append(' ')
						.append(s.message()).append('\n');
			}
		}
	}

	private static String first(List<Said> said, String rule) {
		return said.stream().filter(s -> s.rule().equals(rule)).findFirst().map(s -> s.line() + " " + s.level() + " "
				+ s.message()).orElse("");
	}
}
