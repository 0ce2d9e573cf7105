package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ProjectScope;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.service.prefs.BackingStoreException;

/** The Problems view offers by its quick fix key what the editor offers: fixes, and the severity of the rule. */
class ProblemFixesTest {

	private static final String SEVERITY = "Severity of feed-off-pitch";

	private IFile file;
	private OpenProgram program;
	private IViewPart problems;

	@BeforeEach
	void listed() throws CoreException {
		ResourcesPlugin.getWorkspace().getRoot().deleteMarkers("truelead.editor.finding", true, IResource.DEPTH_INFINITE);
		file = OpenProgram.file("listed.nc", Programs.WRONG_FEED);
		program = OpenProgram.open(file);
		program.waitFor("F500");
		problems = page().showView("org.eclipse.ui.views.ProblemView");
		toProblem();
	}

	@AfterEach
	void close() throws BackingStoreException {
		OpenProgram.closeAll();
		page().hideView(problems);
		IEclipsePreferences ofProject = new ProjectScope(file.getProject()).getNode("truelead.editor");
		ofProject.clear();
		ofProject.flush();
		Screen.settle();
	}

	@Test
	void aFixIsTakenByKeys() {
		quickFix("F520");
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
		assertThat(program.editor().isDirty()).as("saving is left to the person").isTrue();
	}

	@Test
	void aProgramThatNobodyHasOpenIsOpenedAndMended() {
		Screen.waitUntil("a marker", () -> OpenProgram.markers(file, "truelead.editor.finding").stream().anyMatch(message ->
				message.contains("F500")));
		OpenProgram.closeAll();
		page().activate(problems);
		toProblem();
		quickFix("F520");
		Screen.waitUntil("the program", () -> page().getActiveEditor() instanceof ITextEditor);
		OpenProgram opened = new OpenProgram((ITextEditor) page().getActiveEditor());
		assertThat(opened.editor().getEditorInput().getName()).isEqualTo("listed.nc");
		Screen.waitUntil("the right feed, not " + opened.document().get(), () -> opened.document().get().equals(Programs.GOOD));
		assertThat(opened.editor().isDirty()).as("saving is left to the person").isTrue();
		assertThat(opened.widget().getText(opened.widget().getCaretOffset(), opened.widget().getCaretOffset() + 3))
				.as("the caret at the change").isEqualTo("F520");
		opened.focus();
		Screen.chord(SWT.CTRL, 'z');
		Screen.waitUntil("one undo takes it back", () -> opened.document().get().equals(Programs.WRONG_FEED));
	}

	@Test
	void aFixWhoseFindingHasGoneSinceChangesNothing() {
		program.focus();
		program.caretBehind("R5. F500");
		Screen.press(0, SWT.BS);
		Screen.press(0, SWT.BS);
		Screen.type("20");
		program.waitGone("F500");
		page().activate(problems);
		toProblem();
		quickFix("F520");
		Screen.idle(600);
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void theSeverityOfTheRuleIsSetByKeys() {
		whenAsked(SEVERITY, () -> {
			Screen.chord(SWT.ALT, 'p');
			Screen.chord(SWT.ALT, 'v');
			Combo severity = Dialogs.find(Dialogs.shell(SEVERITY), Combo.class).get(0);
			for (int key = 0; key < 5 && !severity.getText().equals("information"); key++) {
				Screen.press(0, SWT.ARROW_DOWN);
			}
			Screen.press(0, SWT.CR, '\r');
		});
		quickFix("Set the severity of feed-off-pitch");
		Screen.waitUntil("information", () -> program.waitFor("F500").type().equals("information"));
	}

	@Test
	void theFindingIsAcceptedByKeys() {
		whenAsked("Accept", () -> {
			Screen.type("floating holder");
			Screen.press(0, SWT.CR, '\r');
		});
		quickFix("Accept feed-off-pitch");
		program.waitGone("F500");
		assertThat(program.document().get())
				.isEqualTo(Programs.WRONG_FEED.replace("G99 G84", "(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER)\nG99 G84"));
	}

	/** Does something in a dialog as soon as it is there; the dialog runs the events itself until it is closed. */
	private static void whenAsked(String title, Runnable inside) {
		Display.getCurrent().timerExec(300, () -> {
			Shell dialog = Dialogs.shell(title);
			if (dialog == null || !dialog.isVisible()) {
				whenAsked(title, inside);
				return;
			}
			Dialogs.takeFocus(title);
			inside.run();
		});
	}

	/** Opens the group of errors by its key and goes to the feed's row. */
	private static void toProblem() {
		Tree rows = Dialogs.find((Composite) PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), Tree.class).stream()
				.filter(tree -> tree.getColumnCount() > 3).findFirst().orElseThrow();
		Screen.focus("the problems", rows);
		// the view fills its rows bit by bit, and anew when a marker comes or goes: a row may be unknown for a while
		Screen.waitUntil("the feed's row", () -> chosen(rows).contains("F500"), () -> step(rows));
	}

	/** A row down, or to the first row of the errors where none is chosen or there is no row below. */
	private static void step(Tree rows) {
		TreeItem before = rows.getSelectionCount() == 0 ? null : rows.getSelection()[0];
		if (before != null && before.getParentItem() != null) {
			Screen.press(0, SWT.ARROW_DOWN);
		}
		if (rows.getSelectionCount() == 0 || rows.getSelection()[0] == before) {
			Screen.press(0, SWT.HOME);
			Screen.press(0, SWT.ARROW_RIGHT);
			Screen.press(0, SWT.ARROW_DOWN);
		}
	}

	private static String chosen(Tree rows) {
		return rows.getSelectionCount() == 0 ? "" : rows.getSelection()[0].getText();
	}

	private static void quickFix(String words) {
		Dialogs.inDialog("Quick Fix", () -> {
			Table fixes = Dialogs.find(Dialogs.shell("Quick Fix"), Table.class).get(0);
			assertThat(Arrays.stream(fixes.getItems()).map(TableItem::getText)).anyMatch(text -> text.contains(words));
			fixes.setFocus();
			Screen.press(0, SWT.HOME);
			for (int i = 0; i < fixes.getItemCount()
					&& (fixes.getSelectionCount() == 0 || !fixes.getSelection()[0].getText().contains(words)); i++) {
				Screen.press(0, SWT.ARROW_DOWN);
			}
			assertThat(fixes.getSelection()[0].getText()).contains(words);
			Screen.press(0, SWT.CR, '\r');
		}, () -> Screen.chord(SWT.CTRL, '1'));
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
