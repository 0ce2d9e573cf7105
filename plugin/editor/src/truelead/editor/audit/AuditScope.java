package truelead.editor.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import truelead.audit.source.Source;
import truelead.editor.check.ProgramBuilder;

/**
 * What an audit is of: programs of the workspace, each once.
 *
 * @param name what a person calls it: the one thing chosen, or how many
 */
public record AuditScope(String name, List<IFile> programs) {

	public AuditScope {
		programs = List.copyOf(programs);
	}

	/** Files as they are, and all programs of folders and projects, in the order of the workspace. */
	public static AuditScope of(List<IResource> chosen) {
		Set<IFile> programs = new LinkedHashSet<>();
		chosen.forEach(resource -> add(resource, programs));
		String name = chosen.size() == 1 ? chosen.get(0).getName() : chosen.size() + " chosen";
		return new AuditScope(name, new ArrayList<>(programs));
	}

	private static void add(IResource chosen, Set<IFile> programs) {
		if (chosen instanceof IFile file) {
			programs.add(file);
		} else if (chosen instanceof IContainer folder && folder.isAccessible()) {
			try {
				folder.accept(resource -> {
					if (resource instanceof IFile file && ProgramBuilder.isProgram(file)) {
						programs.add(file);
					}
					return !resource.isHidden() && !resource.isDerived();
				});
			} catch (CoreException gone) {
				ILog.of(AuditScope.class).log(gone.getStatus());
			}
		}
	}

	/** The programs as the audit takes them; those that are on no disk are left out. */
	List<Source> sources() {
		return programs.stream().filter(file -> file.getLocation() != null).map(AuditScope::source).toList();
	}

	private static Source source(IFile file) {
		java.io.File onDisk = file.getLocation().toFile();
		return new Source(onDisk.toPath(), shown(file), onDisk.length());
	}

	/** How reports name a program: its project and the way from there. */
	static String shown(IFile file) {
		return file.getFullPath().makeRelative().toString();
	}
}
