package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole job in one go, as a machinist has it: the demo project is brought in, the first finding is found by its key and mended, the
 * program saved, the project audited, a finding accepted with its reason, and the audit and the first-run sheet written for the machine.
 */
class WholeJobTest {

	private static final String FAULTS = "bearing-cap-faults.nc";

	@AfterEach
	void close() throws CoreException {
		OpenProgram.closeAll();
		AuditScreen.close();
		demo().delete(true, null);
		Screen.settle();
	}

	@Test
	void fromTheFirstFindingToTheSheetAtTheMachine(@TempDir Path folder) throws Exception {
		OpenProgram program = openTheDemo();
		IFile file = demo().getFile(FAULTS);
		Screen.waitUntil("what the builder found", () -> marked(file, "F500"));

		goToTheFeedByTheKeyForTheNextFinding(program);
		Proposals.at(SWT.CTRL, '1');
		Proposals.take("Change F500 to F520");
		program.waitGone("F500");
		assertThat(marked(file, "F500")).as("Problems tells of what is saved").isTrue();
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("the marker gone", () -> !marked(file, "F500"));

		AuditScreen.audit(demo(), 5);
		assertThat(AuditScreen.verdict(FAULTS)).contains("Do not run: 4 errors");
		AuditScreen.goTo(FAULTS, "hole-missing");
		AuditScreen.accept("cast hole, see drawing", true);
		Screen.waitUntil("one error less", () -> AuditScreen.verdict(FAULTS).contains("Do not run: 3 errors"));

		Path audit = folder.resolve("audit.html");
		AuditScreen.write("Audit, HTML page", audit.toString());
		assertThat(Files.readString(audit)).contains("Do not run", "cast hole, see drawing", FAULTS, "gland-thread-mill.nc")
				.doesNotContain("advances 0.962 mm a turn");
		Path sheet = folder.resolve("first-run.html");
		AuditScreen.write("First-run sheet, HTML page", sheet.toString());
		assertThat(Files.readString(sheet)).contains("cast hole, see drawing", "nobody reaches in while the spindle turns")
				.doesNotContain("src=\"http", "href=\"http");
	}

	private static OpenProgram openTheDemo() throws Exception {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		PlatformUI.getWorkbench().showPerspective("truelead.editor.perspective", window);
		Screen.toFront();
		PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("truelead.editor.walk", null);
		Screen.settle();
		Link link = Dialogs.find(window.getShell(), Link.class).stream().filter(found -> found.getText().startsWith("Open ")).findFirst()
				.orElseThrow();
		link.notifyListeners(SWT.Selection, new Event());
		Screen.waitUntil("the demo program", () -> page().getActiveEditor() instanceof ITextEditor);
		OpenProgram program = new OpenProgram((ITextEditor) page().getActiveEditor());
		program.waitFor("F500");
		program.focus();
		program.widget().setSelection(0);
		return program;
	}

	private static void goToTheFeedByTheKeyForTheNextFinding(OpenProgram program) {
		for (int key = 0; key < 10 && !program.widget().getSelectionText().equals("F500"); key++) {
			Screen.chord(SWT.CTRL, '.');
		}
		assertThat(program.widget().getSelectionText()).isEqualTo("F500");
	}

	private static boolean marked(IFile file, String words) {
		return OpenProgram.markers(file, "truelead.editor.finding").stream().anyMatch(message -> message.contains(words));
	}

	private static IProject demo() {
		return ResourcesPlugin.getWorkspace().getRoot().getProject("truelead-demo");
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
