package truelead.editor.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import truelead.editor.EditorIds;

/** Whether a project's programs are checked by our builder, open or not. */
public final class CheckedProject {

	private CheckedProject() {
	}

	/** Whether they are. */
	public static boolean is(IProject project) {
		try {
			return project.isAccessible() && project.hasNature(EditorIds.NATURE);
		} catch (CoreException gone) {
			ILog.of(CheckedProject.class).log(gone.getStatus());
			return false;
		}
	}

	/** Has them checked, or not any more. */
	public static void set(IProject project, boolean checked) throws CoreException {
		if (is(project) != checked) {
			IProjectDescription description = project.getDescription();
			List<String> natures = new ArrayList<>(Arrays.asList(description.getNatureIds()));
			if (checked) {
				natures.add(EditorIds.NATURE);
			} else {
				natures.remove(EditorIds.NATURE);
			}
			description.setNatureIds(natures.toArray(String[]::new));
			project.setDescription(description, null);
		}
	}
}
