package truelead.editor.fix;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import org.eclipse.text.edits.TextEdit;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.text.undo.IDocumentUndoManager;
import org.eclipse.ui.PlatformUI;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Fix;
import truelead.editor.check.CheckedText;
import truelead.editor.check.FixOffer;

/** The text replacements of one or more fixes, as one change of a document that one undo takes back. */
public final class FixEdit {

	private FixEdit() {
	}

	/**
	 * Applies the fixes, made for the document's present text; where two of them overlap the first one counts. Gives where the first change
	 * stands.
	 */
	public static Optional<Integer> apply(IDocument document, CheckedText checked, List<Fix> fixes) throws BadLocationException {
		MultiTextEdit all = new MultiTextEdit();
		fixes.stream().filter(fix -> FixOffer.possible(checked, fix)).forEach(fix -> add(all, fix));
		if (!all.hasChildren()) {
			return Optional.empty();
		}
		IDocumentUndoManager undo = DocumentUndoManagerRegistry.getDocumentUndoManager(document);
		if (undo != null) {
			undo.beginCompoundChange();
		}
		try {
			all.apply(document, TextEdit.UPDATE_REGIONS);
		} finally {
			if (undo != null) {
				undo.endCompoundChange();
			}
		}
		return Optional.of(all.getOffset());
	}

	/** Whether a document's file can be written; a person is asked where the workbench asks for that, as when a key is pressed. */
	static boolean mayChange(IDocument document) {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(document);
		if (buffer == null) {
			return true;
		}
		try {
			if (!buffer.isStateValidated()) {
				buffer.validateState(new NullProgressMonitor(), PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell());
			}
		} catch (CoreException refused) {
			return false;
		}
		return buffer.getFileStore() == null || !buffer.getFileStore().fetchInfo().getAttribute(EFS.ATTRIBUTE_READ_ONLY);
	}

	private static void add(MultiTextEdit all, Fix fix) {
		List<ReplaceEdit> edits = fix.edits().stream().sorted(Comparator.comparingInt(edit -> edit.at().offset())).map(FixEdit::replacement)
				.toList();
		if (edits.stream().noneMatch(edit -> overlaps(all, edit))) {
			edits.forEach(all::addChild);
		}
	}

	private static ReplaceEdit replacement(Edit edit) {
		return new ReplaceEdit(edit.at().offset(), edit.at().span().length(), edit.text());
	}

	private static boolean overlaps(MultiTextEdit all, ReplaceEdit edit) {
		for (TextEdit other : all.getChildren()) {
			if (edit.getOffset() < other.getExclusiveEnd() && other.getOffset() < edit.getExclusiveEnd()
					|| edit.getOffset() == other.getOffset()) {
				return true;
			}
		}
		return false;
	}
}
