package truelead.editor.navigate;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.check.ShownFindings;
import truelead.editor.command.ProgramCommand;
import truelead.editor.outline.Entry;
import truelead.editor.outline.QuickPick;

/** Shows the findings of the block at the caret and, below each, the other blocks that matter to it, to go to one. */
public final class RelatedBlocks extends ProgramCommand {

	@Override
	protected void run(CheckedEditor editor) {
		IDocument document = editor.viewer().getDocument();
		try {
			int line = document.getLineOfOffset(editor.viewer().getSelectedRange().x);
			IRegion region = document.getLineInformation(line);
			List<Entry> findings = ShownFindings.at(editor.viewer().getAnnotationModel(), region.getOffset(), region.getLength()).stream()
					.map(found -> new Entry(found.finding().message(), line, Optional.of(found.finding().severity()), related(found, line)))
					.toList();
			if (findings.isEmpty()) {
				say(editor, true, "nothing was found in this block");
			} else {
				QuickPick.open(editor, "Findings here and the blocks that matter to them", findings);
			}
		} catch (BadLocationException edited) {
			say(editor, true, "the program was edited meanwhile");
		}
	}

	/** One that is in another file leads no farther than the finding; the hover goes there. */
	private static List<Entry> related(FindingAnnotation found, int line) {
		return found.finding().related().stream().map(other -> new Entry(Visit.words(found.checked(), other.at(), other.what()),
				found.checked().here(other.at()) ? other.at().line() : line, Optional.empty(), List.of())).distinct().toList();
	}
}
