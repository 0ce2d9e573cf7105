package truelead.editor.command;

import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import truelead.checker.edit.Change;
import truelead.checker.profile.MachineProfile;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.grammar.ProgramText;

/** A command that changes some lines of the program; the change is worked out off the UI thread and undone in one step. */
abstract class ChangeCommand extends ProgramCommand {

	/** More lines than this are changed in pieces, which can be given up: at once they would hold the screen. */
	private static final int MANY = 100_000;

	/** A range of lines, from 0, both ends in it. */
	record Lines(int first, int last) {
	}

	/** Works out and makes a change of the lines selected; with {@code whole}, of all lines where no more than one is selected. */
	static void change(CheckedEditor editor, boolean whole, String nothing, ChangeOf change) {
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		Lines selected = selected(editor);
		Lines lines = whole && selected.first == selected.last ? new Lines(0, document.getNumberOfLines() - 1) : selected;
		long stamp = CheckedText.stampOf(document);
		MachineProfile machine = editor.check().last().map(checked -> checked.result().work().shop().profile())
				.orElse(MachineProfile.generic());
		if (lines.last - lines.first > MANY) {
			inPieces(editor, document, () -> new Changes(worked(editor, document, machine, lines, change), Optional.empty(),
					stamp), nothing);
			return;
		}
		Display display = Display.getCurrent();
		Job job = Job.create("Changing the program", (ICoreRunnable) monitor -> {
			Changes changes = Changes.of(worked(editor, document, machine, lines, change), document, stamp);
			display.asyncExec(() -> changes.make(editor, document, nothing));
		});
		job.setSystem(true);
		job.schedule();
	}

	private static Change worked(CheckedEditor editor, IDocument document, MachineProfile machine, Lines lines, ChangeOf change) {
		ProgramText text = editor.check().textOf(document);
		return change.of(text, machine, new Lines(lines.first, Math.min(lines.last, text.lineCount() - 1)));
	}

	/** The keys wait, and after a moment a dialog says how far it is and lets it be given up. */
	private static void inPieces(CheckedEditor editor, IDocument document, Supplier<Changes> worked, String nothing) {
		Display display = Display.getCurrent();
		try {
			PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
				Changes changes = worked.get();
				if (!monitor.isCanceled()) {
					changes.makeInPieces(editor, document, nothing, display, monitor);
				}
			});
		} catch (InvocationTargetException failed) {
			ILog.of(ChangeCommand.class).error("A program could not be changed", failed.getCause());
		} catch (InterruptedException givenUp) {
			say(editor, true, "given up: nothing was changed");
		}
	}

	/** What is to change. */
	interface ChangeOf {
		/** Works it out; on a thread of its own. */
		Change of(ProgramText text, MachineProfile machine, Lines lines);
	}

	/** The lines of the selection; a selection that ends at the start of a line does not reach it. */
	private static Lines selected(CheckedEditor editor) {
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
