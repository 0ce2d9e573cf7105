package truelead.editor.walk;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import truelead.editor.EditorIds;

/** Which steps of the walk are done, kept with the workspace. In a node of its own: a change of the settings checks open programs again. */
final class Progress {

	private static final IEclipsePreferences KEPT = InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE + "/walk");

	private Progress() {
	}

	static boolean isDone(Step step) {
		return KEPT.getBoolean(step.name(), false);
	}

	static void done(Step step) {
		KEPT.putBoolean(step.name(), true);
		save();
	}

	/** No step is done. */
	static void beginAgain() {
		for (Step step : Step.values()) {
			KEPT.remove(step.name());
		}
		save();
	}

	private static void save() {
		try {
			KEPT.flush();
		} catch (BackingStoreException cannotSave) {
			ILog.of(Progress.class).error("Cannot save preferences", cannotSave);
		}
	}
}
