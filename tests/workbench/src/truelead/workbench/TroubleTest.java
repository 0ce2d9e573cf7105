package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourceAttributes;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What goes wrong with files while a person works on them: nothing is lost, nothing is logged as an error of ours, and the checks go on.
 */
class TroubleTest {

	private final List<IStatus> errors = Collections.synchronizedList(new ArrayList<>());
	private boolean over;
	private final ILogListener log = (status, bundle) -> {
		if (status.getSeverity() == IStatus.ERROR) {
			errors.add(status);
		}
	};

	@BeforeEach
	void listen() {
		Platform.addLogListener(log);
	}

	@AfterEach
	void close() {
		OpenProgram.closeAll();
		over = true;
		Platform.removeLogListener(log);
		assertThat(errors).as("errors in the log").isEmpty();
	}

	@Test
	void aCleanProgramFollowsItsFile() throws Exception {
		IFile file = OpenProgram.file("changed.nc", Programs.GOOD);
		OpenProgram program = OpenProgram.open(file);
		Files.writeString(file.getLocation().toFile().toPath(), Programs.WRONG_FEED);
		file.refreshLocal(IResource.DEPTH_ZERO, null);
		program.waitFor("F500");
		assertThat(program.widget().getText()).contains("F500");
		assertThat(program.editor().isDirty()).isFalse();
	}

	@Test
	void anEditedProgramIsNeitherOverwrittenNorOverwritesUnasked() throws Exception {
		IFile file = OpenProgram.file("both.nc", Programs.GOOD);
		OpenProgram program = OpenProgram.open(file);
		program.caretBehind("M30");
		Screen.type(" ");
		Files.writeString(file.getLocation().toFile().toPath(), Programs.WRONG_FEED);
		file.refreshLocal(IResource.DEPTH_ZERO, null);
		Screen.idle(300);
		assertThat(program.document().get()).isEqualTo(Programs.GOOD.replace("M30", "M30 "));
		boolean[] asked = new boolean[1];
		escapeSoon(asked);
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("the question what is to be kept", () -> asked[0]);
		Screen.idle(500);
		assertThat(Files.readString(file.getLocation().toFile().toPath())).isEqualTo(Programs.WRONG_FEED);
		assertThat(program.editor().isDirty()).isTrue();
	}

	@Test
	void aProgramOfTwoHundredThousandBlocksOpensAndIsChecked() {
		StringBuilder surface =
				new StringBuilder("%\nO9\nG17 G21 G90 G94 G54\nT9 M6 (BALL NOSE 6)\nG0 X0 Y0 S8000 M3\nG43 H9 Z5.\nG1 Z-1. F900\n");
		for (int i = 0; i < 220_000; i++) {
			surface.append("X").append(i % 97).append(".25 Y").append(i % 89).append(".5\n");
		}
		String text = surface + "G0 Z25.\n" + Programs.WRONG_FEED.substring(Programs.WRONG_FEED.indexOf("G54"));
		OpenProgram program = OpenProgram.open(OpenProgram.file("long.nc", text));
		assertThat(program.widget().getText(0, 10)).startsWith("%\nO9");
		program.waitFor("F500");
		program.widget().setSelection(2);
		Screen.type("(A)");
		assertThat(program.document().get().substring(0, 8)).isEqualTo("%\n(A)O9\n");
	}

	@Test
	void bytesThatAreNoTextOpenAndAreSavedBack(@TempDir Path folder) throws IOException {
		byte[] bytes = new byte[20_000];
		for (int i = 0; i < bytes.length; i++) {
			bytes[i] = (byte) (i * 31 + i / 256);
		}
		Path file = Files.write(folder.resolve("picture.nc"), bytes);
		OpenProgram program = OpenProgram.open(file);
		Screen.waitUntil("a check", () -> !program.findings().isEmpty());
		program.widget().setSelection(0);
		Screen.type("N");
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("saved", () -> !program.editor().isDirty());
		byte[] saved = Files.readAllBytes(file);
		assertThat(saved[0]).isEqualTo((byte) 'N');
		assertThat(Arrays.copyOfRange(saved, 1, saved.length)).isEqualTo(bytes);
	}

