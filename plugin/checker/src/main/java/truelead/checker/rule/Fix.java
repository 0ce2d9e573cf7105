package truelead.checker.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A change of the program that removes the finding.
 *
 * @param title what it does, with the numbers: {@code Change F500 to F520}
 * @param safe  whether it may be taken without reading the program again
 * @param why   why it is safe, or what to look at first
 */
public record Fix(String title, boolean safe, String why, List<Edit> edits) {

	/** Several changes as one, each place once; safe where all are. Empty where there are none. */
	public static Optional<Fix> together(Collection<Fix> fixes) {
		Map<List<Edit>, Fix> distinct = new LinkedHashMap<>();
		fixes.forEach(fix -> distinct.putIfAbsent(fix.edits(), fix));
		if (distinct.size() < 2) {
			return distinct.values().stream().findFirst();
		}
		Fix first = distinct.values().iterator().next();
		Fix doubtful = distinct.values().stream().filter(fix -> !fix.safe()).findFirst().orElse(first);
		return Optional.of(new Fix(first.title() + more(distinct.size() - 1), doubtful.safe(), doubtful.why(),
				distinct.values().stream().flatMap(fix -> fix.edits().stream()).toList()));
	}

	/** The same in more places, a line each; where the title counts places, these too. */
	public Fix also(List<List<Edit>> places) {
		if (places.isEmpty()) {
			return this;
		}
		List<Edit> all = new ArrayList<>(edits);
		places.forEach(all::addAll);
		all.sort(Comparator.comparingInt(edit -> edit.at().line()));
		int lines = (int) edits.stream().mapToInt(edit -> edit.at().line()).distinct().count();
		boolean counted = title.endsWith(more(lines - 1));
		String one = counted ? title.substring(0, title.length() - more(lines - 1).length()) : title;
		return new Fix(one + more(counted ? lines - 1 + places.size() : places.size()), safe, why, all);
	}

	private static String more(int count) {
		return ", and " + count + (count == 1 ? " more place" : " more places");
	}
}
