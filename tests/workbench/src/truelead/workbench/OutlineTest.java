package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
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
