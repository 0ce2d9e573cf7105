package truelead.editor.start;

import java.util.Arrays;
import org.eclipse.jface.viewers.AbstractTreeViewer;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewPart;

/**
 * Makes the Problems view readable for a person who starts for the first time. It folds what it groups, so that a count alone would be
 * seen, and has room for half of what a finding says beside columns that are the same in every row.
 */
final class OpenedProblems {

	private static final int PAUSE = 250;
	private static final int TRIES = 60;

	private OpenedProblems() {
	}

	/** Widths of the columns behind the description, pixels: program, folder, line and rule, type. */
	private static final int[] WIDTHS = { 150, 0, 200, 0 };

	/** Unfolds it as soon as there is something in it, and gives up after some seconds. */
	static void soon(IViewPart view) {
		if (view.getSite().getSelectionProvider() instanceof AbstractTreeViewer rows) {
			later(rows, TRIES);
		}
	}

	private static void later(AbstractTreeViewer rows, int tries) {
		rows.getControl().getDisplay().timerExec(PAUSE, () -> {
			if (rows.getControl().isDisposed() || tries == 0) {
				return;
			}
			if (rows.getExpandedElements().length == 0) {
				rows.expandAll();
				later(rows, tries - 1);
			} else if (rows.getControl() instanceof Tree tree) {
				giveRoom(tree);
			}
		});
	}

	private static void giveRoom(Tree tree) {
		if (tree.getColumnCount() == WIDTHS.length + 1) {
			for (int i = 0; i < WIDTHS.length; i++) {
				tree.getColumn(i + 1).setWidth(WIDTHS[i]);
			}
			tree.getColumn(0).setWidth(Math.max(tree.getColumn(0).getWidth(), tree.getClientArea().width - Arrays.stream(WIDTHS).sum()));
		}
	}
}
