package truelead.editor.settings.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * A table under a field that leaves only rows with the words typed there. All is reached by keys: the label's mnemonic leads to the field,
 * the arrow down from the field to the rows, the enter key opens a row.
 *
 * @param <T> what a row is of
 */
public final class Sheet<T> {

	private final List<Function<T, String>> columns = new ArrayList<>();
	private final Class<T> kind;
	private final TableViewer table;
	private final Text filter;
	private Predicate<T> strong = row -> false;

	/** @param label what stands before the field, with its mnemonic */
	public Sheet(Composite parent, String label, Class<T> kind) {
		this.kind = kind;
		Composite line = Layouts.columns(parent, 2);
		new Label(line, SWT.NONE).setText(label);
		filter = new Text(line, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		filter.setMessage("type words to look for");
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		table = new TableViewer(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
		table.getTable().setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, true).hint(600, 6 * table.getTable().getItemHeight()).applyTo(table.getTable());
		table.setContentProvider(ArrayContentProvider.getInstance());
		table.addFilter(new Words());
		filter.addModifyListener(typed -> table.refresh());
		filter.addKeyListener(KeyListener.keyPressedAdapter(key -> {
			if (key.keyCode == SWT.ARROW_DOWN) {
				toRows();
			}
		}));
	}

	private void toRows() {
		Object first = table.getElementAt(0);
		if (first != null && table.getStructuredSelection().isEmpty()) {
			table.setSelection(new StructuredSelection(first), true);
		}
		table.getTable().setFocus();
	}

	/** Adds a column. */
	public Sheet<T> column(String title, int width, Function<T, String> text) {
		TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.getColumn().setMoveable(true);
		column.setLabelProvider(new Cell(text));
		columns.add(text);
		return this;
	}

	/** Rows of which that holds are written strong. */
	public Sheet<T> strong(Predicate<T> rows) {
		strong = rows;
		return this;
	}

	/** Under the table, one chosen row is told of in full: the last columns are seldom all in sight. */
	public Sheet<T> tell(Function<T, String> words) {
		Label told = new Label(table.getTable().getParent(), SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(400, 2 * told.computeSize(SWT.DEFAULT, SWT.DEFAULT).y).applyTo(told);
		return onSelect(() -> told.setText(selected().size() == 1 ? words.apply(selected().get(0)).replace("&", "&&") : ""));
	}

	/** Is told when other rows are chosen. */
	public Sheet<T> onSelect(Runnable work) {
		table.addSelectionChangedListener(chosen -> work.run());
		return this;
	}

	/** Is told when a row is opened, by a double click or the enter key. */
	public Sheet<T> onOpen(Runnable work) {
		table.addOpenListener(opened -> work.run());
		return this;
	}

	/** Shows these rows; what was chosen stays chosen, known again by what {@code identity} gives. */
	public void rows(List<T> rows, Function<T, ?> identity) {
		List<?> before = selected().stream().map(identity).toList();
		int top = table.getTable().getTopIndex();
		table.setInput(rows);
		table.setSelection(new StructuredSelection(rows.stream().filter(row -> before.contains(identity.apply(row))).toList()), false);
		table.getTable().setTopIndex(top);
	}

	/** Chooses the first row of which that holds. */
	public void select(Predicate<T> wanted) {
		for (Object row : (List<?>) table.getInput()) {
			if (wanted.test(kind.cast(row))) {
				table.setSelection(new StructuredSelection(row), true);
				return;
			}
		}
	}

	/** The texts of the rows may have changed. */
	public void refresh() {
		table.refresh();
	}

	/** The rows chosen. */
	public List<T> selected() {
		List<T> chosen = new ArrayList<>();
		for (Object row : table.getStructuredSelection()) {
			chosen.add(kind.cast(row));
		}
		return chosen;
	}

	private final class Cell extends ColumnLabelProvider {

		private final Function<T, String> text;

		Cell(Function<T, String> text) {
			this.text = text;
		}

		@Override
		public String getText(Object row) {
			return text.apply(kind.cast(row));
		}

		@Override
		public Font getFont(Object row) {
			return strong.test(kind.cast(row)) ? JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT) : null;
		}
	}

	private final class Words extends ViewerFilter {

		@Override
		public boolean select(Viewer viewer, Object parent, Object row) {
			StringBuilder all = new StringBuilder();
			columns.forEach(column -> all.append(column.apply(kind.cast(row))).append('\n'));
			String text = all.toString().toLowerCase(Locale.ROOT);
			return List.of(filter.getText().toLowerCase(Locale.ROOT).strip().split(" +")).stream().allMatch(text::contains);
		}
	}
}
