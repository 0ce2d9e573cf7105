package truelead.editor.demo;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.osgi.framework.Bundle;
import truelead.editor.EditorIds;

/** A project with programs of an invented part, some with faults, to look at and play with. */
public final class DemoProject {

	/** Its name in the workspace. */
	public static final String NAME = "truelead-demo";
	/** The program to open first: it has several faults. */
	public static final String FIRST = "bearing-cap-faults.nc";

	private DemoProject() {
	}

	/** The demo project of this workspace, there or not. */
	public static IProject inWorkspace() {
		return ResourcesPlugin.getWorkspace().getRoot().getProject(NAME);
	}

	/** Puts the project into the workspace and checks it; files that are there stay as they are. */
	public static IProject create(IProgressMonitor monitor) throws CoreException {
		IProject project = inWorkspace();
		ResourcesPlugin.getWorkspace().run(inside -> fill(project, inside), project.getWorkspace().getRoot(),
				IWorkspace.AVOID_UPDATE, monitor);
		project.build(IncrementalProjectBuilder.FULL_BUILD, monitor);
		return project;
	}

	private static void fill(IProject project, IProgressMonitor monitor) throws CoreException {
		if (!project.exists()) {
			IProjectDescription description = project.getWorkspace().newProjectDescription(NAME);
			description.setNatureIds(new String[] { EditorIds.NATURE });
			project.create(description, monitor);
		}
		project.open(monitor);
		Bundle bundle = Platform.getBundle(EditorIds.BUNDLE);
		for (URL program : programs(bundle)) {
			String path = program.getPath();
			IFile file = project.getFile(path.substring(path.lastIndexOf('/') + 1));
			if (!file.exists()) {
				try (InputStream bytes = program.openStream()) {
					file.create(bytes, false, monitor);
				} catch (IOException unreadable) {
					throw new CoreException(Status.error("Cannot read " + program, unreadable));
				}
			}
		}
	}

	private static List<URL> programs(Bundle bundle) {
		var found = bundle.findEntries("demo", "*", false);
		return found == null ? List.of() : Collections.list(found);
	}
}
