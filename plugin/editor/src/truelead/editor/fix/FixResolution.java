package truelead.editor.fix;

import java.util.Optional;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import truelead.checker.rule.Finding;
import truelead.editor.EditorIds;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.editor.check.FixOffer;
import truelead.editor.command.ProgramCommand;

/** An offer as the Problems view wants it: it opens the program, changes the text, and leaves saving to the person. Checks, if it must, off the UI thread. */
final class FixResolution implements IMarkerResolution2 {

	private final MarkedFinding marked;
	private final FixOffer offer;

	FixResolution(MarkedFinding marked, FixOffer offer) {
		this.marked = marked;
		this.offer = offer;
	}

	@Override
	public void run(IMarker marker) {
		try {
			if (IDE.openEditor(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), marked.program(), EditorIds.EDITOR) instanceof CheckedEditor editor) {
				IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
				Job job = Job.create("Checking " + marked.program().getName(), (ICoreRunnable) monitor -> {
					CheckedText now = editor.check().now(document);
					PlatformUI.getWorkbench().getDisplay().asyncExec(() -> fix(editor, document, now));
				});
				job.setUser(true);
				job.schedule();
			}
		} catch (PartInitException cannotOpen) {
			ILog.of(FixResolution.class).log(cannotOpen.getStatus());
		}
	}

	private void fix(CheckedEditor editor, IDocument document, CheckedText now) {
		if (editor.viewer() == null || editor.viewer().getTextWidget() == null) {
			return;
		}
		Optional<Finding> finding = now.isOf(document) ? marked.in(now) : Optional.empty();
		if (finding.isEmpty()) {
			ProgramCommand.say(editor, true, "the finding is not there any more: nothing was changed");
			return;
		}
		FixProposal proposal = new FixProposal(now, finding.get(), offer);
		proposal.apply(document);
		if (proposal.getSelection(document) != null) {
			editor.selectAndReveal(proposal.getSelection(document).x, 0);
		}
	}

	@Override
	public String getLabel() {
		return offer.label();
	}

	@Override
	public String getDescription() {
		return marked.message() + "\n\n" + offer.advice();
	}

	@Override
	public Image getImage() {
		return null;
	}
}
