package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.PageBookView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The outline names tools and what they thread. */
class OutlineTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void toolsAndTheirThreadingStandInTheOutline() throws PartInitException {
		IViewPart outline = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(IPageLayout.ID_OUTLINE);
		OpenProgram.open(OpenProgram.file("outline.nc", Programs.GOOD));
		Screen.waitUntil("an outline", () -> texts(outline).stream().anyMatch(text -> text.contains("tapping")));
		assertThat(texts(outline)).anyMatch(text -> text.startsWith("T2") && text.contains("5 mm"))
				.anyMatch(text -> text.startsWith("M6x1") && text.contains("2 holes"));
	}

	@Test
	void aTurnedThreadStandsBelowItsTool() throws PartInitException {
		IViewPart outline = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(IPageLayout.ID_OUTLINE);
		OpenProgram.open(OpenProgram.file("turned-outline.nc", Programs.TURNED));
		Screen.waitUntil("the thread in the outline", () -> texts(outline).contains("M20x1.5 \u00b7 single point outside"));
	}

	@Test
	void theOutlineFollowsTheCaretAndMarksHoles() throws PartInitException {
		IViewPart outline = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(IPageLayout.ID_OUTLINE);
		OpenProgram program = OpenProgram.open(OpenProgram.file("follow.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Screen.waitUntil("an outline", () -> texts(outline).stream().anyMatch(text -> text.contains("tapping")));
		program.focus();
		program.caretBehind("T2 M6");
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.waitUntil("the drill selected, not " + selected(outline), () -> selected(outline).startsWith("T2"));
		program.caretBehind("Z-14.5 R5. F500\nX80");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the second hole selected, not " + selected(outline), () -> selected(outline).equals("80 mm, 20 mm ✓"));
		assertThat(texts(outline)).as("the hole where the feed is wrong").contains("20 mm, 20 mm");
	}

	@Test
	void theOutlineLeadsToTheHole() throws PartInitException {
		IViewPart outline = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(IPageLayout.ID_OUTLINE);
		OpenProgram program = OpenProgram.open(OpenProgram.file("lead.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Screen.waitUntil("an outline", () -> texts(outline).stream().anyMatch(text -> text.contains("tapping")));
		Tree tree = (Tree) ((PageBookView) outline).getCurrentPage().getControl();
		tree.setFocus();
		tree.setSelection(tree.getItem(0));
		Screen.press(0, SWT.END);
		Screen.press(SWT.SHIFT, SWT.ARROW_RIGHT);
		Screen.press(0, SWT.END);
		Screen.waitUntil("the block of the last entry, not " + program.widget().getSelectionText(),
				() -> program.widget().getSelectionText().startsWith("X80."));
	}

	private static String selected(IViewPart outline) {
		TreeItem[] items = ((Tree) ((PageBookView) outline).getCurrentPage().getControl()).getSelection();
		return items.length == 0 ? "" : items[0].getText();
	}

	private static List<String> texts(IViewPart outline) {
		Control control = ((PageBookView) outline).getCurrentPage().getControl();
		List<String> texts = new ArrayList<>();
		collect(control, texts);
		return texts;
	}

	private static void collect(Control control, List<String> texts) {
		if (control instanceof Tree tree) {
			collect(tree.getItems(), texts);
		} else if (control instanceof Composite composite) {
			for (Control child : composite.getChildren()) {
				collect(child, texts);
			}
		}
	}

	private static void collect(TreeItem[] items, List<String> texts) {
		for (TreeItem item : items) {
			texts.add(item.getText());
			collect(item.getItems(), texts);
		}
	}
}
