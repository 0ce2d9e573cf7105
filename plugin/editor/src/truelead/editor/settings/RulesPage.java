package truelead.editor.settings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.IWorkbenchPropertyPage;
import truelead.checker.machine.MachineProfile;
import truelead.checker.rule.RulePage;

/** The machine and the severity of every rule, for the workspace (preferences) or for one project (properties). */
public final class RulesPage extends PreferencePage implements IWorkbenchPreferencePage, IWorkbenchPropertyPage {

	private static final List<String> WORDS = List.of("", "error", "warning", "information", CheckSettings.OFF);

	private final Map<String, String> chosen = new LinkedHashMap<>();
	private IAdaptable element;
	private TableViewer table;
	private Combo machine;

	@Override
	protected Control createContents(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(page);
		new Label(page, SWT.NONE).setText("&Machine:");
		machine = new Combo(page, SWT.READ_ONLY);
		machine.add(byDefault());
		MachineProfile.shipped().forEach(machine::add);
		machine.select(Math.max(0, machine.indexOf(settings().machine())));
		Label heading = new Label(page, SWT.NONE);
		heading.setText("&Severity of each rule:");
		GridDataFactory.fillDefaults().span(2, 1).indent(0, 8).applyTo(heading);
		RulePage.all().forEach(rule -> chosen.put(rule.name(), settings().severityOf(rule.name())));
		createTable(page);
		return page;
	}

	private void createTable(Composite page) {
		table = new TableViewer(page, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
		table.getTable().setHeaderVisible(true);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(560, 360).applyTo(table.getTable());
		column("Rule", 190, RulePage::name);
		column("Severity", 130, rule -> word(chosen.get(rule.name()))).setEditingSupport(new Choice(table));
		column("What it finds", 420, RulePage::summary);
		table.setContentProvider(ArrayContentProvider.getInstance());
		table.setInput(RulePage.all());
	}

	private TableViewerColumn column(String title, int width, Function<RulePage, String> text) {
		TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(rule -> text.apply((RulePage) rule)));
		return column;
	}

	private String word(String severity) {
		return severity.isEmpty() ? byDefault() : severity;
	}

	private String byDefault() {
		return element == null ? "(as shipped)" : "(as in the workspace)";
	}

	private CheckSettings settings() {
		return element == null ? CheckSettings.ofWorkspace() : CheckSettings.of(Adapters.adapt(element, IProject.class));
	}

	@Override
	public boolean performOk() {
		CheckSettings settings = settings();
		settings.machine(machine.getSelectionIndex() <= 0 ? "" : machine.getText());
		chosen.forEach(settings::severityOf);
		settings.save();
		return true;
	}

	@Override
	protected void performDefaults() {
		machine.select(0);
		chosen.replaceAll((rule, word) -> "");
		table.refresh();
		super.performDefaults();
	}

	@Override
	public void init(IWorkbench workbench) {
		setDescription("How findings are judged in all projects that do not say otherwise.");
	}

	@Override
	public IAdaptable getElement() {
		return element;
	}

	@Override
	public void setElement(IAdaptable element) {
		this.element = element;
	}

	/** Chooses a rule's severity in the table. */
	private final class Choice extends EditingSupport {

		Choice(TableViewer viewer) {
			super(viewer);
		}

		@Override
		protected CellEditor getCellEditor(Object rule) {
			String[] words = WORDS.stream().map(RulesPage.this::word).toArray(String[]::new);
			return new ComboBoxCellEditor(table.getTable(), words, SWT.READ_ONLY);
		}

		@Override
		protected boolean canEdit(Object rule) {
			return true;
		}

		@Override
		protected Object getValue(Object rule) {
			return Math.max(0, WORDS.indexOf(chosen.get(((RulePage) rule).name())));
		}

		@Override
		protected void setValue(Object rule, Object index) {
			chosen.put(((RulePage) rule).name(), WORDS.get((Integer) index));
			table.refresh(rule);
		}
	}
}
