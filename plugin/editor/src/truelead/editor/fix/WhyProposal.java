package truelead.editor.fix;

import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import truelead.checker.lesson.Filled;
import truelead.checker.lesson.Filling;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;
import truelead.editor.lesson.LessonView;

/** Opens the lesson of a finding with the finding's own numbers; changes nothing. */
public final class WhyProposal extends PlainProposal {

	private final Filled filled;

	private WhyProposal(Filled filled) {
		this.filled = filled;
	}

	/** The proposal for a finding; empty where no lesson tells more about it. */
	public static Optional<WhyProposal> of(CheckedText checked, Finding finding) {
		return new Filling(checked.result()).of(finding).map(WhyProposal::new);
	}

	@Override
	public void apply(IDocument document) {
		LessonView.show(filled);
	}

	@Override
	public String getDisplayString() {
		return "Show me why: " + filled.lesson().title();
	}

	@Override
	public String getAdditionalProposalInfo() {
		return filled.lesson().introduction();
	}
}
