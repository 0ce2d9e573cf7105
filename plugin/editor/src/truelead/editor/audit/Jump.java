package truelead.editor.audit;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/** Opens the program of a finding and selects what it points at; where lines have been put in since, the nearest line of the same text. */
final class Jump {

	private Jump() {
	}

	static void to(IWorkbenchPage page, AuditedFinding finding) {
		try {
			IEditorPart part = IDE.openEditor(page, finding.place());
			if (part instanceof ITextEditor editor) {
				IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
				IRegion line = document.getLineInformation(line(document, finding));
				int start = line.getOffset() + Math.min(finding.start(), line.getLength());
				int length = Math.min(finding.length(), line.getOffset() + line.getLength() - start);
				editor.selectAndReveal(start, length);
			}
		} catch (PartInitException | BadLocationException cannotOpen) {
			ILog.of(Jump.class).error("Cannot open " + finding.place().getFullPath(), cannotOpen);
		}
	}

	/** Opens a program and selects a line of it, from 0. */
	static void to(IWorkbenchPage page, IFile program, int line) {
		try {
			if (IDE.openEditor(page, program) instanceof ITextEditor editor && line >= 0) {
				IRegion region = editor.getDocumentProvider().getDocument(editor.getEditorInput()).getLineInformation(line);
				editor.selectAndReveal(region.getOffset(), region.getLength());
			}
		} catch (PartInitException | BadLocationException cannotOpen) {
			ILog.of(Jump.class).error("Cannot open " + program.getFullPath(), cannotOpen);
		}
	}

	private static int line(IDocument document, AuditedFinding finding) throws BadLocationException {
		int last = document.getNumberOfLines() - 1;
		for (int distance = 0; distance <= last; distance++) {
			for (int line : new int[] { finding.line() + distance, finding.line() - distance }) {
				if (line >= 0 && line <= last && text(document, line).equals(finding.block())) {
					return line;
				}
			}
		}
		return Math.min(finding.line(), last);
	}

	private static String text(IDocument document, int line) throws BadLocationException {
		IRegion region = document.getLineInformation(line);
		return document.get(region.getOffset(), region.getLength());
	}
}
