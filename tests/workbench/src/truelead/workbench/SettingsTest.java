package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.ProjectScope;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.service.prefs.BackingStoreException;

/** What a person sets counts at once, in open editors and in the Problems view. */
class SettingsTest {

	private static final String OURS = "truelead.editor.finding";
	private static final String SEVERITIES = "truelead.editor.severities";
	private static final String PROJECT_SEVERITIES = "truelead.editor.project.severities";

	private IFile file;

	@BeforeEach
	void wrongFeed() {
		file = OpenProgram.file("taste.nc", Programs.WRONG_FEED);
	}

	@AfterEach
	void asShipped() throws BackingStoreException, CoreException {
		OpenProgram.closeAll();
		forget(InstanceScope.INSTANCE.getNode("truelead.editor"));
		forget(new ProjectScope(file.getProject()).getNode("truelead.editor"));
		natures(file.getProject());
	}

	private static void forget(IEclipsePreferences node) throws BackingStoreException {
		node.clear();
		node.flush();
		Screen.settle();
	}

	private static void natures(IProject project, String... natures) throws CoreException {
		IProjectDescription description = project.getDescription();
		description.setNatureIds(natures);
		project.setDescription(description, null);
	}

	@Test
	void aSeverityOfTheWorkspaceChangesTheOpenEditorAndTheProblemsAtOnce() {
		OpenProgram program = OpenProgram.open(file);
		assertThat(program.waitFor("F500").type()).isEqualTo("error");
		Screen.waitUntil("a marker", () -> !OpenProgram.markers(file, OURS).isEmpty());
		Dialogs.inPreferences(SEVERITIES, () -> severity("Preferences", "feed-off-pitch", "warning"));
		Screen.waitUntil("a warning", () -> program.waitFor("F500").type().equals("warning"));
		Dialogs.inPreferences(SEVERITIES, () -> severity("Preferences", "feed-off-pitch", "off"));
		program.waitGone("F500");
		Screen.waitUntil("no marker", () -> OpenProgram.markers(file, OURS).stream().noneMatch(message -> message.contains("F500")));
	}

	@Test
	void theProjectsSeverityGoesBeforeTheWorkspaces() {
		OpenProgram program = OpenProgram.open(file);
		Dialogs.inPreferences(SEVERITIES, () -> severity("Preferences", "feed-off-pitch", "warning"));
		Screen.waitUntil("a warning", () -> program.waitFor("F500").type().equals("warning"));
		Dialogs.inProperties(file.getProject(), PROJECT_SEVERITIES, () -> {
			Screen.chord(SWT.ALT, 'e');
			severity("Properties for shop", "feed-off-pitch", "information");
		});
		Screen.waitUntil("the project's severity", () -> program.waitFor("F500").type().equals("information"));
		Dialogs.inProperties(file.getProject(), PROJECT_SEVERITIES, () -> Screen.chord(SWT.ALT, 'e'));
		Screen.waitUntil("the workspace's severity", () -> program.waitFor("F500").type().equals("warning"));
	}

	@Test
	void theBuilderMarksClosedProgramsAnewByItself() throws CoreException {
		natures(file.getProject(), "truelead.editor.nature");
		Screen.waitUntil("the builder's marker", () -> OpenProgram.markers(file, OURS).stream().anyMatch(message ->
				message.contains("F500")));
		Dialogs.inPreferences(SEVERITIES, () -> severity("Preferences", "feed-off-pitch", "off"));
		Screen.waitUntil("no marker", () -> OpenProgram.markers(file, OURS).stream().noneMatch(message -> message.contains("F500")));
	}

