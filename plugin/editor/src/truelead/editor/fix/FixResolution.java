package truelead.editor.fix;

import java.util.Optional;
import java.util.function.BiFunction;
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

/**
 * What the editor proposes for a finding as the Problems view wants it: it opens the program, changes the text, and leaves saving to the
 * person. Checks, if it must, off the UI thread.
 */
final class FixResolution implements IMarkerResolution2 {

	private final MarkedFinding marked;
	private final String label;
	private final String advice;
	private final BiFunction<CheckedText, Finding, PlainProposal> made;

	private FixResolution(MarkedFinding marked, String label, String advice, BiFunction<CheckedText, Finding, PlainProposal> made) {
		this.marked = marked;
		this.label = label;
		this.advice = advice;
		this.made = made;
	}

	/** One way to remove a finding. */
	static FixResolution of(MarkedFinding marked, FixOffer offer) {
		return new FixResolution(marked, offer.label(), offer.advice(), (now, finding) -> new FixProposal(now, finding, offer));
	}

	/** To accept a finding. */
	static FixResolution accepting(MarkedFinding marked) {
		return new FixResolution(marked, AcceptProposal.label(marked.rule()), AcceptProposal.info(), (now, finding) ->
				AcceptProposal.of(now, finding, marked.program()));
	}

	@Override
	public void run(IMarker marker) {
		try {
			if (IDE.openEditor(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), marked.program(), EditorIds.EDITOR)
					instanceof CheckedEditor editor) {
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
		PlainProposal proposal = made.apply(now, finding.get());
		proposal.apply(document);
		if (proposal.getSelection(document) != null) {
			editor.selectAndReveal(proposal.getSelection(document).x, 0);
		}
	}

	@Override
	public String getLabel() {
		return label;
	}

	@Override
	public String getDescription() {
		return marked.message() + "\n\n" + advice;
	}

	@Override
	public Image getImage() {
		return null;
	}
}
