package truelead.editor.fix;

import java.util.List;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;
import truelead.editor.check.FixOffer;

/** The proposals for a finding, best first; the same list at every place that offers them. */
public final class Fixes {

	private Fixes() {
	}

	/** One proposal an offer. */
	public static List<FixProposal> of(CheckedText checked, Finding finding) {
		return FixOffer.of(checked, finding).stream().map(offer -> new FixProposal(checked, finding, offer)).toList();
	}
}
