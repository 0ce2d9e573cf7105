package truelead.editor.fix;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import truelead.editor.settings.CheckSettings;

/** Sets the severity of a finding's rule for the workspace, from the finding itself. */
final class SeverityProposal implements ICompletionProposal {

	private final String rule;
	private final String word;

	SeverityProposal(String rule, String word) {
		this.rule = rule;
		this.word = word;
	}

	@Override
	public void apply(IDocument document) {
		CheckSettings settings = CheckSettings.ofWorkspace();
		settings.severityOf(rule, word);
		settings.save();
	}

	@Override
	public String getDisplayString() {
		return CheckSettings.OFF.equals(word) ? "Switch " + rule + " off in this workspace" : "Report " + rule + " as " + word + " in this workspace";
	}

	@Override
	public String getAdditionalProposalInfo() {
		return "Changes how every program of the workspace is judged. Taken back under Preferences, CNC Programs.";
	}

	@Override
	public Point getSelection(IDocument document) {
		return null;
	}

	@Override
	public Image getImage() {
		return null;
	}

	@Override
	public IContextInformation getContextInformation() {
		return null;
	}
}
