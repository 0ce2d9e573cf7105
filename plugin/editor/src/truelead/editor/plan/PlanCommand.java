package truelead.editor.plan;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.TextUtilities;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Display;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.editor.command.ProgramCommand;
import truelead.editor.page.PageTray;

/** A command that opens the wizard on the program as it stands. */
abstract class PlanCommand extends ProgramCommand {

	private static final int WIDTH = 1150;
	private static final int HEIGHT = 620;

	/** What the wizard starts with at a line from 0; empty where there is nothing to start with, which {@link #nothing()} says. */
	abstract Optional<Question> question(CheckedText checked, int line);

	/** Why the wizard does not open. */
	abstract String nothing();

	@Override
	protected final void run(CheckedEditor editor) {
		IDocument document = editor.viewer().getDocument();
		Optional<CheckedText> last = editor.check().last();
		if (last.isEmpty()) {
			say(editor, true, "the program has not been checked yet: try again");
			return;
		}
		int caret = editor.viewer().getSelectedRange().x;
		long stamp = CheckedText.stampOf(document);
		Display display = Display.getCurrent();
		Job job = Job.create("Planning a thread", (ICoreRunnable) monitor -> {
			try {
				int line = document.getLineOfOffset(caret);
				CheckedText checked = last.get().stamp() == stamp ? last.get() : last.get().check().run(document.get(), stamp);
				Optional<Question> question = question(checked, line);
				display.asyncExec(() -> question.ifPresentOrElse(asked -> open(editor, document, stamp, caret, asked),
						() -> say(editor, true, nothing())));
			} catch (BadLocationException edited) {
				display.asyncExec(() -> say(editor, true, "the program was edited meanwhile: try again"));
			}
		});
		job.setSystem(true);
		job.schedule();
	}

	private static void open(CheckedEditor editor, IDocument document, long stamp, int caret, Question question) {
		if (editor.viewer() == null || editor.viewer().getTextWidget() == null || editor.viewer().getTextWidget().isDisposed()
				|| stamp != CheckedText.stampOf(document)) {
			return;
		}
		say(editor, false, "");
		PlanWizard wizard = new PlanWizard(question, lines -> insert(editor, document, question.line() < 0 ? caret : -1,
				question.line(), lines));
		WizardDialog dialog = new WizardDialog(editor.getSite().getShell(), wizard);
		dialog.setHelpAvailable(true);
		dialog.setPageSize(WIDTH, HEIGHT);
		dialog.create();
		PageTray.install(dialog.getShell(), "threads-at-the-bench");
		dialog.open();
	}

	/** Puts the blocks on lines of their own: before a line, or at the caret's, behind what stands there. One step to undo. */
	private static boolean insert(CheckedEditor editor, IDocument document, int caret, int before, List<String> lines) {
		if (!editor.validateEditorInputState()) {
			return false;
		}
		String end = TextUtilities.getDefaultLineDelimiter(document);
		String text = String.join(end, lines);
		try {
			int line = caret < 0 ? before : document.getLineOfOffset(caret);
			int start = document.getLineOffset(line);
			int length = document.getLineInformation(line).getLength();
			boolean behind = caret > start && !document.get(start, length).isBlank();
			int at = behind ? start + length : start;
			document.replace(at, 0, behind ? end + text : text + end);
			int first = at + (behind ? end.length() : 0);
			editor.selectAndReveal(first, 0);
			return true;
		} catch (BadLocationException edited) {
			say(editor, true, "the program was edited meanwhile: nothing was put in");
			return true;
		}
	}
}
