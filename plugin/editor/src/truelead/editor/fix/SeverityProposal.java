package truelead.editor.fix;

import org.eclipse.jface.text.IDocument;
import truelead.editor.settings.CheckSettings;

/** Sets the severity of a finding's rule for the workspace, from the finding itself. */
final class SeverityProposal extends PlainProposal {

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
		return "Changes how every program of the workspace is judged. Taken back under Preferences, CNC Programs, Severities.";
	}
}
