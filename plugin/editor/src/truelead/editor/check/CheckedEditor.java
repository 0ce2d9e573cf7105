package truelead.editor.check;

import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.texteditor.ITextEditorExtension2;

/** An editor whose program is checked while it is typed in, as all see it that add to it. */
public interface CheckedEditor extends ITextEditor, ITextEditorExtension2 {

	/** The check that goes with this editor for as long as it is open. */
	LiveCheck check();

	/** The viewer, for those who add to what it shows. */
	ISourceViewer viewer();
}
