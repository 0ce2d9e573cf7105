package truelead.editor.navigate;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Path;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;
import truelead.checker.program.Location;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;

/** Goes to a block that a finding tells of: in the program in front, or in the file beside it that it calls. */
public final class Visit {

	private Visit() {
	}

	/** Selects the place; stays where it is if the place's file is not in the workspace. */
	public static void to(CheckedText checked, Location place) {
		IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
		if (!(page.getActiveEditor() instanceof CheckedEditor editor)) {
			return;
		}
		page.getNavigationHistory().markLocation(editor);
		if (checked.here(place)) {
			select(editor, place);
			editor.setFocus();
			return;
		}
		IFile program = Adapters.adapt(editor.getEditorInput(), IFile.class);
		IFile other = program == null ? null : program.getParent().getFile(new Path(place.file().name()));
		if (other != null && other.exists()) {
			try {
				if (IDE.openEditor(page, other) instanceof ITextEditor opened) {
					select(opened, place);
				}
			} catch (PartInitException cannotOpen) {
				ILog.of(Visit.class).log(cannotOpen.getStatus());
			}
		}
	}

	private static void select(ITextEditor editor, Location place) {
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		int start = Math.min(place.offset(), document.getLength());
		editor.selectAndReveal(start, Math.min(place.span().length(), document.getLength() - start));
	}

	/** A place in a line: {@code line 29 · the drill block · G99 G83 Z-14. R2.}, with its file where it is in another one. */
	public static String words(CheckedText checked, Location place, String what) {
		String file = checked.here(place) ? "" : " of " + place.file().name();
		return "line " + (place.line() + 1) + file + " \u00b7 " + what + " \u00b7 " + place.file().text().line(place.line()).strip();
	}
}
