package truelead.editor.audit;

import java.io.File;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import truelead.audit.report.ReportFormat;
import truelead.audit.report.ReportRequest;
import truelead.editor.page.Form;
import truelead.editor.page.PageTray;

/** Asks for the kind of report and the file it goes to. */
final class ReportDialog extends TitleAreaDialog {

	private static final String WHAT_HAPPENS = "The programs are checked again, as they are saved, and the report is written to one file.";

	private final AuditScope scope;
	private ReportFormat format;
	private Combo kind;
	private Text file;
	private String written = "";

	ReportDialog(Shell shell, AuditScope scope, ReportFormat format) {
		super(shell);
		this.scope = scope;
		this.format = format;
		setHelpAvailable(true);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText("Write Report");
		PageTray.install(shell, "reports");
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle("Audit of " + scope.name());
		setMessage(WHAT_HAPPENS);
		Composite area = Form.below((Composite) super.createDialogArea(parent), 3);
		Form.label(area, "&Report:");
		kind = new Combo(area, SWT.READ_ONLY);
		Arrays.stream(ReportFormat.values()).map(ReportFormat::title).forEach(kind::add);
		kind.setVisibleItemCount(kind.getItemCount());
		kind.select(format.ordinal());
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(kind);
		file = Form.field(area, "&File:", "");
		GridDataFactory.fillDefaults().grab(true, false).hint(convertWidthInCharsToPixels(60), SWT.DEFAULT).applyTo(file);
		Button browse = new Button(area, SWT.PUSH);
		browse.setText("&Browse\u2026");
		browse.addListener(SWT.Selection, pressed -> browse());
		kind.addListener(SWT.Selection, chosen -> propose());
		propose();
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		super.createButtonsForButtonBar(parent);
		file.addModifyListener(changed -> check());
		check();
		file.setFocus();
		file.selectAll();
	}

	/** A name beside the first program, unless the person has typed one. */
	private void propose() {
		String before = proposal(format);
		format = ReportFormat.values()[kind.getSelectionIndex()];
		if (file.getText().isEmpty() || file.getText().equals(before)) {
			file.setText(proposal(format));
		}
	}

	private String proposal(ReportFormat wanted) {
		Optional<File> folder = scope.programs().stream().map(IFile::getProject).filter(project -> project.getLocation() != null)
				.map(project -> project.getLocation().toFile()).findFirst();
		String name = scope.name().replaceAll("[^A-Za-z0-9._-]+", "-") + wanted.ending();
		return new File(folder.orElseGet(() -> new File(System.getProperty("user.home", "."))), name).getPath();
	}

	private void browse() {
		FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
		File present = new File(file.getText());
		dialog.setFileName(present.getName());
		dialog.setFilterPath(present.getParent());
		Optional.ofNullable(dialog.open()).ifPresent(file::setText);
	}

	private void check() {
		File wanted = new File(file.getText());
		String complaint = file.getText().isBlank() || !wanted.isAbsolute() ? "The file needs a full path."
				: wanted.isDirectory() ? "This is a folder." : isProgram(wanted) ? "This is one of the programs." : null;
		setErrorMessage(complaint);
		setMessage(wanted.isFile() ? "The file is there already and will be overwritten." : WHAT_HAPPENS);
		getButton(OK).setEnabled(complaint == null);
	}

	private boolean isProgram(File wanted) {
		return scope.programs().stream().anyMatch(program -> program.getLocation() != null
				&& program.getLocation().toFile().equals(wanted));
	}

	@Override
	protected void okPressed() {
		written = file.getText();
		super.okPressed();
	}

	/** What was asked for. */
	ReportRequest request() {
		return new ReportRequest(format, Optional.of(written));
	}
}
