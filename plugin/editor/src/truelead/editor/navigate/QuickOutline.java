package truelead.editor.navigate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.ITextSelection;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.editor.command.ProgramCommand;
import truelead.editor.outline.Entry;
import truelead.editor.outline.OutlineReader;
import truelead.editor.outline.QuickPick;

/** Shows the outline over the program, to go to a tool, an operation or a hole by typing some of its name. */
public final class QuickOutline extends ProgramCommand {

	@Override
	protected void run(CheckedEditor editor) {
		Optional<CheckedText> checked = editor.check().last();
		if (checked.isEmpty()) {
			return;
		}
		OptionalInt line = editor.getSelectionProvider().getSelection() instanceof ITextSelection caret
				? OptionalInt.of(caret.getStartLine()) : OptionalInt.empty();
		Job job = Job.create("Outline", (ICoreRunnable) monitor -> {
			List<Entry> entries = new OutlineReader(checked.get()).read();
			editor.getSite().getShell().getDisplay().asyncExec(() -> QuickPick.open(editor, "Tools, operations and holes", entries, line));
		});
		job.setSystem(true);
		job.schedule();
	}
}
