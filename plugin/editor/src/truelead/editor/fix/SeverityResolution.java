package truelead.editor.fix;

import org.eclipse.core.resources.IMarker;
import org.eclipse.jface.text.Document;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.PlatformUI;

/** The severity of a finding's rule, set from the Problems view; no program is changed. */
final class SeverityResolution implements IMarkerResolution2 {

	private final SeverityProposal proposal;

	SeverityResolution(SeverityProposal proposal) {
		this.proposal = proposal;
	}

	@Override
	public void run(IMarker marker) {
		// As soon as the dialog that offered it has gone.
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> proposal.apply(new Document()));
	}

	@Override
	public String getLabel() {
		return proposal.getDisplayString();
	}

	@Override
	public String getDescription() {
		return proposal.getAdditionalProposalInfo();
	}

	@Override
	public Image getImage() {
		return null;
	}
}
