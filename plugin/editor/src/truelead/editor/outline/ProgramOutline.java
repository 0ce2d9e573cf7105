package truelead.editor.outline;

import java.util.List;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;
import truelead.editor.ProgramEditor;
import truelead.editor.check.CheckedText;

/** The outline of the program in an editor; it follows the checks and shows the block of what is selected in it. */
public final class ProgramOutline extends ContentOutlinePage {

	private final ProgramEditor editor;
	private List<Entry> shown = List.of();

	public ProgramOutline(ProgramEditor editor) {
		this.editor = editor;
	}

	@Override
	public void createControl(Composite parent) {
		super.createControl(parent);
		TreeViewer viewer = getTreeViewer();
		viewer.setContentProvider(new Content());
		viewer.setLabelProvider(new Labels());
		viewer.setAutoExpandLevel(2);
		editor.check().addListener(this::checked);
		editor.check().last().ifPresent(this::checked);
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

	private static final class Content implements ITreeContentProvider {

		@Override
		public Object[] getElements(Object entries) {
			return ((List<?>) entries).toArray();
		}

		@Override
		public Object[] getChildren(Object entry) {
			return ((Entry) entry).below().toArray();
		}

		@Override
		public Object getParent(Object entry) {
			return null;
		}

		@Override
		public boolean hasChildren(Object entry) {
			return !((Entry) entry).below().isEmpty();
		}
	}

	private static final class Labels extends LabelProvider {

		@Override
		public String getText(Object entry) {
			return ((Entry) entry).text();
		}

		@Override
		public Image getImage(Object entry) {
			ISharedImages images = PlatformUI.getWorkbench().getSharedImages();
			return ((Entry) entry).worst().map(severity -> images.getImage(switch (severity) {
				case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
				case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
				case INFORMATION -> ISharedImages.IMG_OBJS_INFO_TSK;
			})).orElse(null);
		}
	}
}
