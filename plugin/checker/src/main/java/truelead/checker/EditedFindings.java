package truelead.checker;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.machine.Location;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Rules;
import truelead.checker.work.ChangedLines;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** What the rules find in a program that is being edited, each finding by itself, so that those on a part of it can be found anew. */
final class EditedFindings {

	private final RuleSettings settings;
	private final List<Finding> found;

	private EditedFindings(RuleSettings settings, List<Finding> found) {
		this.settings = settings;
		this.found = found;
	}

	/** All that is found in a work. */
	static EditedFindings of(Work work, RuleSettings settings) {
		return new EditedFindings(settings, Rules.found(work, settings));
	}

	/**
	 * The findings after an edit; empty where they cannot be told without judging the whole work.
	 *
	 * @param part  the part of the work that is another one
	 * @param lines the lines that differ
	 */
	Optional<EditedFindings> with(Work part, ChangedLines lines) {
		BitSet judged = new BitSet();
		for (ThreadingOperation operation : part.operations()) {
			judged.set(operation.index());
		}
		List<Finding> all = new ArrayList<>();
		for (Finding finding : found) {
			if (finding.operation() < 0 || !judged.get(finding.operation())) {
				if (Rules.failed(finding) || places(finding).anyMatch(place -> lines.has(place.line()))) {
					return Optional.empty();
				}
				all.add(finding);
			}
		}
		List<Finding> anew = Rules.found(part, settings);
		boolean ownAlone = !part.isWhole() && anew.stream().allMatch(finding -> finding.operation() >= 0 && judged.get(finding.operation()));
		if (!ownAlone) {
			return Optional.empty();
		}
		all.addAll(anew);
		all.sort(Comparator.<Finding>comparingInt(finding -> Rules.number(finding.rule())).thenComparingInt(Finding::operation));
		return Optional.of(new EditedFindings(settings, all));
	}

	/** The findings as they are told. */
	List<Finding> told(Work work) {
		return Acceptance.apply(Rules.told(found, work, settings), work);
	}

	private static Stream<Location> places(Finding finding) {
		return Stream.of(Stream.of(finding.at()), finding.related().stream().map(other -> other.at()),
				finding.fixes().stream().flatMap(fix -> fix.edits().stream()).map(edit -> edit.at()),
				finding.evidence().stream().flatMap(number -> number.at().stream())).flatMap(places -> places);
	}
}
