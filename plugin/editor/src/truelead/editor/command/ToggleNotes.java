package truelead.editor.command;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import truelead.editor.EditorIds;
import truelead.editor.ProgramEditor;
import truelead.editor.look.OperationNotes;

/** Shows the notes behind threading blocks, or hides them, in all programs. */
public final class ToggleNotes extends ProgramCommand {

	@Override
	protected void run(ProgramEditor editor) {
		boolean shown = !OperationNotes.shown();
		IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE);
		preferences.putBoolean(OperationNotes.SHOWN, shown);
		try {
			preferences.flush();
			say(editor, false, shown ? "notes behind threading blocks are shown" : "notes behind threading blocks are hidden");
		} catch (BackingStoreException cannotSave) {
			say(editor, true, "the setting could not be saved: " + cannotSave.getMessage());
		}
	}
}
