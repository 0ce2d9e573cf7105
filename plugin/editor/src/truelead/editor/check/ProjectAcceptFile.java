package truelead.editor.check;

import java.io.IOException;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import truelead.audit.result.Acceptance;
import truelead.audit.standing.AcceptFile;
import truelead.audit.terminal.Complaint;

/**
 * The accept file of a project: {@code accepted-findings.csv} at its top, which is shared with it and which the command's {@code --accept}
 * takes.
 */
public final class ProjectAcceptFile {

	/** The file's name. */
	public static final String NAME = "accepted-findings.csv";

	private ProjectAcceptFile() {
	}

	/** The file, whether it is there or not. */
	public static IFile of(IProject project) {
		return project.getFile(NAME);
	}

	/** Adds a line that accepts a finding in a program of the project, by any thread; where that cannot be, says why. */
	public static Optional<String> add(IFile program, String fingerprint, String rule, Acceptance why) throws IOException, CoreException {
		IFile file = of(program.getProject());
		if (file.getLocation() == null) {
			return Optional.of(program.getProject().getName() + " is on no disk, so it can have no accept file.");
		}
		AcceptFile.add(file.getLocation().toFile().toPath(), fingerprint, rule, program.getName(), why);
		file.refreshLocal(IResource.DEPTH_ZERO, new NullProgressMonitor());
		return Optional.empty();
	}

	/** What it accepts; empty where it is not there, or is none: the audit says so. */
	static Optional<AcceptFile> read(IProject project) {
		IFile file = of(project);
		if (!file.exists() || file.getLocation() == null) {
			return Optional.empty();
		}
		try {
			return Optional.of(AcceptFile.read(file.getLocation().toOSString()));
		} catch (Complaint noAcceptFile) {
			return Optional.empty();
		}
	}
}
