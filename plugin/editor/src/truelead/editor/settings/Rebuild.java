package truelead.editor.settings;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import truelead.editor.EditorIds;

/** Checks all programs of all projects with our builder again, in the background: by other settings they have other findings. */
final class Rebuild extends WorkspaceJob {

	/** Milliseconds in which further changes of settings lead to no further check. */
	private static final int SOON = 100;
	private static final Rebuild ALL = new Rebuild();

	private Rebuild() {
		super("Check of threads by changed settings");
		setRule(ResourcesPlugin.getWorkspace().getRuleFactory().buildRule());
	}

	/** Checks them again, soon. */
	static void all() {
		ALL.schedule(SOON);
	}

	@Override
	public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
		List<IProject> projects = new ArrayList<>();
		for (IProject project : ResourcesPlugin.getWorkspace().getRoot().getProjects()) {
			if (CheckedProject.is(project)) {
				projects.add(project);
			}
		}
		SubMonitor parts = SubMonitor.convert(monitor, projects.size());
		for (IProject project : projects) {
			project.build(IncrementalProjectBuilder.FULL_BUILD, EditorIds.BUILDER, null, parts.split(1));
		}
		return Status.OK_STATUS;
	}
}
