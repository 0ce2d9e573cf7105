package truelead.editor.command;

import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.graphics.Point;
import truelead.editor.check.CheckedEditor;

/**
 * What a person sees of a program, kept through a change of very many places: what is folded, the selection, the first line on the screen.
 */
record KeptView(ISourceViewer viewer, ClosedFolds folds, Point selected, int top) {

	/** Opens the folds. */
	static KeptView of(CheckedEditor editor) {
		ISourceViewer viewer = editor.viewer();
		Point selected = viewer.getSelectedRange();
		int top = viewer.getTopIndex();
		return new KeptView(viewer, ClosedFolds.open(viewer), selected, top);
	}

	/** Shows the same again, now that it stands elsewhere. */
	void show(Rewrite.Moved moved) {
		folds.close();
		int start = moved.of(selected.x);
		viewer.setSelectedRange(start, moved.of(selected.x + selected.y) - start);
		viewer.setTopIndex(top);
	}
}
