package truelead.editor.fix;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;
import truelead.editor.EditorIds;

/** A proposal as the Problems view wants it: it opens the program, changes the text, and leaves saving to the person. */
final class FixResolution implements IMarkerResolution2 {

	private final FixProposal proposal;

	FixResolution(FixProposal proposal) {
		this.proposal = proposal;
	}

	@Override
	public void run(IMarker marker) {
		try {
			IEditorPart part = IDE.openEditor(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), (IFile) marker.getResource(),
					EditorIds.EDITOR);
			if (part instanceof ITextEditor editor) {
				IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
				proposal.apply(document);
				if (proposal.getSelection(document) != null) {
					editor.selectAndReveal(proposal.getSelection(document).x, 0);
				}
			}
		} catch (PartInitException cannotOpen) {
			ILog.of(FixResolution.class).log(cannotOpen.getStatus());
		}
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
