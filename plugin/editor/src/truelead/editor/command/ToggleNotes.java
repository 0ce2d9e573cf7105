package truelead.editor.command;

import truelead.editor.check.CheckedEditor;
import truelead.editor.settings.EditorSettings;

/** Shows the notes behind threading blocks, or hides them, in all programs. */
public final class ToggleNotes extends ProgramCommand {

	@Override
	protected void run(CheckedEditor editor) {
		boolean shown = !EditorSettings.showsNotes();
		EditorSettings.showNotes(shown);
		say(editor, false, shown ? "notes behind threading blocks are shown" : "notes behind threading blocks are hidden");
	}
}
