package truelead.workbench;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/** A program open in the editor, seen as a person sees it. */
record OpenProgram(ITextEditor editor) {

	/** A finding on the screen: rule and message do not show in the text, so this is its type, its words and what it stands under. */
	record Shown(String type, String message, String under, int offset) {
	}

	/** A file of a fresh project with that text. */
	static IFile file(String name, String text) {
		try {
			IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject("shop");
			if (!project.exists()) {
				project.create(null);
			}
			project.open(null);
			IFile file = project.getFile(name);
			if (file.exists()) {
				file.delete(true, null);
			}
			file.create(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), true, null);
			return file;
		} catch (CoreException cannot) {
			throw new AssertionError(cannot);
		}
	}

	/** Opens a file of the workspace with whatever editor the workbench chooses. */
	static OpenProgram open(IFile file) {
		return open(page -> IDE.openEditor(page, file));
	}

	/** Opens a file that is in no project. */
	static OpenProgram open(Path file) {
		return open(page -> IDE.openEditorOnFileStore(page, EFS.getLocalFileSystem().getStore(file.toUri())));
	}

	private interface Opener {
		IEditorPart open(IWorkbenchPage page) throws PartInitException;
	}

	private static OpenProgram open(Opener opener) {
		try {
			IEditorPart part = opener.open(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage());
			OpenProgram program = new OpenProgram((ITextEditor) part);
			program.focus();
			return program;
		} catch (PartInitException cannot) {
			throw new AssertionError(cannot);
		}
	}

	/** Puts the focus into the text, as a click would: without a window manager nobody does when a dialog closes. */
	void focus() {
		Screen.toFront();
		Screen.focus("the text", widget());
		Screen.idle(100);
	}

	/** Closes every editor without saving. */
	static void closeAll() {
		PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().closeAllEditors(false);
		Screen.settle();
	}

	StyledText widget() {
		return (StyledText) editor.getAdapter(Control.class);
	}

	IDocument document() {
		return editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}

	private IAnnotationModel model() {
		return editor.getDocumentProvider().getAnnotationModel(editor.getEditorInput());
	}

	/** The findings that stand in the text now. */
	List<Shown> findings() {
		List<Shown> shown = new ArrayList<>();
		for (Iterator<Annotation> all = model().getAnnotationIterator(); all.hasNext();) {
			Annotation annotation = all.next();
			Position position = model().getPosition(annotation);
			String type = annotation.getType();
			if (position != null && type.startsWith("truelead.editor.") && !type.endsWith(".saved") && !type.endsWith(".occurrence")) {
				String under = document().get().substring(position.getOffset(), position.getOffset() + position.getLength());
				shown.add(new Shown(type.substring("truelead.editor.".length()), annotation.getText(), under, position.getOffset()));
			}
		}
		return shown;
	}

	/** Waits for a finding whose message holds the words. */
	Shown waitFor(String words) {
		Screen.waitUntil("a finding that says " + words + ", not " + findings(), () -> findings().stream().anyMatch(f -> f.message()
				.contains(words)));
		return findings().stream().filter(f -> f.message().contains(words)).findFirst().orElseThrow();
	}

	/** Waits until no finding's message holds the words. */
	void waitGone(String words) {
		Screen.waitUntil("no finding that says " + words + " in " + document().get(), () -> findings().stream().noneMatch(f -> f.message()
				.contains(words)));
	}

	/** Sets the caret behind the first place where the text stands, as a click would. */
	void caretBehind(String text) {
		int at = widget().getText().indexOf(text);
		if (at < 0) {
			throw new AssertionError("no " + text + " on the screen");
		}
		widget().setSelection(at + text.length());
		Screen.settle();
	}

	/** Waits for markers of a type on a file and gives their messages. */
	static List<String> markers(IFile file, String type) {
		try {
			List<String> messages = new ArrayList<>();
			for (IMarker marker : file.findMarkers(type, true, IResource.DEPTH_ZERO)) {
				messages.add(marker.getAttribute(IMarker.MESSAGE, ""));
			}
			return messages;
		} catch (CoreException gone) {
			throw new AssertionError(gone);
		}
	}
}
