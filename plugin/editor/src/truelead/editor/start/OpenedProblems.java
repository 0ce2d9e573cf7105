package truelead.editor.start;

import org.eclipse.jface.viewers.AbstractTreeViewer;
import org.eclipse.ui.IViewPart;

/** Unfolds the Problems view once it has rows: it folds what it groups, and a person who starts for the first time would see a count alone. */
final class OpenedProblems {

	private static final int PAUSE = 250;
	private static final int TRIES = 60;

	private OpenedProblems() {
	}

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
			}
		});
	}
}
