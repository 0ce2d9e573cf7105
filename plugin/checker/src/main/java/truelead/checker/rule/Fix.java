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

	private static final String MORE = ", and ";

	/** Several changes as one, each place once; safe where all are. Empty where there are none. */
	public static Optional<Fix> together(Collection<Fix> fixes) {
		Map<List<Edit>, Fix> distinct = new LinkedHashMap<>();
		fixes.forEach(fix -> distinct.putIfAbsent(fix.edits(), fix));
		if (distinct.size() < 2) {
			return distinct.values().stream().findFirst();
		}
		Fix first = distinct.values().iterator().next();
		Fix doubtful = distinct.values().stream().filter(fix -> !fix.safe()).findFirst().orElse(first);
		return Optional.of(new Fix(first.title() + more(distinct.size() - 1), doubtful.safe(), doubtful.why(), distinct.values().stream().flatMap(fix -> fix.edits().stream()).toList()));
	}

	/** The same in more places, by line. */
	public Fix also(List<List<Edit>> places) {
		if (places.isEmpty()) {
			return this;
		}
		List<Edit> all = new ArrayList<>(edits);
		places.forEach(all::addAll);
		all.sort(Comparator.comparingInt(edit -> edit.at().line()));
		int counted = title.indexOf(MORE);
		int before = counted < 0 ? 0 : Integer.parseInt(title.substring(counted + MORE.length(), title.indexOf(' ', counted + MORE.length())));
		return new Fix((counted < 0 ? title : title.substring(0, counted)) + more(before + places.size()), safe, why, all);
	}

	private static String more(int count) {
		return MORE + count + (count == 1 ? " more place" : " more places");
	}
}
