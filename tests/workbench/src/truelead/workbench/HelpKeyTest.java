package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IProject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** F1 opens the chapter of what a person is at: beside a page of settings or a dialog, in the guide for a view. */
class HelpKeyTest {

	private static final String GUIDE = "truelead.editor.guide.view";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
		page().hideView(page().findView(GUIDE));
		Screen.settle();
	}

	@ParameterizedTest
	@CsvSource({ "settings,Settings", "severities,Settings", "machine,The machine", "templatesPage,Settings" })
	void aPageOfTheWorkspacesSettings(String id, String chapter) {
		List<String> shown = new ArrayList<>();
		Dialogs.inDialog("Preferences", () -> shown.addAll(asked("Preferences", chapter)),
				() -> PreferencesUtil.createPreferenceDialogOn(null, "truelead.editor." + id, null, null).open());
		assertThat(shown).containsExactly(chapter, "");
	}

	@ParameterizedTest
	@CsvSource({ "project,Settings", "project.machine,The machine", "project.tools,Telling it what is wanted", "project.accepted,Settings",
			"project.severities,Settings" })
	void aPageOfAProjectsProperties(String id, String chapter) {
		IProject project = OpenProgram.file("asked.nc", Programs.GOOD).getProject();
		List<String> shown = new ArrayList<>();
		Dialogs.inDialog("Properties for shop", () -> shown.addAll(asked("Properties for shop", chapter)),
				() -> PreferencesUtil.createPropertyDialogOn(null, project, "truelead.editor." + id, null, null).open());
		assertThat(shown).containsExactly(chapter, "");
	}

	@ParameterizedTest
	@CsvSource({ "n,Renumber Blocks,Truelead", "p,Plan a Thread,Threads at the bench",
			"w,What Else Could Make This Thread?,Threads at the bench" })
	void aDialogOfAProgram(char key, String title, String chapter) {
		OpenProgram program = faulty();
		program.caretBehind("G84 Z-14");
		List<String> shown = new ArrayList<>();
		Dialogs.inDialog(title, () -> shown.addAll(asked(title, chapter)), () -> {
			Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
			Screen.type("" + key);
			Screen.waitUntil("the dialog to come and go", () -> !shown.isEmpty() && Dialogs.shell(title) == null);
		});
		assertThat(shown).containsExactly(chapter, "");
	}

	@Test
	void theSeverityOfARule() {
		OpenProgram program = faulty();
		program.caretBehind("R5. F5");
		Proposals.at(SWT.CTRL, '1');
		List<String> shown = new ArrayList<>();
		Dialogs.inDialog("Severity of feed-off-pitch", () -> shown.addAll(asked("Severity of feed-off-pitch", "feed-off-pitch")),
				() -> Proposals.take("Set the severity of feed-off-pitch"));
		assertThat(shown).containsExactly("feed-off-pitch", "");
	}

	@ParameterizedTest
	@CsvSource({ "Accept,feed-off-pitch", "Write Report,Reports" })
	void aDialogOfTheAudit(String title, String chapter) {
		OpenProgram program = faulty();
		program.focus();
		Screen.chord(SWT.CTRL | SWT.ALT, 'a');
		Screen.waitUntil("the end of the audit", () -> AuditScreen.said().startsWith("1 program"));
		AuditScreen.goTo("asked.nc", "feed-off-pitch");
		List<String> shown = new ArrayList<>();
		Dialogs.inDialog(title, () -> shown.addAll(asked(title, chapter)), () -> AuditScreen.press(title));
		assertThat(shown).containsExactly(chapter, "");
		AuditScreen.close();
	}

	@ParameterizedTest
	@CsvSource({ "thread,Truelead", "audit,Reports", "lesson,Lessons", "walk,Truelead" })
	void aView(String name, String chapter) throws PartInitException {
		IViewPart view = page().showView("truelead.editor." + name + ".view");
		Screen.toFront();
		page().activate(view);
		Screen.idle(300);
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the guide", () -> page().findView(GUIDE) != null);
		assertThat(Dialogs.find(guide(), StyledText.class).get(0).getText()).startsWith(chapter + "\n");
		page().hideView(view);
	}

	private static OpenProgram faulty() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("asked.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		return program;
	}

	/** The first line of the chapter that F1 opens, and what is left when it is pressed again; there is room for it, and none is kept. */
	private static List<String> asked(String dialog, String chapter) {
		Point alone = Dialogs.shell(dialog).getSize();
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the chapter " + chapter + ", not " + chapters(dialog), () -> chapters(dialog).contains(chapter));
		Screen.waitUntil("room for it", () -> Dialogs.shell(dialog).getSize().y >= 400
				&& Dialogs.shell(dialog).getSize().x <= Display.getCurrent().getClientArea().width);
		Screen.press(0, SWT.F1);
		Screen.waitUntil("no chapter", () -> !chapters(dialog).contains(chapter));
		Screen.waitUntil("the dialog as large as it was", () -> Dialogs.shell(dialog).getSize().equals(alone));
		Dialogs.shell(dialog).close();
		return List.of(chapter, "");
	}

	private static List<String> chapters(String dialog) {
		return Dialogs.find(Dialogs.shell(dialog), StyledText.class).stream().map(text -> text.getText().lines().findFirst()
				.orElse("")).toList();
	}

	private static Composite guide() {
		return Dialogs.find(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), Text.class).stream()
				.filter(text -> text.getMessage().startsWith("Search rules")).findFirst().orElseThrow().getParent();
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
