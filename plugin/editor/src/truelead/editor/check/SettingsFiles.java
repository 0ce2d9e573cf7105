package truelead.editor.check;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import truelead.checker.program.ProgramFolder;
import truelead.editor.EditorIds;
import truelead.editor.settings.CheckSettings;
import truelead.editor.settings.ProjectJob;

/** The files of a project by which its programs are checked: its settings, machine profiles, its tool list, its accept file. */
final class SettingsFiles {

	private static final String SETTINGS = EditorIds.BUNDLE + ".prefs";

	private SettingsFiles() {
	}

	/** Whether any of them came, went or changed. */
	static boolean changed(IResourceDelta delta, IProject project) throws CoreException {
		Optional<Path> tools = ProjectJob.file(project, CheckSettings.of(project).tools());
		boolean[] changed = { false };
		delta.accept(change -> {
			boolean file = change.getResource().getType() == IResource.FILE;
			boolean text = change.getKind() != IResourceDelta.CHANGED
					|| (change.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) != 0;
			changed[0] |= file && text && isOne(change.getResource(), tools);
			return !changed[0];
		}, IResource.HIDDEN);
		return changed[0];
	}

	private static boolean isOne(IResource file, Optional<Path> tools) {
		IPath place = file.getLocation();
		return file.getName().equals(SETTINGS) || file.getName().equals(ProgramFolder.PROFILE)
				|| file.getName().equals(ProjectAcceptFile.NAME)
				|| place != null && tools.filter(place.toFile().toPath()::equals).isPresent();
	}
}
