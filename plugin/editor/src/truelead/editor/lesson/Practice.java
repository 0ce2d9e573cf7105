package truelead.editor.lesson;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;
import truelead.checker.CheckResult;
import truelead.checker.lesson.Exercise;
import truelead.editor.EditorIds;
import truelead.editor.check.ProgramCheck;
import truelead.editor.demo.DemoProject;

/** An exercise being done: its program in the demo project, looked at after every change until nothing is left to find. */
final class Practice implements IDocumentListener {

	/** A person pauses that long after typing, ms. */
	private static final int PAUSE = 400;
	private final Exercise exercise;
	private final Consumer<String> say;
	private final Job look;
	private ProgramCheck check;
	private Optional<IDocument> document = Optional.empty();
	private volatile String text = "";

	Practice(Exercise exercise, Consumer<String> say) {
		this.exercise = exercise;
		this.say = say;
		this.look = Job.createSystem("Exercise " + exercise.file(), (ICoreRunnable) monitor -> look());
	}

	/** Opens the program, made anew where it is not there. */
	void open(IWorkbenchPage page) {
		try {
			DemoProject.create(new NullProgressMonitor());
			IFile file = DemoProject.inWorkspace().getFile("exercise-" + exercise.file());
			if (!file.exists()) {
				file.create(new ByteArrayInputStream(exercise.program().getBytes(StandardCharsets.UTF_8)), false,
						new NullProgressMonitor());
			}
			check = ProgramCheck.of(file);
			IEditorPart part = IDE.openEditor(page, file, EditorIds.EDITOR);
			if (part instanceof ITextEditor editor) {
				IDocument opened = editor.getDocumentProvider().getDocument(editor.getEditorInput());
				opened.addDocumentListener(this);
				document = Optional.of(opened);
				text = opened.get();
				look.schedule();
			}
		} catch (CoreException cannot) {
			ILog.of(Practice.class).log(cannot.getStatus());
			say.accept(cannot.getStatus().getMessage());
		}
	}

	/** Looks no longer. */
	void end() {
		document.ifPresent(opened -> opened.removeDocumentListener(this));
		look.cancel();
	}

	@Override
	public void documentAboutToBeChanged(DocumentEvent event) {
		// only what comes of it matters
	}

	@Override
	public void documentChanged(DocumentEvent event) {
		text = event.getDocument().get();
		look.cancel();
		look.schedule(PAUSE);
	}

	private void look() {
		CheckResult given = check.run(exercise.program(), 0).result();
		List<String> left = Exercise.left(given, check.run(text, 0).result());
		String words = left.isEmpty() ? "Done: nothing is left to find. " + exercise.task() : exercise.task() + " Left: " + left.get(0);
		Display.getDefault().asyncExec(() -> say.accept(words));
	}
}
