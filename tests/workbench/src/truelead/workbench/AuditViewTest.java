package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.navigator.CommonNavigator;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reviewer audits a project: verdicts, a way to the block, acceptance with a reason, a report. */
class AuditViewTest {

	private static final String VIEW = "truelead.editor.audit.view";

	private IProject project;

	@BeforeEach
	void twoPrograms() throws CoreException {
		project = OpenProgram.file("good.nc", Programs.GOOD).getProject();
		for (IResource other : project.members()) {
			if (other instanceof IFile && !other.getName().startsWith(".")) {
				other.delete(true, null);
			}
		}
		OpenProgram.file("good.nc", Programs.GOOD);
		OpenProgram.file("slow.nc", Programs.WRONG_FEED);
	}

	@AfterEach
	void close() throws CoreException {
		OpenProgram.closeAll();
		project.getFile("accepted-findings.csv").delete(true, null);
		IWorkbenchPage page = page();
		page.hideView(page.findView(VIEW));
		Screen.settle();
	}

	@Test
	void aProjectIsAuditedByAKeyAndTheEnterKeyLeadsToTheBlock() throws Exception {
		auditTheProject();
		assertThat(programs()).satisfiesExactly(good -> assertThat(good).startsWith("shop/good.nc \u2013 Nothing found"),
				slow -> assertThat(slow).startsWith("shop/slow.nc \u2013 Do not run: 1 error"));
		assertThat(said()).contains("2 programs, 2 threading operations: 1 error, ");
		goToTheFeed();
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the program", () -> page().getActiveEditor() instanceof ITextEditor);
		ITextEditor editor = (ITextEditor) page().getActiveEditor();
		assertThat(editor.getEditorInput().getName()).isEqualTo("slow.nc");
		assertThat(((ITextSelection) editor.getSelectionProvider().getSelection()).getText()).isEqualTo("F500");
	}

	@Test
	void aFindingIsAcceptedByANoteAtItsOperation() throws Exception {
		auditTheProject();
		goToTheFeed();
		Dialogs.inDialog("Accept", () -> {
			Screen.type("floating holder");
			Screen.press(0, SWT.CR, '\r');
		}, () -> press("Accept"));
		Screen.waitUntil("the verdict without the finding", () -> programs().get(1).startsWith("shop/slow.nc \u2013 Nothing found"));
		assertThat(text(project.getFile("slow.nc"))).contains("H3\n(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER)\nG99 G84 Z-14.5 R5. F500");
	}

	@Test
	void aFindingIsAcceptedInTheAcceptFileAndTheProgramStaysAsItIs() throws Exception {
		auditTheProject();
		goToTheFeed();
		Dialogs.inDialog("Accept", () -> {
			Screen.type("floating holder");
			Screen.chord(SWT.ALT, 'f');
			Screen.press(0, SWT.CR, '\r');
		}, () -> press("Accept"));
		Screen.waitUntil("the verdict without the finding", () -> programs().get(1).startsWith("shop/slow.nc \u2013 Nothing found"));
		assertThat(text(project.getFile("slow.nc"))).isEqualTo(Programs.WRONG_FEED);
		assertThat(text(project.getFile("accepted-findings.csv"))).contains(",feed-off-pitch,slow.nc,floating holder,");
	}

	@Test
	void whatTheAcceptFileAcceptsStandsInOpenProgramsAndProblemsNoLonger() throws Exception {
		IFile slow = project.getFile("slow.nc");
		OpenProgram program = OpenProgram.open(slow);
		program.waitFor("F500");
		Screen.waitUntil("a marker", () -> OpenProgram.markers(slow, "truelead.editor.finding").stream().anyMatch(message -> message.contains("F500")));
		auditTheProject();
		goToTheFeed();
		Dialogs.inDialog("Accept", () -> {
			Screen.type("floating holder");
			Screen.chord(SWT.ALT, 'f');
			Screen.press(0, SWT.CR, '\r');
		}, () -> press("Accept"));
		program.waitGone("F500");
		Screen.waitUntil("no marker", () -> OpenProgram.markers(slow, "truelead.editor.finding").stream().noneMatch(message -> message.contains("F500")));
	}

	@Test
	void aReportIsWrittenWhereThePersonSays(@TempDir Path folder) throws Exception {
		Path report = folder.resolve("threads.sarif");
		auditTheProject();
		Dialogs.inDialog("Write Report", () -> {
			Screen.type(report.toString());
			Combo kind = Dialogs.find(Dialogs.shell("Write Report"), Combo.class).get(0);
			kind.select(Arrays.asList(kind.getItems()).indexOf("SARIF"));
			kind.notifyListeners(SWT.Selection, new Event());
			Screen.press(0, SWT.CR, '\r');
		}, () -> press("Write Report"));
		Screen.waitUntil("a report", () -> said().contains(" written. "));
		assertThat(said()).startsWith(report + " written. 2 programs");
		assertThat(Files.readString(report)).contains("\"uri\": \"shop/slow.nc\"", "feed-off-pitch");
	}

	private void auditTheProject() throws Exception {
		CommonNavigator explorer = (CommonNavigator) page().showView("org.eclipse.ui.navigator.ProjectExplorer");
		Screen.toFront();
		explorer.getCommonViewer().setSelection(new StructuredSelection(project), true);
		explorer.getCommonViewer().getControl().setFocus();
		Screen.waitUntil("focus in the explorer", () -> explorer.getCommonViewer().getControl().isFocusControl());
		Screen.chord(SWT.CTRL | SWT.ALT, 'a');
		Screen.waitUntil("the audit view", () -> page().findView(VIEW) != null);
		Screen.waitUntil("the end of the audit, not: " + said(), () -> said().startsWith("2 programs"));
	}

	/** Walks the tree by its keys: second program, its rule, its finding. */
	private void goToTheFeed() {
		Tree tree = tree();
		tree.setFocus();
		tree.setSelection(tree.getItem(0));
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.press(SWT.SHIFT, SWT.ARROW_RIGHT);
		Screen.waitUntil("the rules", () -> tree.getItem(1).getExpanded());
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.press(SWT.SHIFT, SWT.ARROW_RIGHT);
		Screen.waitUntil("the findings", () -> tree.getItem(1).getItem(0).getExpanded());
		Screen.press(0, SWT.ARROW_DOWN);
		assertThat(tree.getSelection()[0].getText()).contains("error: ", "F500");
	}

	/** Presses the button of the view's tool bar that says the words. */
	private static void press(String words) {
		Composite top = view().getViewSite().getShell();
		ToolItem item = Dialogs.find(top, ToolBar.class).stream().flatMap(bar -> Arrays.stream(bar.getItems()))
				.filter(one -> one.getText().startsWith(words)).findFirst().orElseThrow();
		assertThat(item.isEnabled()).as(words + " can be pressed").isTrue();
		item.notifyListeners(SWT.Selection, new Event());
	}

	private static List<String> programs() {
		return Arrays.stream(tree().getItems()).map(TreeItem::getText).toList();
	}

	private static String said() {
		IViewPart view = view();
		return view == null ? "" : Dialogs.find(tree().getParent(), Label.class).get(0).getText();
	}

	private static Tree tree() {
		return (Tree) ((org.eclipse.jface.viewers.TreeViewer) view().getViewSite().getSelectionProvider()).getControl();
	}

	private static IViewPart view() {
		return page().findView(VIEW);
	}

	private static String text(IFile file) throws IOException {
		return Files.readString(file.getLocation().toFile().toPath(), StandardCharsets.UTF_8);
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
