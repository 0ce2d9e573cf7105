package truelead.editor.start;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IStartup;
import truelead.editor.EditorIds;

/**
 * Has the programs checked whose findings were lost with a workbench that did not end by itself: nothing has changed in their files, so
 * that nothing else would have them checked, and an empty list of problems reads as if they were right. Where all is known the build has
 * nothing to do.
 */
public final class RecoveredProjects implements IStartup {

	@Override
	public void earlyStartup() {
		IWorkspace workspace = ResourcesPlugin.getWorkspace();
		if (!workspace.isAutoBuilding()) {
			return;
		}
		Job job = Job.create("Checking programs", (ICoreRunnable) monitor -> {
			for (IProject project : workspace.getRoot().getProjects()) {
				if (project.isAccessible() && project.hasNature(EditorIds.NATURE)) {
					project.build(IncrementalProjectBuilder.INCREMENTAL_BUILD, EditorIds.BUILDER, null, monitor);
				}
			}
		});
		job.setRule(workspace.getRuleFactory().buildRule());
		job.schedule();
	}
}
