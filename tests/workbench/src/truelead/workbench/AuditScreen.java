package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.navigator.CommonNavigator;

/** The audit view as a person works in it. */
final class AuditScreen {

	private static final String VIEW = "truelead.editor.audit.view";

	private AuditScreen() {
	}

	/** Chooses a project in the explorer and presses the key that audits it. */
	static void start(IProject project) {
		try {
			CommonNavigator explorer = (CommonNavigator) page().showView("org.eclipse.ui.navigator.ProjectExplorer");
			Screen.toFront();
			explorer.getCommonViewer().setSelection(new StructuredSelection(project), true);
			Screen.focus("the explorer", explorer.getCommonViewer().getControl());
		} catch (PartInitException cannot) {
			throw new AssertionError(cannot);
		}
		Screen.chord(SWT.CTRL | SWT.ALT, 'a');
		Screen.waitUntil("the audit view", () -> page().findView(VIEW) != null);
	}

	/** The same, until all programs are through. */
	static void audit(IProject project, int programs) {
		start(project);
		Screen.waitUntil("the end of the audit, not: " + said(), () -> said().startsWith(programs + " programs"));
	}

	/** Walks down the open tree by its key to the first finding of a rule of a program. */
	static void goTo(String program, String rule) {
		Tree tree = tree();
		((TreeViewer) page().findView(VIEW).getViewSite().getSelectionProvider()).expandAll();
		tree.setFocus();
		tree.setSelection(Arrays.stream(tree.getItems()).filter(item -> item.getText().contains(program)).findFirst().orElseThrow());
		for (int key = 0; key < 30 && !tree.getSelection()[0].getText().startsWith(rule + " ("); key++) {
			Screen.press(0, SWT.ARROW_DOWN);
		}
		Screen.press(0, SWT.ARROW_DOWN);
		assertThat(tree.getSelection()[0].getParentItem().getText()).startsWith(rule + " (");
	}

	/** Accepts what is chosen, in the accept file of the project or by a note in the program. */
	static void accept(String reason, boolean inTheAcceptFile) {
		Dialogs.inDialog("Accept", () -> {
			Screen.type(reason);
			if (inTheAcceptFile) {
				Screen.chord(SWT.ALT, 'f');
			}
			Screen.press(0, SWT.CR, '\r');
		}, () -> press("Accept"));
	}

	/** Writes a report of a kind, chosen by the arrow keys, to a file, and waits until it is there. */
	static void write(String kind, String file) {
		write(kind, file, () -> press("Write Report"));
	}

	/** The same in the dialog that comes by {@code opening}. */
	static void write(String kind, String file, Runnable opening) {
		Dialogs.inDialog("Write Report", () -> {
			Combo kinds = Dialogs.find(Dialogs.shell("Write Report"), Combo.class).get(0);
			Screen.focus("the kinds", kinds);
			Screen.press(0, SWT.HOME);
			for (int key = 0; key < kinds.getItemCount() && !kinds.getText().equals(kind); key++) {
				Screen.press(0, SWT.ARROW_DOWN);
			}
			assertThat(kinds.getText()).isEqualTo(kind);
			Screen.chord(SWT.ALT, 'f');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type(file);
			Screen.press(0, SWT.CR, '\r');
		}, opening);
		Screen.waitUntil("the report, not: " + said(), () -> said().startsWith(file + " written. "));
	}

	/** Presses the button of the view's tool bar that says the words, or tells them where the mouse rests on it. */
	static void press(String words) {
		// without a window manager nobody gives the keys back to the window when a dialog closes
		Screen.toFront();
		ToolItem item = button(words);
		assertThat(item.isEnabled()).as(words + " can be pressed").isTrue();
		item.notifyListeners(SWT.Selection, new Event());
	}

	static ToolItem button(String words) {
		return Dialogs.find(page().findView(VIEW).getViewSite().getShell(), ToolBar.class).stream()
				.flatMap(bar -> Arrays.stream(bar.getItems())).filter(one -> one.getText().startsWith(words)
						|| words.equals(one.getToolTipText())).findFirst().orElseThrow();
	}

	/** The programs with their verdicts. */
	static List<String> programs() {
		return Arrays.stream(tree().getItems()).map(TreeItem::getText).toList();
	}

	/** The verdict of a program. */
	static String verdict(String program) {
		return programs().stream().filter(text -> text.contains(program)).findFirst().orElse("");
	}

	/** What stands above the programs; nothing where there is no view. */
	static String said() {
		return page().findView(VIEW) == null ? "" : Dialogs.find(tree().getParent(), Label.class).get(0).getText();
	}

	static Tree tree() {
		return (Tree) ((TreeViewer) page().findView(VIEW).getViewSite().getSelectionProvider()).getControl();
	}

	static void close() {
		page().hideView(page().findView(VIEW));
		Screen.settle();
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
