package truelead.editor.check;

import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.reconciler.MonoReconciler;
import truelead.editor.EditorIds;

/** The platform's reconciler, which also checks again when settings change. */
public final class CheckingReconciler extends MonoReconciler {

	private final LiveCheck check;
	private final IPreferenceChangeListener settingsListener = event -> forceReconciling();

	/** @param pause milliseconds without a key before the program is checked */
	public CheckingReconciler(LiveCheck check, int pause) {
		super(new CheckingStrategy(check), false);
		this.check = check;
		setDelay(pause);
	}

	@Override
	public void install(ITextViewer viewer) {
		super.install(viewer);
		InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE).addPreferenceChangeListener(settingsListener);
		check.again(this::forceReconciling);
	}

	@Override
	public void uninstall() {
		InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE).removePreferenceChangeListener(settingsListener);
		super.uninstall();
	}
}
