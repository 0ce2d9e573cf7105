package truelead.checker.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
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
 * One cause, one finding: what a rule finds where another one, no less severe, tells of a slip that explains it is left out. Which slips
 * these are is said by the rule itself ({@link Rule#silentWhere}). Only rules that are not off take part.
 */
final class Precedence {

	private static final Map<String, Set<Slip>> SILENT_WHERE = Rules.ALL.stream()
			.collect(Collectors.toUnmodifiableMap(Rule::name, Rule::silentWhere));

	/** As many findings are compared with each other. */
	private static final int FEW = 100;

	/** A slip and how far it explains: an operation, a block, all. */
	private record Told(Slip slip, String within) {
	}

	private Precedence() {
	}

	/**
	 * The findings without those that another one speaks for; in the order given. Of some that would speak for each other alone the one
	 * that explains most of them stays.
	 */
	static List<Finding> apply(List<Finding> findings) {
		Map<Told, Severity> told = new HashMap<>();
		findings.forEach(speaker -> tell(speaker, told));
		if (told.isEmpty()) {
			return findings;
		}
		List<Finding> open = new ArrayList<>();
		Set<Finding> kept = Collections.newSetFromMap(new IdentityHashMap<>());
		Map<Told, Severity> said = new HashMap<>();
		for (Finding finding : findings) {
			if (explained(finding, told)) {
				open.add(finding);
			} else {
				kept.add(finding);
				tell(finding, said);
			}
		}
		while (!open.isEmpty()) {
			boolean settled = open.removeIf(finding -> {
				boolean spokenFor = explained(finding, said);
				if (spokenFor) {
					tell(finding, said);
				}
				return spokenFor;
			});
			if (!settled) {
				Finding speaker = mostTelling(open);
				open.remove(speaker);
				kept.add(speaker);
				tell(speaker, said);
			}
		}
		return findings.stream().filter(kept::contains).toList();
	}

	/** That of some findings which explains the most of them, the first of several; of very many the first. */
	private static Finding mostTelling(List<Finding> open) {
		Finding most = open.get(0);
		long explains = -1;
		for (Finding speaker : open.size() <= FEW ? open : open.subList(0, 1)) {
			Map<Told, Severity> told = new HashMap<>();
			tell(speaker, told);
			long count = open.stream().filter(other -> other != speaker && explained(other, told)).count();
			if (count > explains) {
				most = speaker;
				explains = count;
			}
		}
		return most;
	}

	private static void tell(Finding speaker, Map<Told, Severity> told) {
		for (Slip slip : speaker.tells()) {
			within(slip, speaker).ifPresent(within -> told.merge(new Told(slip, within), speaker.severity(), Precedence::graver));
		}
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
