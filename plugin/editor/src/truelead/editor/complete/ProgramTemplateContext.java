package truelead.editor.complete;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.templates.DocumentTemplateContext;
import org.eclipse.jface.text.templates.TemplateContextType;
import truelead.checker.edit.Sequence;
import truelead.checker.work.Work;
import truelead.grammar.ProgramText;

/** A place in a program that a template goes to, with what is known of the program. */
final class ProgramTemplateContext extends DocumentTemplateContext {

	private final Work work;

	ProgramTemplateContext(TemplateContextType type, IDocument document, int offset, int length, Work work) {
		super(type, document, offset, length);
		this.work = work;
	}

	/** The program's work when it was last checked. */
	Work work() {
		return work;
	}

	/** The lines above the place, as far as a callout counts for it. */
	ProgramText above() {
		try {
			int line = getDocument().getLineOfOffset(getStart());
			int from = getDocument().getLineOffset(Math.max(0, line - Sequence.NEAR));
			return ProgramText.of(getDocument().get(from, getStart() - from));
		} catch (BadLocationException edited) {
			return ProgramText.of("");
		}
	}
}
