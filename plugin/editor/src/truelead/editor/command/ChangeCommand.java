package truelead.editor.command;

import java.util.function.BiFunction;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.widgets.Display;
import truelead.checker.edit.Change;
import truelead.checker.machine.MachineProfile;
import truelead.editor.ProgramEditor;
import truelead.editor.check.CheckedText;
import truelead.grammar.ProgramText;

/** A command that changes some lines of the program; the change is worked out off the UI thread and undone in one step. */
abstract class ChangeCommand extends ProgramCommand {

	/** More lines than this may take a while: it is shown that they do, and the person can give it up. */
	private static final int MANY = 100_000;

	/** A range of lines, from 0, both ends in it. */
	record Lines(int first, int last) {
	}

	/** Works out and makes a change of the lines selected; with {@code whole}, of all lines where no more than one is selected. */
	static void change(ProgramEditor editor, boolean whole, String nothing, ChangeOf change) {
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		Lines selected = selected(editor);
		Lines lines = whole && selected.first == selected.last ? new Lines(0, document.getNumberOfLines() - 1) : selected;
		long stamp = CheckedText.stampOf(document);
		MachineProfile machine = editor.check().last().map(checked -> checked.result().work().shop().profile()).orElse(MachineProfile.generic());
		Display display = Display.getCurrent();
		Job job = Job.create("Changing the program", (ICoreRunnable) monitor -> {
			ProgramText text = editor.check().textOf(document);
			Change made = change.of(text, machine, new Lines(lines.first, Math.min(lines.last, text.lineCount() - 1)));
			Changes changes = Changes.of(made, document, stamp);
			if (!monitor.isCanceled()) {
				display.asyncExec(() -> changes.make(editor, document, nothing));
			}
		});
		job.setUser(lines.last - lines.first > MANY);
		job.setSystem(!job.isUser());
		job.schedule();
	}

	/** What is to change. */
	interface ChangeOf {
		/** Works it out; on a thread of its own. */
		Change of(ProgramText text, MachineProfile machine, Lines lines);
	}

	/** The lines of the selection; a selection that ends at the start of a line does not reach it. */
	private static Lines selected(ProgramEditor editor) {
		ITextSelection selection = (ITextSelection) editor.getSelectionProvider().getSelection();
		int last = selection.getEndLine();
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		try {
			if (last > selection.getStartLine() && selection.getOffset() + selection.getLength() == document.getLineOffset(last)) {
				last--;
			}
		} catch (org.eclipse.jface.text.BadLocationException edited) {
			return new Lines(selection.getStartLine(), selection.getStartLine());
		}
		return new Lines(Math.max(0, selection.getStartLine()), Math.max(0, last));
	}

	/** A change of a text's lines without more ado. */
	static ChangeOf plain(BiFunction<ProgramText, Lines, Change> change) {
		return (text, machine, lines) -> change.apply(text, lines);
	}
}
