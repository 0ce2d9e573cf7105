package truelead.checker;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.comment.ChangedLines;
import truelead.checker.program.Location;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rulebook.Rules;
import truelead.checker.work.EditedWork;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** What the rules find in a program that is being edited, each finding by itself, so that those on a part of it can be found anew. */
final class EditedFindings {

	private final RuleSettings settings;
	private final List<Finding> found;
	/** As they are told. */
	private final List<Finding> told;
	/** The lines that places of them are in, and maybe more. */
	private final BitSet pointed;

	private EditedFindings(RuleSettings settings, List<Finding> found, List<Finding> told, BitSet pointed) {
		this.settings = settings;
		this.found = found;
		this.told = told;
		this.pointed = pointed;
	}

	/** All that is found in a work. */
	static EditedFindings of(Work work, RuleSettings settings) {
		return of(Rules.found(work, settings), work, settings);
	}

	private static EditedFindings of(List<Finding> found, Work work, RuleSettings settings) {
		BitSet pointed = new BitSet();
		found.forEach(finding -> places(finding).forEach(place -> pointed.set(place.line())));
		return new EditedFindings(settings, found, told(found, work, settings), pointed);
	}

	/** The findings as they are told. */
	List<Finding> told() {
		return told;
	}

	/** The findings after an edit; empty where they cannot be told without judging the whole work. */
	Optional<EditedFindings> with(EditedWork.Part part, ChangedLines lines, Work whole) {
		if (part.all()) {
			return Optional.of(of(part.work(), settings));
		}
		BitSet judged = new BitSet();
		for (ThreadingOperation operation : part.work().operations()) {
			judged.set(operation.index());
		}
		int next = pointed.nextSetBit(lines.first());
		boolean pointedAt = next >= 0 && next <= lines.last();
		List<Finding> kept = new ArrayList<>(found.size());
		boolean apart = true;
		for (Finding finding : found) {
			if (finding.operation() < 0 || !judged.get(finding.operation())) {
				if (Rules.failed(finding) || pointedAt && places(finding).anyMatch(place -> lines.has(place.line()))) {
					return Optional.empty();
				}
				apart &= !part.lines().get(finding.at().line()) && !finding.reachesAll();
				kept.add(finding);
			}
		}
		List<Finding> anew = Rules.found(part.work(), settings);
		for (Finding finding : anew) {
			if (part.work().isWhole() || finding.operation() < 0 || !judged.get(finding.operation())) {
				return Optional.empty();
			}
			apart &= part.lines().get(finding.at().line()) && !finding.reachesAll();
		}
		kept.addAll(anew);
		if (!apart) {
			kept.sort(Comparator.<Finding>comparingInt(finding -> Rules.number(finding.rule())).thenComparingInt(Finding::operation));
			return Optional.of(of(kept, whole, settings));
		}
		anew.forEach(finding -> places(finding).forEach(place -> pointed.set(place.line())));
		return Optional.of(new EditedFindings(settings, kept, joined(judged, told(anew, whole, settings)), pointed));
	}

	/** What was told before of other operations, and what is told of these now, which are in lines of their own. */
	private List<Finding> joined(BitSet judged, List<Finding> now) {
		List<Finding> all = new ArrayList<>(told.size() + now.size());
		int at = 0;
		for (Finding finding : told) {
			if (finding.operation() < 0 || !judged.get(finding.operation())) {
				for (; at < now.size() && Rules.byPlace(now.get(at), finding) < 0; at++) {
					all.add(now.get(at));
				}
				all.add(finding);
			}
		}
		all.addAll(now.subList(at, now.size()));
		return all;
	}

	private static List<Finding> told(List<Finding> found, Work work, RuleSettings settings) {
		return Acceptance.apply(Rules.told(found, work, settings), work);
	}

	private static Stream<Location> places(Finding finding) {
		return Stream.of(Stream.of(finding.at()), finding.related().stream().map(other -> other.at()),
				finding.fixes().stream().flatMap(fix -> fix.edits().stream()).map(edit -> edit.at()),
				finding.evidence().stream().flatMap(number -> number.at().stream())).flatMap(places -> places);
	}
}
