package truelead.editor.outline;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import truelead.editor.check.CheckedEditor;

/** A list over the program to go to one of its entries: typing narrows it, the arrow keys move, enter goes there. */
public final class QuickPick extends PopupDialog {

	private final CheckedEditor editor;
	private final List<Entry> entries;
	private final OptionalInt line;
	private Text sought;
	private TreeViewer tree;

	private QuickPick(CheckedEditor editor, String title, List<Entry> entries, OptionalInt line) {
		super(editor.getSite().getShell(), SWT.RESIZE, true, true, false, false, false, title, null);
		this.editor = editor;
		this.entries = entries;
		this.line = line;
	}

	/** Shows it, unless the editor was closed meanwhile. */
	public static void open(CheckedEditor editor, String title, List<Entry> entries) {
		open(editor, title, entries, OptionalInt.empty());
	}

	/** The same with the entry of a line, from 0, chosen at first. */
	public static void open(CheckedEditor editor, String title, List<Entry> entries, OptionalInt line) {
		if (editor.viewer() != null && editor.viewer().getTextWidget() != null) {
			new QuickPick(editor, title, entries, line).open();
		}
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		sought = new Text(area, SWT.SINGLE);
		sought.setMessage("type to narrow");
		GridDataFactory.fillDefaults().grab(true, false).applyTo(sought);
		tree = new TreeViewer(area, SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
		GridDataFactory.fillDefaults().grab(true, true).hint(640, 320).applyTo(tree.getControl());
		tree.setContentProvider(new EntryContent());
		tree.setLabelProvider(new EntryLabels());
		tree.addFilter(new Narrow());
		tree.setInput(entries);
		tree.expandToLevel(2);
		first();
		line.ifPresent(here -> {
			if (!Entry.at(here, entries).isEmpty()) {
				tree.setSelection(Entry.at(here, entries), true);
			}
		});
		sought.addModifyListener(event -> {
			tree.refresh();
			tree.expandAll();
			first();
		});
		sought.addKeyListener(KeyListener.keyPressedAdapter(event -> {
			if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
				go();
			} else if (event.keyCode == SWT.ARROW_DOWN) {
				tree.getControl().setFocus();
			}
		}));
		tree.addDoubleClickListener(event -> go());
		tree.getControl().addKeyListener(KeyListener.keyPressedAdapter(event -> {
			if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
				go();
			}
		}));
		return area;
	}

	/** Selects the first entry that holds what is sought. */
	private void first() {
		for (Entry entry : entries) {
			Entry found = firstIn(entry);
			if (found != null) {
				tree.setSelection(new StructuredSelection(found), true);
				return;
			}
		}
	}

	private Entry firstIn(Entry entry) {
		if (entry.text().toLowerCase(Locale.ROOT).contains(wanted())) {
			return entry;
		}
		for (Entry below : entry.below()) {
			Entry found = firstIn(below);
			if (found != null) {
				return found;
			}
		}
		return null;
	}

	private String wanted() {
		return sought.getText().strip().toLowerCase(Locale.ROOT);
	}

	private void go() {
		Object chosen = tree.getStructuredSelection().getFirstElement();
		close();
		if (chosen instanceof Entry entry && editor.viewer() != null) {
			IDocument document = editor.viewer().getDocument();
			try {
				editor.getSite().getPage().getNavigationHistory().markLocation(editor);
				editor.selectAndReveal(document.getLineOffset(entry.line()), document.getLineInformation(entry.line()).getLength());
				editor.setFocus();
			} catch (BadLocationException edited) {
				return;
			}
		}
	}

	@Override
	protected Control getFocusControl() {
		return sought;
	}

	private final class Narrow extends ViewerFilter {

		@Override
		public boolean select(Viewer viewer, Object parent, Object element) {
			return holds((Entry) element) || parent instanceof Entry above && above.text().toLowerCase(Locale.ROOT).contains(wanted());
		}

		private boolean holds(Entry entry) {
			return firstIn(entry) != null;
		}
	}
}
