package truelead.editor.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.ICommand;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IProjectNature;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import truelead.editor.EditorIds;

/** Marks a project whose programs are all checked by a builder, open or not. */
public final class ProgramNature implements IProjectNature {

	private IProject project;

	@Override
	public void configure() throws CoreException {
		IProjectDescription description = project.getDescription();
		List<ICommand> commands = new ArrayList<>(Arrays.asList(description.getBuildSpec()));
		if (commands.stream().noneMatch(command -> EditorIds.BUILDER.equals(command.getBuilderName()))) {
			ICommand ours = description.newCommand();
			ours.setBuilderName(EditorIds.BUILDER);
			commands.add(ours);
			description.setBuildSpec(commands.toArray(ICommand[]::new));
			project.setDescription(description, null);
		}
	}

	@Override
	public void deconfigure() throws CoreException {
		IProjectDescription description = project.getDescription();
		description.setBuildSpec(Arrays.stream(description.getBuildSpec())
				.filter(command -> !EditorIds.BUILDER.equals(command.getBuilderName())).toArray(ICommand[]::new));
		project.setDescription(description, null);
		project.deleteMarkers(EditorIds.MARKER, false, IResource.DEPTH_INFINITE);
	}

	@Override
	public IProject getProject() {
		return project;
	}

	@Override
	public void setProject(IProject project) {
		this.project = project;
	}
}