	@Test
	void bytesThatAreAlmostUtf8AreSavedBack() throws Exception {
		byte[] bytes = "O8 (\u00d8 5 \u2300)\nG0 X1.\n(".getBytes(StandardCharsets.UTF_8);
		bytes = Arrays.copyOf(bytes, bytes.length + 3);
		bytes[bytes.length - 3] = (byte) 0xFF;
		bytes[bytes.length - 2] = (byte) 0xC3;
		bytes[bytes.length - 1] = ')';
		IFile file = OpenProgram.file("almost.nc", "");
		file.setContents(new ByteArrayInputStream(bytes), true, false, null);
		OpenProgram program = OpenProgram.open(file);
		program.widget().setSelection(0);
		Screen.type("N");
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("saved", () -> !program.editor().isDirty());
		try (InputStream in = file.getContents()) {
			byte[] saved = in.readAllBytes();
			assertThat(Arrays.copyOfRange(saved, 1, saved.length)).isEqualTo(bytes);
		}
	}

	@Test
	void aReadOnlyProgramIsCheckedAndKeptAsItIs() throws CoreException {
		IFile file = OpenProgram.file("locked.nc", Programs.WRONG_FEED);
		lock(file, true);
		try {
			OpenProgram program = OpenProgram.open(file);
			program.waitFor("F500");
			program.caretBehind("R5. F5");
			boolean[] asked = new boolean[1];
			escapeSoon(asked);
			Screen.chord(SWT.CTRL, '1');
			Screen.idle(300);
			Screen.press(0, SWT.CR, '\r');
			Screen.waitUntil("the question whether it may be written", () -> asked[0]);
			Screen.idle(300);
			assertThat(program.document().get()).isEqualTo(Programs.WRONG_FEED);
		} finally {
			lock(file, false);
		}
	}

	@Test
	void aProgramThatIsDeletedWhileItIsOpenGoesWithItsFindings() throws CoreException {
		IFile file = OpenProgram.file("gone.nc", Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		file.delete(true, null);
		Screen.waitUntil("the editor closed",
				() -> PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().getActiveEditor() == null);
	}

	@Test
	void aProgramThatIsDeletedBehindTheWorkbenchCanBeEditedOn(@TempDir Path folder) throws IOException {
		Path path = Files.writeString(folder.resolve("gone.nc"), Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(path);
		program.waitFor("F500");
		Files.delete(path);
		program.caretBehind("R5. F500");
		Screen.press(0, SWT.BS);
		Screen.press(0, SWT.BS);
		Screen.type("20");
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void aProgramThatVanishesDuringItsCheckIsForgotten() throws CoreException {
		for (int i = 0; i < 5; i++) {
			IFile file = OpenProgram.file("vanishing.nc", Programs.WRONG_FEED + "G0 X1.\n".repeat(20_000));
			OpenProgram.open(file);
			Screen.idle(20 * i);
			file.delete(true, null);
			Screen.waitUntil("the editor closed",
					() -> PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().getActiveEditor() == null);
		}
		Screen.idle(500);
	}

	private static void lock(IFile file, boolean readOnly) throws CoreException {
		ResourceAttributes attributes = file.getResourceAttributes();
		attributes.setReadOnly(readOnly);
		file.setResourceAttributes(attributes);
	}

	/**
	 * Closes every dialog that comes until the test is over: on a slow screen the window that comes to the front again may bring another
	 * one.
	 */
	private void escapeSoon(boolean[] asked) {
		Shell window = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
		Display.getCurrent().timerExec(100, () -> {
			if (over || window.isDisposed()) {
				return;
			}
			escapeSoon(asked);
			Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell != window && shell.isVisible()
					&& !shell.getText().isEmpty()).findFirst().ifPresent(dialog -> {
				asked[0] = true;
				dialog.close();
			});
		});
	}
}
