package truelead.editor.fix;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;

/** What can be done about a finding: words alone, no icon, and the caret stays unless a kind says otherwise. */
abstract class PlainProposal implements ICompletionProposal {

	@Override
	public Point getSelection(IDocument document) {
		return null;
	}

	@Override
	public final Image getImage() {
		return null;
	}

	@Override
	public final IContextInformation getContextInformation() {
		return null;
	}
}
