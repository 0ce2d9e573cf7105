package truelead.editor.check;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.reconciler.MonoReconciler;
import truelead.editor.EditorIds;

/** The platform's reconciler, which also checks again when settings of the workspace or of the program's project change. */
public final class CheckingReconciler extends MonoReconciler {

	private final LiveCheck check;
	private final IPreferenceChangeListener workspaceSettings = event -> forceReconciling();
	private final IResourceChangeListener projectSettings = this::changed;

	/** @param pause milliseconds without a key before the program is checked */
	public CheckingReconciler(LiveCheck check, int pause) {
		super(new CheckingStrategy(check), false);
		this.check = check;
		setDelay(pause);
	}

	@Override
	public void install(ITextViewer viewer) {
		super.install(viewer);
		InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE).addPreferenceChangeListener(workspaceSettings);
		ResourcesPlugin.getWorkspace().addResourceChangeListener(projectSettings, IResourceChangeEvent.POST_CHANGE);
		check.again(this::forceReconciling);
	}

	@Override
	public void uninstall() {
		InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE).removePreferenceChangeListener(workspaceSettings);
		ResourcesPlugin.getWorkspace().removeResourceChangeListener(projectSettings);
		super.uninstall();
		check.leave();
	}

	private void changed(IResourceChangeEvent event) {
		IFile program = check.file().orElse(null);
		IResourceDelta ofProject = program == null || event.getDelta() == null ? null
				: event.getDelta().findMember(program.getProject().getFullPath());
		try {
			if (ofProject != null && program.getProject().isAccessible() && SettingsFiles.changed(ofProject, program.getProject())) {
				forceReconciling();
			}
		} catch (CoreException gone) {
			ILog.of(CheckingReconciler.class).log(gone.getStatus());
		}
	}
}
