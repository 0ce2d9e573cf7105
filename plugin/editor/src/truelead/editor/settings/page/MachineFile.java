package truelead.editor.settings.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.widgets.Shell;
import truelead.checker.program.ProgramFolder;
import truelead.editor.settings.CheckSettings;
import truelead.grammar.ProgramText;

/**
 * Where a machine profile is kept: a file at the top of the project, which is shared with it and read by the command; or the workspace's
 * settings.
 */
final class MachineFile {

	private final Optional<IProject> project;

	MachineFile(Optional<IProject> project) {
		this.project = project;
	}

	/** The profile's text; empty where there is none. */
	Optional<String> read() throws CoreException {
		if (project.isEmpty()) {
			return Optional.of(CheckSettings.ofWorkspace().machineText()).filter(text -> !text.isEmpty());
		}
		IFile file = project.get().getFile(ProgramFolder.PROFILE);
		file.refreshLocal(IResource.DEPTH_ZERO, new NullProgressMonitor());
		if (!file.exists()) {
			return Optional.empty();
		}
		try (InputStream bytes = file.getContents(true)) {
			return Optional.of(ProgramText.read(bytes.readAllBytes()).toString());
		} catch (IOException unreadable) {
			throw new CoreException(Status.error("Cannot read " + file.getFullPath(), unreadable));
		}
	}

	/** Writes the profile's text; an empty one takes the profile away. What stood in a project's file before is in its local history. */
	void write(String text, Shell shell) throws CoreException {
		if (project.isEmpty()) {
			CheckSettings settings = CheckSettings.ofWorkspace();
			settings.machineText(text);
			settings.save();
			return;
		}
		IFile file = project.get().getFile(ProgramFolder.PROFILE);
		InputStream bytes = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
		if (!file.exists()) {
			if (!text.isEmpty()) {
				file.create(bytes, false, new NullProgressMonitor());
			}
			return;
		}
		IStatus allowed = file.getWorkspace().validateEdit(new IFile[] { file }, shell);
		if (!allowed.isOK()) {
			throw new CoreException(allowed);
		}
		if (text.isEmpty()) {
			file.delete(IResource.KEEP_HISTORY, new NullProgressMonitor());
		} else {
			file.setContents(bytes, IResource.KEEP_HISTORY, new NullProgressMonitor());
		}
	}
}
