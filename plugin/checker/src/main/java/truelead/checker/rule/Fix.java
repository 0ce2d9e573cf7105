package truelead.checker.rule;

import java.util.Collection;
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
		int more = distinct.size() - 1;
		return Optional.of(new Fix(first.title() + ", and " + more + (more == 1 ? " more place" : " more places"), doubtful.safe(), doubtful.why(),
				distinct.values().stream().flatMap(fix -> fix.edits().stream()).toList()));
	}
}
