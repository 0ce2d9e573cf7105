package truelead.editor;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.editors.text.TextEditor;
import truelead.editor.check.LiveCheck;
import truelead.editor.look.VisibleColours;

/** A text editor for CNC programs: coloured by the grammar, checked while it is typed in. */
public final class ProgramEditor extends TextEditor {

	private final LiveCheck check = new LiveCheck(this);
	private VisibleColours colours;

	@Override
	protected void initializeEditor() {
		super.initializeEditor();
		setSourceViewerConfiguration(new ProgramConfiguration(this, getPreferenceStore()));
		setEditorContextMenuId("#TrueleadProgram");
		setRulerContextMenuId("#TrueleadProgramRuler");
	}

	@Override
	protected void initializeKeyBindingScopes() {
		setKeyBindingScopes(new String[] { EditorIds.CONTEXT });
	}

	@Override
	public void createPartControl(Composite parent) {
		super.createPartControl(parent);
		colours = new VisibleColours(getSourceViewer());
	}

	/** The check that goes with this editor for as long as it is open. */
	public LiveCheck check() {
		return check;
	}

	/** The viewer, for those who add to what it shows. */
	public ISourceViewer viewer() {
		return getSourceViewer();
	}

	@Override
	protected void editorSaved() {
		super.editorSaved();
		check.saved();
	}

	@Override
	public void doRevertToSaved() {
		super.doRevertToSaved();
		check.saved();
	}

	@Override
	public void dispose() {
		if (colours != null) {
			colours.dispose();
		}
		super.dispose();
	}
}
