package truelead.editor.walk;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import truelead.editor.audit.AuditView;
import truelead.editor.check.CheckedEditor;
import truelead.editor.demo.DemoProject;
import truelead.editor.guide.GuideView;
import truelead.editor.lesson.LessonView;
import truelead.editor.thread.ThreadView;

/** Sees by what comes to the front and by changes of the demo program which steps a person has done, by our links or without. */
final class Watch implements IPartListener2, IDocumentListener {

	private static final Map<String, Step> VIEWS = Map.of(GuideView.ID, Step.RULE, ThreadView.ID, Step.DRAWING, LessonView.ID, Step.WHY,
			AuditView.ID, Step.REPORT);

	private final Consumer<Step> done;
	private Optional<IDocument> watched = Optional.empty();

	Watch(Consumer<Step> done) {
		this.done = done;
	}

	@Override
	public void partActivated(IWorkbenchPartReference part) {
		Optional.ofNullable(VIEWS.get(part.getId())).ifPresent(done);
		if (part.getPart(false) instanceof CheckedEditor editor && editor.getEditorInput().getName().equals(DemoProject.FIRST)) {
			done.accept(Step.OPEN);
			watch(Optional.ofNullable(editor.getDocumentProvider().getDocument(editor.getEditorInput())));
		}
	}

	/** Watches this document and no other. */
	void watch(Optional<IDocument> document) {
		watched.ifPresent(before -> before.removeDocumentListener(this));
		watched = document;
		watched.ifPresent(now -> now.addDocumentListener(this));
	}

	@Override
	public void documentAboutToBeChanged(DocumentEvent event) {
		// only what has changed counts
	}

	@Override
	public void documentChanged(DocumentEvent event) {
		// a fix writes a word at once, which nobody types
		if (event.getText() != null && event.getText().strip().length() > 1) {
			done.accept(Step.FIX);
		}
	}
}
