package truelead.editor.fix;

import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import truelead.audit.standing.AllowNote;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;

/** The note in a program that accepts a finding, as the audit and the quick fix key put it there. */
public final class AcceptNote {

	private AcceptNote() {
	}

	/**
	 * The note for a finding of a text that was checked; empty where there is no place for one. Takes as long as a check or two of the
	 * program.
	 */
	public static Optional<AllowNote> of(CheckedText checked, Finding finding, String reason) {
		return AllowNote.of(checked.program(), checked.result(), finding, reason, text -> checked.check().run(text.toString(), 0).result());
	}

	/** Puts it into the document, which has the text that was checked. */
	public static void put(IDocument document, AllowNote note, CheckedText checked) throws BadLocationException {
		document.replace(document.getLineOffset(note.line()), 0, note.text() + note.lineEnd(checked.program().text()));
	}

	/** What to say where there is no place for one. */
	public static String noPlace(MarkedFinding finding) {
		return finding.rule() + " in " + finding.program().getName() + ", line " + (finding.line() + 1)
				+ ": no place for a note was found that accepts this finding and no other. The accept file can hold it.";
	}
}
