package truelead.editor.fix;

import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.PlatformUI;

/** Asks how a finding's rule is to be reported in the workspace or in the program's project, from the finding itself. */
final class SeverityProposal extends PlainProposal {

	private final String rule;
	private final Optional<IProject> project;

	/** @param project the program's; empty for a program that is in none */
	SeverityProposal(String rule, Optional<IProject> project) {
		this.rule = rule;
		this.project = project;
	}

	@Override
	public void apply(IDocument document) {
		new SeverityDialog(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), rule, project).open();
	}

	@Override
	public String getDisplayString() {
		return "Set the severity of " + rule + "\u2026";
	}

	@Override
	public String getAdditionalProposalInfo() {
		return "Error, warning, information or off, for " + (project.isPresent() ? "this project or " : "")
				+ "the workspace. Changes how every program there is judged."
				+ " All rules stand under Preferences and a project's properties: CNC Programs, Severities.";
	}
}
