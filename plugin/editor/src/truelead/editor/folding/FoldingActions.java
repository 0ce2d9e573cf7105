package truelead.editor.folding;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import org.eclipse.ui.editors.text.IFoldingCommandIds;
import org.eclipse.ui.texteditor.ITextEditor;

/** Does what the platform's own folding keys ask for. */
public final class FoldingActions {

	private FoldingActions() {
	}

	/** Hangs the actions on an editor's keys. */
	public static void install(ITextEditor editor, ProjectionViewer viewer) {
		add(editor, viewer, "FoldingToggle", IFoldingCommandIds.FOLDING_TOGGLE, ProjectionViewer.TOGGLE);
		add(editor, viewer, "FoldingExpand", IFoldingCommandIds.FOLDING_EXPAND, ProjectionViewer.EXPAND);
		add(editor, viewer, "FoldingCollapse", IFoldingCommandIds.FOLDING_COLLAPSE, ProjectionViewer.COLLAPSE);
		add(editor, viewer, "FoldingExpandAll", IFoldingCommandIds.FOLDING_EXPAND_ALL, ProjectionViewer.EXPAND_ALL);
		add(editor, viewer, "FoldingCollapseAll", IFoldingCommandIds.FOLDING_COLLAPSE_ALL, ProjectionViewer.COLLAPSE_ALL);
	}

	private static void add(ITextEditor editor, ProjectionViewer viewer, String name, String command, int operation) {
		IAction action = new Action() {
			@Override
			public void run() {
				if (viewer.canDoOperation(operation)) {
					viewer.doOperation(operation);
				}
			}
		};
		action.setActionDefinitionId(command);
		editor.setAction(name, action);
	}
}
