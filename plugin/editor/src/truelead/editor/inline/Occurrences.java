package truelead.editor.inline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import org.eclipse.jface.viewers.IPostSelectionProvider;
import truelead.checker.edit.Name;
import truelead.checker.edit.Places;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.grammar.ProgramText;

/**
 * Marks the other places of what the caret stands on: a variable, a block number, a label, a word with its number. Looked for off the UI
 * thread.
 */
public final class Occurrences extends Job {

	private static final String TYPE = "truelead.editor.occurrence";
	private static final int MOST = 500;

	private final CheckedEditor editor;
	private volatile int caret;

	private Occurrences(CheckedEditor editor) {
		super("Occurrences in a program");
		this.editor = editor;
		setSystem(true);
		setPriority(DECORATE);
	}

	/** Keeps an editor's marks in step with its caret, until it is closed. */
	public static void install(CheckedEditor editor) {
		Occurrences occurrences = new Occurrences(editor);
		((IPostSelectionProvider) editor.getSelectionProvider()).addPostSelectionChangedListener(event -> {
			if (event.getSelection() instanceof ITextSelection selection) {
				occurrences.caret = selection.getOffset();
				occurrences.cancel();
				occurrences.schedule();
			}
		});
		editor.viewer().getTextWidget().addDisposeListener(event -> occurrences.cancel());
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Optional<CheckedText> checked = editor.check().last();
		if (checked.isEmpty() || editor.getDocumentProvider() == null) {
			return Status.OK_STATUS;
		}
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		IAnnotationModel model = editor.getDocumentProvider().getAnnotationModel(editor.getEditorInput());
		if (document == null || model == null) {
			return Status.OK_STATUS;
		}
		ProgramText text = editor.check().textOf(document);
		int offset = Math.min(caret, text.length());
		int line = text.lineOf(offset);
		Places places = new Places(text, checked.get().result().work().shop().profile());
		Optional<Name> name = places.at(line, offset - text.lineStart(line));
		List<Places.Place> found = name.map(sought -> places.of(sought, line, MOST, monitor::isCanceled)).orElse(List.of());
		if (!monitor.isCanceled()) {
			show(model, text, found.size() < 2 ? List.of() : found, document.getLength());
		}
		return Status.OK_STATUS;
	}

	private static void show(IAnnotationModel model, ProgramText text, List<Places.Place> found, int length) {
		List<Annotation> gone = new ArrayList<>();
		for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
			Annotation annotation = all.next();
			if (annotation.getType().equals(TYPE)) {
				gone.add(annotation);
			}
		}
		Map<Annotation, Position> fresh = new HashMap<>();
		for (Places.Place place : found) {
			int start = text.lineStart(place.line()) + place.name().span().start();
			if (start + place.name().span().length() <= length) {
				String says = place.name().defines() ? "set or begun here" : "also here";
				fresh.put(new Annotation(TYPE, false, says), new Position(start, place.name().span().length()));
			}
		}
		if (!gone.isEmpty() || !fresh.isEmpty()) {
			((IAnnotationModelExtension) model).replaceAnnotations(gone.toArray(Annotation[]::new), fresh);
		}
	}
}
