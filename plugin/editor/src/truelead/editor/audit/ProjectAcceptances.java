package truelead.editor.audit;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import truelead.audit.result.Audited;
import truelead.audit.standing.AcceptFile;
import truelead.audit.standing.Standing;
import truelead.editor.check.ProjectAcceptFile;

/** The accept file of a project, for the programs of that project alone. */
final class ProjectAcceptances implements Standing {

	private final String prefix;
	private final AcceptFile acceptances;

	private ProjectAcceptances(IProject project, AcceptFile acceptances) {
		this.prefix = project.getName() + "/";
		this.acceptances = acceptances;
	}

	/** Those of all projects that have programs in the scope; a file that is none is a complaint. */
	static List<Standing> of(AuditScope scope) {
		List<Standing> all = new ArrayList<>();
		for (IProject project : scope.programs().stream().map(IFile::getProject).distinct().toList()) {
			IFile file = ProjectAcceptFile.of(project);
			if (file.exists() && file.getLocation() != null) {
				all.add(new ProjectAcceptances(project, AcceptFile.read(file.getLocation().toOSString())));
			}
		}
		return all;
	}

	@Override
	public Audited.Checked judge(Audited.Checked checked) {
		return checked.source().shown().startsWith(prefix) ? acceptances.judge(checked) : checked;
	}

	@Override
	public List<String> remarks() {
		return acceptances.remarks();
	}
}
