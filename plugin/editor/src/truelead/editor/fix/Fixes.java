package truelead.editor.fix;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;

/** The proposals for a finding, best first; the same list at every place that offers them. */
public final class Fixes {

	private Fixes() {
	}

	/** One proposal a fix, and, where the rule was found more than once and its best fix is safe, one for all of its kind. */
	public static List<FixProposal> of(CheckedText checked, Finding finding) {
		List<FixProposal> proposals = new ArrayList<>();
		for (int choice = 0; choice < finding.fixes().size(); choice++) {
			if (FixEdit.possible(checked, finding.fixes().get(choice))) {
				proposals.add(new FixProposal(checked, finding, choice, false));
			}
		}
		if (!proposals.isEmpty() && finding.fixes().get(0).safe() && severalOf(checked, finding)) {
			proposals.add(new FixProposal(checked, finding, 0, true));
		}
		return proposals;
	}

	private static boolean severalOf(CheckedText checked, Finding finding) {
		return checked.shown().stream().filter(other -> other.rule().equals(finding.rule())).filter(other -> !other.fixes().isEmpty())
				.filter(other -> other.fixes().get(0).safe()).map(Finding::at).distinct().count() > 1;
	}
}
