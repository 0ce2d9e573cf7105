package truelead.editor.settings;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import truelead.editor.EditorIds;

/** What the editor shows, as a person likes it: in all programs of the workspace. */
public final class EditorSettings {

	/** Threading operations of a program above which there are no notes, where nothing is set. */
	public static final int MOST_NOTES = 400;

	private static final String TYPING = "findings.while-typing";
	private static final String NOTES = "notes.shown";
	private static final String MOST = "notes.most";

	private EditorSettings() {
	}

	/** Whether findings follow the typing; if not, they wait until the program is saved. */
	public static boolean warnsWhileTyping() {
		return node().getBoolean(TYPING, true);
	}

	/** Whether notes stand behind threading blocks. */
	public static boolean showsNotes() {
		return node().getBoolean(NOTES, true);
	}

	/** A program with more threading operations than this gets no notes. */
	public static int mostNotes() {
		return node().getInt(MOST, MOST_NOTES);
	}

	/** Shows notes, or hides them. */
	public static void showNotes(boolean shown) {
		save(warnsWhileTyping(), shown, mostNotes());
	}

	public static void save(boolean whileTyping, boolean withNotes, int most) {
		node().putBoolean(TYPING, whileTyping);
		node().putBoolean(NOTES, withNotes);
		node().putInt(MOST, most);
		try {
			node().flush();
		} catch (BackingStoreException cannotSave) {
			ILog.of(EditorSettings.class).error("Cannot save settings", cannotSave);
		}
	}

	private static IEclipsePreferences node() {
		return InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE);
	}
}
