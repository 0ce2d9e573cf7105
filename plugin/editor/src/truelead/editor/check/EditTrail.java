package truelead.editor.check;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentExtension4;
import org.eclipse.jface.text.IDocumentListener;
import truelead.grammar.ProgramText;

/**
 * Follows a document from edit to edit, so that its text as the checker reads it is made of the one before and of what was typed: a key in
 * a program of a million blocks copies a few thousand of them and not all.
 */
final class EditTrail implements IDocumentListener {

	/** Longer trails, and longer edits (characters), are gone along by looking for what differs. */
	private static final int MOST = 64;
	private static final int LONGEST = 1 << 16;

	private final IDocument document;
	private final List<Edit> edits = new ArrayList<>();
	/** The trail does not lead from the last text to that of now. */
	private boolean broken = true;
	private boolean changing;
	private Snapshot last = new Snapshot(ProgramText.of(""), IDocumentExtension4.UNKNOWN_MODIFICATION_STAMP);

	/** What was replaced by what, and the document's stamp behind it. */
	private record Edit(int offset, int length, String text, long stamp) {
	}

	/** A text of the document, and the stamp that it had with it. */
	record Snapshot(ProgramText text, long stamp) {
	}

	/** Follows a document until {@link #leave()}. */
	EditTrail(IDocument document) {
		this.document = document;
		document.addPrenotifiedDocumentListener(this);
	}

	IDocument document() {
		return document;
	}

	void leave() {
		document.removePrenotifiedDocumentListener(this);
	}

	@Override
	public void documentAboutToBeChanged(DocumentEvent event) {
		synchronized (edits) {
			changing = true;
		}
	}

	@Override
	public void documentChanged(DocumentEvent event) {
		synchronized (edits) {
			changing = false;
			String text = event.getText() == null ? "" : event.getText();
			edits.add(new Edit(event.getOffset(), event.getLength(), text, event.getModificationStamp()));
			if (edits.size() > MOST || event.getLength() > LONGEST || text.length() > LONGEST) {
				edits.clear();
				broken = true;
			}
		}
	}

	/**
	 * The text with its stamp, as it stands now, or stood a moment ago where it is being edited; for any thread, but not while the document
	 * tells of a change.
	 */
	synchronized Snapshot now() {
		// asked for outside the lock: the document has a lock of its own, which is held when it tells of a change
		long stamp = CheckedText.stampOf(document);
		List<Edit> fresh;
		boolean anew;
		synchronized (edits) {
			fresh = List.copyOf(edits);
			anew = broken || !changing && fresh.isEmpty() && last.stamp != stamp;
			edits.clear();
			broken = false;
		}
		last = anew ? read() : along(fresh);
		return last;
	}

	private Snapshot along(List<Edit> fresh) {
		Snapshot now = last;
		for (Edit edit : fresh) {
			now = new Snapshot(now.text().edit(edit.offset, edit.length, edit.text), edit.stamp);
		}
		return now;
	}

	/** All of the text; one that is edited meanwhile is left to the next time. */
	private Snapshot read() {
		long stamp = CheckedText.stampOf(document);
		String text = document.get();
		synchronized (edits) {
			if (changing || !edits.isEmpty() || broken) {
				broken = true;
				edits.clear();
				stamp = IDocumentExtension4.UNKNOWN_MODIFICATION_STAMP;
			}
		}
		return new Snapshot(last.text().length() == 0 ? ProgramText.of(text) : last.text().changedTo(text), stamp);
	}
}
