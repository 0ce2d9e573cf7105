package truelead.editor.check;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.content.IContentType;
import truelead.editor.EditorIds;
import truelead.grammar.ProgramText;

/** Checks the programs of a project that changed, all of them where what they are checked by changed, and marks their findings. */
public final class ProgramBuilder extends IncrementalProjectBuilder {

	@Override
	protected IProject[] build(int kind, Map<String, String> arguments, IProgressMonitor monitor) throws CoreException {
		IResourceDelta delta = kind == FULL_BUILD ? null : getDelta(getProject());
		if (delta == null || SettingsFiles.changed(delta, getProject())) {
			getProject().accept(resource -> {
				check(resource, monitor);
				return true;
			});
		} else {
			delta.accept(change -> {
				boolean text = (change.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED | IResourceDelta.MOVED_FROM)) != 0;
				if (change.getKind() == IResourceDelta.ADDED || change.getKind() == IResourceDelta.CHANGED && text) {
					check(change.getResource(), monitor);
				}
				return true;
			});
		}
		return null;
	}

	@Override
	protected void clean(IProgressMonitor monitor) throws CoreException {
		getProject().deleteMarkers(EditorIds.MARKER, false, IResource.DEPTH_INFINITE);
	}

	/** A file that vanishes or cannot be read keeps none of the others from being checked. */
	private static void check(IResource resource, IProgressMonitor monitor) {
		if (monitor.isCanceled() || !(resource instanceof IFile file) || !isProgram(file)) {
			return;
		}
		try (InputStream stream = file.getContents(true)) {
			String text = ProgramText.read(stream.readAllBytes()).toString();
			FindingMarkers.show(file, ProgramCheck.of(file).run(text, file.getModificationStamp()));
		} catch (IOException | CoreException unreadable) {
			if (file.isAccessible() && file.getLocation() != null && file.getLocation().toFile().exists()) {
				ILog.of(ProgramBuilder.class).error("Cannot check " + file.getFullPath(), unreadable);
			}
		}
	}

	/** Whether the file's name says that it is a program. */
	public static boolean isProgram(IFile file) {
		IContentType program = Platform.getContentTypeManager().getContentType(EditorIds.CONTENT_TYPE);
		return program != null && program.isAssociatedWith(file.getName());
	}
}
