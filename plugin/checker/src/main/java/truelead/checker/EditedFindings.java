package truelead.checker;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import truelead.checker.comment.ChangedLines;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rulebook.Rules;
import truelead.checker.work.EditedWork;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** What the rules find in a program that is being edited, and how it is told, so that what is found in a part of it can be found anew. */
final class EditedFindings {

	private final RuleSettings settings;
	private final FoundByPart found;
	private final List<Finding> told;

	private EditedFindings(RuleSettings settings, FoundByPart found, List<Finding> told) {
		this.settings = settings;
		this.found = found;
		this.told = told;
	}

	/** All that is found in a work. */
	static EditedFindings of(Work work, RuleSettings settings) {
		List<Finding> found = Rules.found(work, settings);
		return new EditedFindings(settings, new FoundByPart(found), told(found, work, settings));
	}

	/** The findings as they are told. */
	List<Finding> told() {
		return told;
	}

	/** The findings after an edit, in place of these; empty where they cannot be told without judging the whole work. */
	Optional<EditedFindings> with(EditedWork.Part part, ChangedLines lines, Work whole) {
		if (part.all()) {
			return Optional.of(of(part.work(), settings));
		}
		BitSet judged = new BitSet();
		for (ThreadingOperation operation : part.work().operations()) {
			judged.set(operation.index());
		}
		List<Finding> anew = found.butForAll(Rules.found(part.work(), settings));
		boolean own = !part.work().isWhole() && anew.stream().allMatch(finding -> FoundByPart.isIn(finding, judged, part.lines()));
		List<Finding> gone = found.remove(judged, part.lines());
		if (!own || found.failed() || found.pointsAt(lines)) {
			return Optional.empty();
		}
		boolean apart = !found.reachesAll() && !found.isAt(part.lines()) && FoundByPart.areApart(gone, part.lines())
				&& FoundByPart.areApart(anew, part.lines());
		found.add(anew);
		if (!apart) {
			return Optional.of(new EditedFindings(settings, found, told(found.all(), whole, settings)));
		}
		return Optional.of(new EditedFindings(settings, found, joined(judged, part.lines(), told(anew, whole, settings))));
	}

	/** What was told before of other operations and stays, and what is told of these now, which are in lines of their own. */
	private List<Finding> joined(BitSet judged, BitSet lines, List<Finding> now) {
		List<Finding> all = new ArrayList<>(told.size() + now.size());
		int at = 0;
		for (Finding finding : told) {
			if (!FoundByPart.isIn(finding, judged, lines)) {
				for (; at < now.size() && Rules.byPlace(now.get(at), finding) < 0; at++) {
					all.add(now.get(at));
				}
				all.add(finding);
			}
		}
		all.addAll(now.subList(at, now.size()));
		return Collections.unmodifiableList(all);
	}

	private static List<Finding> told(List<Finding> found, Work work, RuleSettings settings) {
		return Acceptance.apply(Rules.told(found, work, settings), work);
	}
}
