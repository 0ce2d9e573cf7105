package truelead.checker.rulebook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;

/**
 * One cause, one finding: what a rule finds where another one, no less severe, tells of a slip that explains it is left out. Which slips these are
 * is said by the rule itself ({@link Rule#silentWhere}). Only rules that are not off take part.
 */
final class Precedence {

	private static final Map<String, Set<Slip>> SILENT_WHERE = Rules.ALL.stream().collect(Collectors.toUnmodifiableMap(Rule::name, Rule::silentWhere));

	/** A slip and how far it explains: an operation, a block, all. */
	private record Told(Slip slip, String within) {
	}

	private Precedence() {
	}

	/** The findings without those that another one speaks for; in the order given. */
	static List<Finding> apply(List<Finding> findings) {
		Map<Told, Severity> told = new HashMap<>();
		for (Finding speaker : findings) {
			for (Slip slip : speaker.tells()) {
				within(slip, speaker).ifPresent(within -> told.merge(new Told(slip, within), speaker.severity(), Precedence::graver));
			}
		}
		return told.isEmpty() ? findings : findings.stream().filter(finding -> !explained(finding, told)).toList();
	}

	private static boolean explained(Finding finding, Map<Told, Severity> told) {
		for (Slip slip : SILENT_WHERE.getOrDefault(finding.rule(), Set.of())) {
			Severity speaks = within(slip, finding).map(within -> told.get(new Told(slip, within))).orElse(null);
			if (speaks != null && speaks.compareTo(finding.severity()) <= 0) {
				return true;
			}
		}
		return false;
	}

	private static Severity graver(Severity one, Severity other) {
		return one.compareTo(other) <= 0 ? one : other;
	}

	private static Optional<String> within(Slip slip, Finding finding) {
		return switch (slip.reach()) {
			case OPERATION -> finding.operation() < 0 ? Optional.empty() : Optional.of("operation " + finding.operation());
			case BLOCK -> Optional.of("block " + finding.at().line() + " of " + finding.at().file().name());
			case PROGRAM -> Optional.of("program");
		};
	}
}
