package truelead.editor.fix;

import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.source.CompositeRuler;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.IVerticalRulerInfo;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.check.ShownFindings;

/**
 * A click on a finding's sign at the ruler: the caret goes to the finding, and what can be done about it is offered as by the quick fix
 * key.
 */
public final class FixAtRuler extends Action {

	private final CheckedEditor editor;

	public FixAtRuler(CheckedEditor editor) {
		this.editor = editor;
	}

	@Override
	public void run() {
		if (editor.getAdapter(IVerticalRulerInfo.class) instanceof CompositeRuler ruler && atSigns(ruler)
				&& editor.viewer() instanceof ProjectionViewer viewer) {
			List<FindingAnnotation> found = found(viewer, ruler.getLineOfLastMouseButtonActivity());
			if (!found.isEmpty()) {
				editor.selectAndReveal(viewer.getAnnotationModel().getPosition(found.get(0)).getOffset(), 0);
				ITextOperationTarget target = viewer.getTextOperationTarget();
				if (target.canDoOperation(ISourceViewer.QUICK_ASSIST)) {
					target.doOperation(ISourceViewer.QUICK_ASSIST);
				}
			}
		}
	}

	/** Whether the mouse is at the first column of the ruler: a click on a line number or a fold is meant for these. */
	private static boolean atSigns(CompositeRuler ruler) {
		int x = ruler.getControl().toControl(ruler.getControl().getDisplay().getCursorLocation()).x;
		return x <= ruler.getDecoratorIterator().next().getWidth();
	}

	/** The findings of a line, and of what is folded away below it. */
	private static List<FindingAnnotation> found(ProjectionViewer viewer, int line) {
		IDocument document = viewer.getDocument();
		try {
			int shown = viewer.modelLine2WidgetLine(line) + 1;
			int next = shown < viewer.getTextWidget().getLineCount() ? viewer.widgetLine2ModelLine(shown) : document.getNumberOfLines();
			int start = document.getLineOffset(line);
			int end = next > line && next < document.getNumberOfLines() ? document.getLineOffset(next) - 1 : document.getLength();
			return ShownFindings.at(viewer.getAnnotationModel(), start, end - start);
		} catch (BadLocationException gone) {
			return List.of();
		}
	}
}
