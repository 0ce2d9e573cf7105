package truelead.checker.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import truelead.checker.program.Location;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Related;

/**
 * Folds what one rule says of one place again and again (a subprogram called for four patterns, a loop of thirty holes) into its worst
 * case; the blocks of the other cases stay as related places.
 */
final class OneAPlace {

	private record Place(String rule, String file, int line, int start, int end) {
	}

	private OneAPlace() {
	}

	static List<Finding> merge(List<Finding> found) {
		Map<Place, List<Finding>> places = new LinkedHashMap<>();
		for (Finding finding : found) {
			Location at = finding.at();
			places.computeIfAbsent(new Place(finding.rule(), at.file().name(), at.line(), at.span().start(), at.span().end()),
					place -> new ArrayList<>()).add(finding);
		}
		List<Finding> merged = new ArrayList<>();
		for (List<Finding> same : places.values()) {
			merged.add(same.size() == 1 ? same.get(0) : worst(same));
		}
		return merged;
	}

	private static Finding worst(List<Finding> same) {
		Finding worst = same.get(0);
		Set<Related> related = new LinkedHashSet<>();
		for (Finding finding : same) {
			if (finding.severity().compareTo(worst.severity()) < 0) {
				worst = finding;
			}
		}
		related.addAll(worst.related());
		for (Finding finding : same) {
			related.addAll(finding.related());
		}
		return worst.forAll(worst.message(), related, worst.fixes());
	}
}
