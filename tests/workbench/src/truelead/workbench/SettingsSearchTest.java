package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.osgi.service.prefs.BackingStoreException;

/** Settings are found by the words a machinist would look for, and a machine is chosen by keys. */
class SettingsSearchTest {

	@AfterEach
	void asShipped() throws BackingStoreException {
		OpenProgram.closeAll();
		IEclipsePreferences node = InstanceScope.INSTANCE.getNode("truelead.editor");
		node.clear();
		node.flush();
		Screen.settle();
	}

	@ParameterizedTest
	@CsvSource({ "typing, CNC Programs", "severity, Severities", "lathe, Machine", "spindle, Machine", "form-tap, Templates" })
	void aPageOfTheWorkspaceIsFoundByItsWords(String word, String page) {
		Dialogs.inDialog("Preferences", () -> assertFound("Preferences", word, page), () -> PreferencesUtil.createPreferenceDialogOn(null,
				null, null, null).open());
	}

	@ParameterizedTest
	@CsvSource({ "stock, CNC Programs", "csv, Tool List", "stale, Accepted Findings", "lathe, Machine", "rules, Severities" })
	void aPageOfAProjectIsFoundByItsWords(String word, String page) {
		IProject project = OpenProgram.file("found.nc", "").getProject();
		Dialogs.inDialog("Properties for shop", () -> assertFound("Properties for shop", word, page),
				() -> PreferencesUtil.createPropertyDialogOn(null, project, "org.eclipse.ui.propertypages.info.file", null, null).open());
	}

	@Test
	void aShippedMachineIsChosenByKeysAndJudgesOpenProgramsAtOnce() {
		OpenProgram program =
				OpenProgram.open(OpenProgram.file("unit.nc",
						"%\nO1\nG0 X1. Y1.\nT2 M6 (DRILL .201)\nS3200 M3\nG43 Z1. H2\nG99 G83 Z-1. R.1 Q.1 F3.\nG80\nM30\n%\n"));
		program.waitFor("mm was assumed");
		Dialogs.inPreferences("truelead.editor.machine", () -> {
			Screen.chord(SWT.ALT, 'e');
			Screen.chord(SWT.ALT, 'm');
			Combo machine = Dialogs.find(Dialogs.shell("Preferences"), Combo.class).get(0);
			for (int key = 0; key < machine.getItemCount() && !machine.getText().equals("milling-inch"); key++) {
				Screen.press(0, SWT.ARROW_DOWN);
			}
			assertThat(machine.getText()).isEqualTo("milling-inch");
		});
		program.waitFor("inch was assumed (machine profile: the workspace's machine");
	}

	private static void assertFound(String dialog, String word, String page) {
		Text search = Dialogs.find(Dialogs.shell(dialog), Text.class).get(0);
		search.setFocus();
		Screen.chord(SWT.CTRL, 'a');
		Screen.type(word);
		Tree pages = Dialogs.find(Dialogs.shell(dialog), Tree.class).get(0);
		try {
			Screen.waitUntil(page + " for " + word, () -> texts(pages.getItems()).contains(page)
					&& !texts(pages.getItems()).contains("Web Browser"));
		} finally {
			Dialogs.shell(dialog).close();
		}
	}

	private static List<String> texts(TreeItem[] items) {
		List<String> texts = new ArrayList<>();
		for (TreeItem item : items) {
			texts.add(item.getText());
			texts.addAll(texts(item.getItems()));
		}
		return texts;
	}
}
