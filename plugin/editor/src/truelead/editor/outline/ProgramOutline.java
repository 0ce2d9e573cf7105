package truelead.editor.outline;

import java.util.List;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.IPostSelectionProvider;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;

/** The outline of the program in an editor; it follows the checks and shows the block of what is selected in it. */
public final class ProgramOutline extends ContentOutlinePage {

	private final CheckedEditor editor;
	private List<Entry> shown = List.of();

	public ProgramOutline(CheckedEditor editor) {
		this.editor = editor;
	}

	@Override
	public void createControl(Composite parent) {
		super.createControl(parent);
		TreeViewer viewer = getTreeViewer();
		viewer.setContentProvider(new EntryContent());
		viewer.setLabelProvider(new EntryLabels());
		viewer.setAutoExpandLevel(2);
		editor.check().addListener(this::checked);
		editor.check().last().ifPresent(this::checked);
		IPostSelectionProvider carets = (IPostSelectionProvider) editor.getSelectionProvider();
		ISelectionChangedListener caret = event -> followCaret(event.getSelection());
		carets.addPostSelectionChangedListener(caret);
		viewer.getControl().addDisposeListener(event -> carets.removePostSelectionChangedListener(caret));
	}

	/** Selects the entry of the block at the caret, unless the outline itself is being used. */
	private void followCaret(ISelection selection) {
		TreeViewer viewer = getTreeViewer();
		if (selection instanceof ITextSelection caret && viewer != null && !viewer.getControl().isDisposed()
				&& !viewer.getControl().isFocusControl()) {
			viewer.setSelection(Entry.at(caret.getStartLine(), shown), true);
		}
	}

	/** Reads the outline on the thread of the check, and shows it where it differs from what is shown. */
	private void checked(CheckedText checked) {
		List<Entry> entries = new OutlineReader(checked).read();
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
			if (getTreeViewer() != null && !getTreeViewer().getControl().isDisposed() && !entries.equals(shown)) {
				Object[] expanded = getTreeViewer().getExpandedElements();
				shown = entries;
				getTreeViewer().setInput(entries);
				getTreeViewer().setExpandedElements(expanded);
				getTreeViewer().expandToLevel(2);
			}
		});
	}

	@Override
	public void selectionChanged(SelectionChangedEvent event) {
		super.selectionChanged(event);
		if (event.getSelection() instanceof IStructuredSelection selection && selection.getFirstElement() instanceof Entry entry
				&& getTreeViewer().getControl().isFocusControl()) {
			IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
			try {
				editor.selectAndReveal(document.getLineOffset(entry.line()), document.getLineInformation(entry.line()).getLength());
			} catch (BadLocationException edited) {
				return;
			}
		}
	}
}
