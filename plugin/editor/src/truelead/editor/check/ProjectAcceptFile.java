package truelead.editor.check;

import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import truelead.audit.standing.AcceptFile;
import truelead.audit.terminal.Complaint;

/** The accept file of a project: {@code accepted-findings.csv} at its top, which is shared with it and which the command's {@code --accept} takes. */
public final class ProjectAcceptFile {

	/** The file's name. */
	public static final String NAME = "accepted-findings.csv";

	private ProjectAcceptFile() {
	}

	/** The file, whether it is there or not. */
	public static IFile of(IProject project) {
		return project.getFile(NAME);
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
