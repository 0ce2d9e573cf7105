package truelead.editor.navigate;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import truelead.checker.edit.HoleBlocks;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.editor.command.ProgramCommand;
import truelead.editor.outline.Entry;
import truelead.editor.outline.QuickPick;

/** Shows all blocks that touch the holes of the block at the caret, to go to one. */
public final class HoleBlocksCommand extends ProgramCommand {

	@Override
	protected void run(CheckedEditor editor) {
		Optional<CheckedText> checked = editor.check().last();
		IDocument document = editor.viewer().getDocument();
		if (checked.isEmpty()) {
			return;
		}
		try {
			int line = document.getLineOfOffset(editor.viewer().getSelectedRange().x);
			Job job = Job.create("Blocks at a hole", (ICoreRunnable) monitor -> {
				List<Entry> holes = HoleBlocks.at(checked.get().result().work(), line).entrySet().stream()
						.map(hole -> new Entry(hole.getKey(), line, Optional.empty(),
								hole.getValue().stream().map(touch -> new Entry("line " + (touch.line() + 1) + " · " + touch.text(),
										touch.line(), Optional.empty(), List.of())).toList())).toList();
				editor.getSite().getShell().getDisplay().asyncExec(() -> {
					if (holes.isEmpty()) {
						say(editor, true, "this block touches no hole");
					} else {
						QuickPick.open(editor, "Blocks at this hole", holes);
					}
				});
			});
			job.setSystem(true);
			job.schedule();
		} catch (BadLocationException edited) {
			say(editor, true, "the program was edited meanwhile");
		}
	}
}
