package truelead.editor.fix;

import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.text.IDocument;
import truelead.editor.settings.CheckSettings;

/** Sets the severity of a finding's rule for the workspace or for the program's project, from the finding itself. */
final class SeverityProposal extends PlainProposal {

	private final String rule;
	private final String word;
	private final Optional<IProject> project;

	/** @param project whose programs it is set for; empty for all of the workspace */
	SeverityProposal(String rule, String word, Optional<IProject> project) {
		this.rule = rule;
		this.word = word;
		this.project = project;
	}

	@Override
	public void apply(IDocument document) {
		CheckSettings settings = project.map(CheckSettings::of).orElseGet(CheckSettings::ofWorkspace);
		settings.severityOf(rule, word);
		if (project.isPresent()) {
			settings.severitiesCount(true);
		}
		settings.save();
	}

	@Override
	public String getDisplayString() {
		String where = project.isPresent() ? " in this project" : " in this workspace";
		return CheckSettings.OFF.equals(word) ? "Switch " + rule + " off" + where : "Report " + rule + " as " + word + where;
	}

	@Override
	public String getAdditionalProposalInfo() {
		return project.isPresent() ? "Changes how every program of the project is judged, for all who share it. Taken back among its properties: CNC Programs, Severities."
				: "Changes how every program of the workspace is judged, where its project says nothing else. Taken back under Preferences, CNC Programs, Severities.";
	}
}
