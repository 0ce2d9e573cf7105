package truelead.editor.check;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.ui.IEditorInput;
import truelead.checker.EditedProgram;
import truelead.checker.machine.Budget;
import truelead.editor.settings.EditorSettings;
import truelead.grammar.ProgramText;

/**
 * Keeps what an open editor shows of its program's findings in step with its text. The check runs on the reconciler's thread; a result
 * for text that has changed since is dropped, because the next check is already due.
 */
public final class LiveCheck {

	private final CheckedEditor editor;
	private final List<Listener> listeners = new CopyOnWriteArrayList<>();
	private final EditedProgram open = new EditedProgram();
	private volatile CheckedText last;
	private volatile Optional<EditTrail> trail = Optional.empty();
	private volatile Runnable again = () -> {
	};

	/** Is told of every new result, on the thread of the check. */
	public interface Listener {
		/** The program was checked. */
		void checked(CheckedText checked);
	}

	public LiveCheck(CheckedEditor editor) {
		this.editor = editor;
	}

	/** Adds one who is told of new results until the editor is closed. */
	public void addListener(Listener listener) {
		listeners.add(listener);
	}

	/** Leaves one out from now on. */
	public void removeListener(Listener listener) {
		listeners.remove(listener);
	}

	/** Says what starts a check of unchanged text. */
	void again(Runnable start) {
		again = start;
	}

	/** Checks the text once more, soon, though it has not changed. */
	public void again() {
		again.run();
	}

	/** The newest result; empty until the first check is through. It may be of text that was edited since. */
	public Optional<CheckedText> last() {
		return Optional.ofNullable(last);
	}

	/** From now on the text is that of this document. */
	void follow(IDocument document) {
		leave();
		trail = Optional.of(new EditTrail(document));
	}

	/** The editor is closed, or shows another text. */
	void leave() {
		trail.ifPresent(EditTrail::leave);
		trail = Optional.empty();
	}

	/** The document's text, sharing all that has not changed with the text checked last; for any thread. */
	public ProgramText textOf(IDocument document) {
		return snapshot(document).text();
	}

	private EditTrail.Snapshot snapshot(IDocument document) {
		return trail.filter(followed -> followed.document() == document).map(EditTrail::now)
				.orElseGet(() -> new EditTrail.Snapshot(ProgramText.of(document.get()), CheckedText.stampOf(document)));
	}

	/** What is found in the document as it stands now: known already, or checked; for any thread but the UI's. */
	public CheckedText now(IDocument document) {
		CheckedText known = last;
		if (known != null && known.isOf(document)) {
			return known;
		}
		EditTrail.Snapshot text = snapshot(document);
		ProgramCheck check = ProgramCheck.of(editor.getEditorInput());
		return check.run(text.text(), text.stamp(), Budget.forEditing(check.machine(), () -> false), open);
	}

	/** Checks the document as it stands now and shows what is found; for any thread but the UI's. */
	void run(IDocument document) {
		if (editor.getDocumentProvider() == null || editor.getEditorInput() == null) {
			return;
		}
		IEditorInput input = editor.getEditorInput();
		IAnnotationModel model = editor.getDocumentProvider().getAnnotationModel(input);
		EditTrail.Snapshot text = snapshot(document);
		long stamp = text.stamp();
		ProgramCheck check = ProgramCheck.of(input);
		CheckedText checked = check.run(text.text(), stamp,
				Budget.forEditing(check.machine(), () -> stamp != CheckedText.stampOf(document)), open);
		if (stamp != CheckedText.stampOf(document) || model == null) {
			return;
		}
		last = checked;
		if (EditorSettings.warnsWhileTyping() || !editor.isDirty()) {
			FindingAnnotations.show(checked, document, model);
		}
		listeners.forEach(listener -> listener.checked(checked));
		markersIfSaved(input);
	}

	/** The text is on disk as it stands: the findings go to the Problems view, and into the text where they waited for that. */
	public void saved() {
		if (editor.getEditorInput() != null) {
			markersIfSaved(editor.getEditorInput());
			if (!EditorSettings.warnsWhileTyping()) {
				again();
			}
		}
	}

	/** The file of the workspace that is checked; empty for a program elsewhere. */
	Optional<IFile> file() {
		return Optional.ofNullable(editor.getEditorInput()).map(input -> Adapters.adapt(input, IFile.class));
	}

	private void markersIfSaved(IEditorInput input) {
		CheckedText checked = last;
		IFile file = Adapters.adapt(input, IFile.class);
		if (checked == null || file == null || editor.getDocumentProvider() == null || editor.isDirty()) {
			return;
		}
		IDocument document = editor.getDocumentProvider().getDocument(input);
		if (document != null && checked.isOf(document)) {
			FindingMarkers.schedule(file, checked);
		}
	}
}