	@Test
	void findingsWaitForSavingWherePeopleWantThatAndStayWhileTyping() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("calm.nc", Programs.GOOD));
		Dialogs.inPreferences("truelead.editor.settings", () -> Screen.chord(SWT.ALT, 'w'));
		program.focus();
		program.caretBehind("R5. F520");
		Screen.press(0, SWT.BS);
		Screen.press(0, SWT.BS);
		Screen.type("00");
		Screen.idle(1000);
		assertThat(program.findings()).noneMatch(finding -> finding.message().contains("F500"));
		Screen.chord(SWT.CTRL, 's');
		program.waitFor("F500");
	}

	@Test
	void theProjectsMachineIsWrittenKeyByKeyIntoAFileThatIsSharedAndCountsAtOnce() throws CoreException, IOException {
		OpenProgram program = OpenProgram.open(OpenProgram.file("fast.nc", Programs.GOOD));
		IFile profile = file.getProject().getFile("truelead-machine.properties");
		Dialogs.inProperties(file.getProject(), "truelead.editor.project.machine", () -> {
			Screen.chord(SWT.ALT, 'e');
			Screen.chord(SWT.ALT, 'k');
			Screen.type("tapping-speed-limit");
			Screen.press(0, SWT.ARROW_DOWN);
			Screen.chord(SWT.ALT, 'v');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("400");
		});
		assertThat(text(profile)).isEqualTo("base = milling-metric\ntapping-speed-limit = 400\n");
		program.waitFor("400");
		profile.delete(true, null);
		program.waitGone("400");
	}

	@Test
	void aLineOfTheProfileThatCannotBeUsedIsNamed() {
		List<String> named = new ArrayList<>();
		Dialogs.inPreferences("truelead.editor.machine", () -> {
			Screen.chord(SWT.ALT, 'e');
			Screen.chord(SWT.ALT, 't');
			Screen.press(SWT.CTRL, SWT.END);
			Screen.type("unit = furlong");
			named.addAll(Arrays.asList(Dialogs.find(Dialogs.shell("Preferences"), org.eclipse.swt.widgets.List.class).get(0).getItems()));
			Screen.chord(SWT.ALT, 'k');
		});
		assertThat(named).containsExactly("line 2: unit takes mm, inch, not 'furlong'");
	}

	@Test
	void theShopsToolListSaysWhatATapIsAndWhichLineWasNotUnderstood() {
		IFile list = OpenProgram.file("shop-tools.csv", "TOOL,KIND,THREAD\n3,TAP,M6X0.75\n4,TAP,thick\n");
		OpenProgram program = OpenProgram.open(OpenProgram.file("untold.nc", Programs.GOOD.replace(" (M6X1 TAP)", "")));
		List<String> shown = new ArrayList<>();
		Dialogs.inProperties(file.getProject(), "truelead.editor.project.tools", () -> {
			Screen.chord(SWT.ALT, 'l');
			Screen.type("shop-tools.csv");
			Shell dialog = Dialogs.shell("Properties for shop");
			shown.add(Dialogs.find(dialog, Table.class).get(0).getItem(0).getText(4));
			shown.addAll(Arrays.asList(Dialogs.find(dialog, org.eclipse.swt.widgets.List.class).get(0).getItems()));
		});
		assertThat(shown).containsExactly("M6x0.75",
				"line 3: \"thick\" in column THREAD is not understood; a thread such as M6X1 or 1/4-20 UNC is expected");
		assertThat(program.waitFor("0.75").under()).contains("F520");
		assertThat(list.exists()).isTrue();
	}

	private static String text(IFile file) throws IOException {
		return Files.readString(file.getLocation().toFile().toPath(), StandardCharsets.UTF_8);
	}

	/** By keys alone: the rule is looked for, chosen, and the severity set by the arrow keys. */
	private static void severity(String dialog, String rule, String word) {
		Screen.chord(SWT.ALT, 'r');
		Screen.type(rule);
		Table rows = Dialogs.find(Dialogs.shell(dialog), Table.class).get(0);
		Screen.waitUntil("one row", () -> rows.getItemCount() == 1);
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.waitUntil("the row chosen", () -> rows.getSelectionCount() == 1);
		Screen.chord(SWT.ALT, 'v');
		Combo severity = Dialogs.find(Dialogs.shell(dialog), Combo.class).get(0);
		Screen.waitUntil("focus in the severity", severity::isFocusControl);
		for (int key = 0; key < 5 && !severity.getText().equals(word); key++) {
			Screen.press(0, SWT.ARROW_DOWN);
		}
		assertThat(severity.getText()).isEqualTo(word);
	}
}
