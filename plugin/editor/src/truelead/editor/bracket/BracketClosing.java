package truelead.editor.bracket;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewerExtension;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.VerifyKeyListener;
import org.eclipse.swt.events.VerifyEvent;
import org.eclipse.swt.graphics.Point;
import truelead.editor.check.CheckedEditor;
import truelead.grammar.Block;
import truelead.grammar.BlockReader;

/**
 * Closes the parenthesis of a comment and the bracket of an expression as they are opened, types over the closing one, and takes it back
 * with the opening one. Only a closing one put in here is typed over or taken back.
 */
public final class BracketClosing implements VerifyKeyListener {

	private static final int LONGEST = 4000;
	private static final int MOST = 20;

	private final CheckedEditor editor;
	private final List<Position> closed = new ArrayList<>();

	private BracketClosing(CheckedEditor editor) {
		this.editor = editor;
	}

	/** Hangs it on an editor's keys. */
	public static void install(CheckedEditor editor) {
		((ITextViewerExtension) editor.viewer()).prependVerifyKeyListener(new BracketClosing(editor));
	}

	@Override
	public void verifyKey(VerifyEvent event) {
		ISourceViewer viewer = editor.viewer();
		Point selection = viewer.getSelectedRange();
		if (!event.doit || !viewer.isEditable() || selection.y > 0 || viewer.getTextWidget().getBlockSelection()) {
			return;
		}
		try {
			IDocument document = viewer.getDocument();
			switch (event.character) {
				case '(' -> event.doit = !open(document, selection.x, "()");
				case '[' -> event.doit = !open(document, selection.x, "[]");
				case ')', ']' -> event.doit = !typeOver(document, selection.x, event.character);
				case SWT.BS -> event.doit = !takeBack(document, selection.x, event.stateMask);
				default -> {
					// of no concern
				}
			}
		} catch (BadLocationException edited) {
			event.doit = true;
		}
	}

	/** Puts in both where nothing but white space or a closing one follows and no comment is about the place. */
	private boolean open(IDocument document, int offset, String both) throws BadLocationException {
		IRegion line = document.getLineInformationOfOffset(offset);
		int column = offset - line.getOffset();
		if (line.getLength() > LONGEST || !editor.validateEditorInputState()) {
			return false;
		}
		Block block = BlockReader.read(document.get(line.getOffset(), line.getLength()));
		boolean inComment = block.comments().stream().anyMatch(comment -> comment.span().start() < column
				&& (column < comment.span().end() || !comment.closed() || comment.textSpan().end() == comment.span().end()));
		char next = column < line.getLength() ? block.text().charAt(column) : ' ';
		if (inComment || next > ' ' && next != ')' && next != ']') {
			return false;
		}
		document.replace(offset, 0, both);
		Position position = new Position(offset + 1, 1);
		document.addPosition(position);
		closed.add(position);
		while (closed.size() > MOST) {
			document.removePosition(closed.remove(0));
		}
		editor.viewer().setSelectedRange(offset + 1, 0);
		return true;
	}

	private boolean typeOver(IDocument document, int offset, char bracket) throws BadLocationException {
		if (offset >= document.getLength() || document.getChar(offset) != bracket || !forget(document, offset)) {
			return false;
		}
		editor.viewer().setSelectedRange(offset + 1, 0);
		return true;
	}

	private boolean takeBack(IDocument document, int offset, int modifiers) throws BadLocationException {
		if (modifiers != 0 || offset < 1 || offset >= document.getLength() || "([".indexOf(document.getChar(offset - 1)) < 0
				|| !forget(document, offset)) {
			return false;
		}
		document.replace(offset - 1, 2, "");
		return true;
	}

	/** Whether a closing one that was put in here stands at the offset; it is a character like any other from now on. */
	private boolean forget(IDocument document, int offset) {
		closed.removeIf(Position::isDeleted);
		for (Position position : closed) {
			if (position.getOffset() == offset && position.getLength() == 1) {
				closed.remove(position);
				document.removePosition(position);
				return true;
			}
		}
		return false;
	}
}
