package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What has been accepted in a project is looked through: what it is, where it stands, and whether it still accepts anything. */
class AcceptedPageTest {

	private static final String DIALOG = "Properties for shop";
	private static final String NOTED = Programs.WRONG_FEED.replace("G99 G84", "(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER)\nG99 G84");

	private IProject project;
	private IFile program;
	private IFile accepts;

	@BeforeEach
	void oneNoteInForceAndAStaleLine() throws CoreException {
		project = OpenProgram.file("noted.nc", NOTED).getProject();
		for (IResource other : project.members()) {
			if (other instanceof IFile && !other.getName().startsWith(".")) {
				other.delete(true, null);
			}
		}
		program = OpenProgram.file("noted.nc", NOTED);
		accepts = OpenProgram.file("accepted-findings.csv",
				"fingerprint,rule,program,reason,person,date\n0000,hole-missing,noted.nc,cast hole,first shift,2026-11-25\n");
	}

	@AfterEach
	void close() throws CoreException {
		OpenProgram.closeAll();
		accepts.delete(true, null);
	}

	@Test
	void notesAndLinesOfTheAcceptFileAreListedAndTheStaleOneIsMarked() {
		onPage(() -> {
			assertThat(row(0)).containsExactly("hole-missing", "noted.nc", "", "stale: accepts nothing", "cast hole", "first shift",
					"2026-11-25", "accepted-findings.csv");
			assertThat(row(1)).containsExactly("feed-off-pitch", "noted.nc", "20", "in force", "FLOATING HOLDER", "", "",
					"note in the program");
			Screen.press(0, SWT.ESC, (char) 27);
		});
	}

	@Test
	void theEnterKeyLeadsToTheNote() {
		onPage(() -> {
			choose("feed-off-pitch");
			Screen.press(0, SWT.CR, '\r');
		});
		IEditorPart editor = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().getActiveEditor();
		assertThat(((ITextSelection) ((ITextEditor) editor).getSelectionProvider().getSelection()).getText())
				.isEqualTo("(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER)");
	}

	@Test
	void whatIsTakenBackIsFoundAgainAndTheProgramIsAsItWas() throws IOException {
		onPage(() -> {
			choose("feed-off-pitch");
			takeBack();
			choose("hole-missing");
			takeBack();
			Screen.press(0, SWT.ESC, (char) 27);
		});
		assertThat(text(program)).isEqualTo(Programs.WRONG_FEED);
		assertThat(text(accepts)).isEqualTo("fingerprint,rule,program,reason,person,date\n");
		OpenProgram.open(program).waitFor("F500");
	}

	private void onPage(Runnable inside) {
		Dialogs.inDialog(DIALOG, () -> {
			Screen.waitUntil("two rows", () -> rows().getItemCount() == 2);
			inside.run();
		}, () -> PreferencesUtil.createPropertyDialogOn(null, project, "truelead.editor.project.accepted", null, null).open());
	}

	private static void choose(String rule) {
		Screen.chord(SWT.ALT, 'f');
		Screen.chord(SWT.CTRL, 'a');
		Screen.type(rule);
		Screen.waitUntil("one row of " + rule, () -> rows().getItemCount() == 1 && rows().getItem(0).getText(0).equals(rule));
		rows().deselectAll();
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.waitUntil("focus in the rows", () -> rows().isFocusControl());
	}

	private static void takeBack() {
		Dialogs.inDialog("Take Back", () -> Screen.press(0, SWT.CR, '\r'), () -> Screen.chord(SWT.ALT, 'b'));
		Screen.waitUntil("the row gone", () -> rows().getItemCount() == 0);
		// without a window manager nobody gives the focus back
		Screen.focus("the rows", rows());
	}

	private static Table rows() {
		return Dialogs.find(Dialogs.shell(DIALOG), Table.class).get(0);
	}

	private static List<String> row(int row) {
		return IntStream.range(0, rows().getColumnCount()).mapToObj(column -> rows().getItem(row).getText(column)).toList();
	}

	private static String text(IFile file) throws IOException {
		return Files.readString(file.getLocation().toFile().toPath(), StandardCharsets.UTF_8);
	}
}
