package truelead.editor.settings.page;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import truelead.audit.source.Reading;
import truelead.checker.job.Remark;
import truelead.checker.job.ToolColumn;
import truelead.checker.job.ToolListSheet;
import truelead.editor.settings.CheckSettings;
import truelead.editor.settings.ProjectJob;

/** The shop's tool list of a project, and how it is understood: tool by tool, and the lines that are not. */
public final class ToolListPage extends ScopedPage {

	private static final int NARROW = 80;
	private static final int WIDE = 120;

	private Text way;
	private Sheet<ToolListSheet.Row> tools;
	private Label heading;
	private org.eclipse.swt.widgets.List missed;

	public ToolListPage() {
		super("truelead.editor.tools");
	}

	@Override
	protected void fill(Composite page) {
		Composite line = Layouts.columns(page, 3);
		new Label(line, SWT.NONE).setText("Tool &list:");
		way = new Text(line, SWT.BORDER);
		way.setMessage("a CSV file with a line of headers, such as TOOL,KIND,DIAMETER,THREAD");
		GridDataFactory.fillDefaults().grab(true, false).applyTo(way);
		Layouts.push(line, "&Browse\u2026", this::browse);
		tools = new Sheet<>(page, "&Tools:", ToolListSheet.Row.class);
		tools.column("Tool", NARROW, row -> "T" + row.tool()).column("Line", NARROW, row -> String.valueOf(row.line() + 1));
		for (ToolColumn column : ToolColumn.values()) {
			if (column != ToolColumn.TOOL && column != ToolColumn.UNIT && column != ToolColumn.TPI) {
				tools.column(column.words().substring(0, 1).toUpperCase(Locale.ROOT) + column.words().substring(1), WIDE,
						row -> row.read(column));
			}
		}
		heading = new Label(page, SWT.NONE);
		heading.setText("Lines &not understood:");
		missed = new org.eclipse.swt.widgets.List(page, SWT.BORDER | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
		GridDataFactory.fillDefaults().grab(true, false).hint(400, 4 * missed.getItemHeight()).applyTo(missed);
		way.setText(settings().tools());
		way.addModifyListener(typed -> read());
		read();
	}

	@Override
	protected String chapter() {
		return "telling-it-what-is-wanted";
	}

	private IProject shop() {
		return project().orElseThrow();
	}

	private void read() {
		Optional<Reading> reading = ProjectJob.toolList(shop(), way.getText().strip());
		ToolListSheet sheet = reading.filter(Reading.Program.class::isInstance)
				.map(read -> ToolListSheet.of(((Reading.Program) read).file())).orElse(new ToolListSheet(List.of(), List.of()));
		tools.rows(sheet.rows(), ToolListSheet.Row::tool);
		missed.setItems(sheet.remarks().stream().map(ToolListPage::words).toArray(String[]::new));
		heading.setText(sheet.remarks().isEmpty() ? "Lines &not understood: none" : "Lines &not understood: " + sheet.remarks().size());
		heading.getParent().layout();
		String complaint = reading.filter(Reading.Refused.class::isInstance)
				.map(read -> way.getText() + ": " + ((Reading.Refused) read).reason()).orElse(null);
		setMessage(complaint != null || sheet.remarks().isEmpty() ? complaint : words(sheet.remarks().get(0)), WARNING);
	}

	private static String words(Remark remark) {
		return "line " + (remark.at().line() + 1) + ": " + remark.message();
	}

	private void browse() {
		FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
		dialog.setText("Tool List");
		dialog.setFilterExtensions(new String[] { "*.csv;*.txt;*.tsv", "*.*" });
		ProjectJob.file(shop(), ".").ifPresent(folder -> dialog.setFilterPath(folder.toString()));
		String chosen = dialog.open();
		if (chosen != null) {
			way.setText(wayTo(Path.of(chosen)));
		}
	}

	/** From the project's folder, where the file lies in it, so that the project can be shared. */
	private String wayTo(Path file) {
		return ProjectJob.file(shop(), ".").filter(file::startsWith).map(folder -> folder.relativize(file).toString().replace('\\', '/'))
				.orElse(file.toString());
	}

	@Override
	protected boolean save(boolean counts) {
		CheckSettings settings = settings();
		settings.tools(way.getText().strip());
		settings.save();
		return true;
	}

	@Override
	protected void performDefaults() {
		way.setText("");
		super.performDefaults();
	}
}
