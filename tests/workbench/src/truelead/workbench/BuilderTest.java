package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A project whose programs are all checked, open or not: its markers follow the files, and nobody else's are touched. */
class BuilderTest {

	private static final String OURS = "truelead.editor.finding";

	private IProject project;

	@BeforeEach
	void emptyProject() throws CoreException {
		project = OpenProgram.file("first.nc", Programs.GOOD).getProject();
		for (IResource other : project.members()) {
			if (other instanceof IFile && !other.getName().startsWith(".")) {
				other.delete(true, null);
			}
		}
	}

	@AfterEach
	void unchecked() throws CoreException {
		OpenProgram.closeAll();
		IProjectDescription description = project.getDescription();
		description.setNatureIds(new String[0]);
		project.setDescription(description, null);
	}

	@Test
	void aProjectIsCheckedByAKeyInItsPropertiesAndNotAnyMoreByTheSameKey() {
		IFile file = OpenProgram.file("closed.nc", Programs.WRONG_FEED);
		Screen.idle(500);
		assertThat(OpenProgram.markers(file, OURS)).isEmpty();
		checkAll();
		waitMarked(file);
		checkAll();
		Screen.waitUntil("no marker of a project that is not checked any more", () -> OpenProgram.markers(file, OURS).isEmpty());
	}

	@Test
	void whatAnotherProgramWritesIsCheckedThoughNobodyHasItOpen() throws CoreException, IOException {
		checkAll();
		IFile file = OpenProgram.file("posted.nc", Programs.GOOD);
		Files.writeString(file.getLocation().toFile().toPath(), Programs.WRONG_FEED);
		file.refreshLocal(IResource.DEPTH_ZERO, null);
		waitMarked(file);
		Files.writeString(file.getLocation().toFile().toPath(), Programs.GOOD);
		file.refreshLocal(IResource.DEPTH_ZERO, null);
		Screen.waitUntil("the marker gone", () -> OpenProgram.markers(file, OURS).stream().noneMatch(message ->
				message.startsWith("F500")));
	}

	@Test
	void markersOfOthersStayOnProgramsAndOnWhatIsNone() throws CoreException {
		IFile program = OpenProgram.file("shared.nc", Programs.WRONG_FEED);
		IFile text = OpenProgram.file("readme.txt", Programs.WRONG_FEED);
		IMarker foreign = program.createMarker(IMarker.PROBLEM);
		foreign.setAttribute(IMarker.MESSAGE, "of another plug-in");
		IMarker task = program.createMarker(IMarker.TASK);
		checkAll();
		waitMarked(program);
		OpenProgram open = OpenProgram.open(program);
		open.waitFor("F500");
		open.caretBehind("R5. F500");
		Screen.press(0, SWT.BS);
		Screen.press(0, SWT.BS);
		Screen.type("20");
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("the marker gone", () -> OpenProgram.markers(program, OURS).stream().noneMatch(message ->
				message.startsWith("F500")));
		checkAll();
		Screen.idle(300);
		assertThat(foreign.getAttribute(IMarker.MESSAGE, "")).isEqualTo("of another plug-in");
		assertThat(task.exists()).isTrue();
		assertThat(OpenProgram.markers(text, OURS)).as("a text is no program").isEmpty();
	}

	/** Turns the check of all programs on, or off again. */
	private void checkAll() {
		Dialogs.inProperties(project, "truelead.editor.project", () -> Screen.chord(SWT.ALT, 'c'));
	}

	private static void waitMarked(IFile file) {
		Screen.waitUntil("the builder's marker", () -> OpenProgram.markers(file, OURS).stream().anyMatch(message ->
				message.startsWith("F500")));
	}
}
