package truelead.editor.fix;

import java.time.LocalDate;
import java.util.List;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import truelead.audit.result.Acceptance;
import truelead.checker.rule.RulePage;
import truelead.editor.check.ProjectAcceptFile;
import truelead.editor.page.Form;
import truelead.editor.page.PageTray;

/** Asks why findings are accepted, by whom, and where that is to stand. */
public final class AcceptDialog extends TitleAreaDialog {

	private final List<MarkedFinding> findings;
	private Text reason;
	private Text person;
	private Button note;
	private Acceptance acceptance = new Acceptance(true, "", "", "");

	/** @param findings at least one */
	public AcceptDialog(Shell shell, List<MarkedFinding> findings) {
		super(shell);
		this.findings = findings;
		setHelpAvailable(true);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText("Accept");
		List<String> rules = findings.stream().map(MarkedFinding::rule).distinct().toList();
		PageTray.install(shell, rules.size() == 1 ? rules.get(0) : "telling-it-what-is-wanted", RulePage.Heading.ACCEPT.text());
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(findings.size() == 1 ? findings.get(0).rule() + " in " + findings.get(0).program().getName() : "Accept " + findings.size()
				+ " findings");
		setMessage(findings.size() == 1 ? findings.get(0).message() : "The reason stands for all of them.");
		Composite area = Form.below((Composite) super.createDialogArea(parent), 2);
		reason = Form.field(area, "&Reason:", "");
		person = Form.field(area, "&Who:", System.getProperty("user.name", ""));
		Composite places = Form.choices(area, "Stands in:");
		note = Form.choice(places, "a &note in the program, at the operation");
		note.setSelection(true);
		Form.choice(places, "the project's accept &file, " + ProjectAcceptFile.NAME);
		reason.addModifyListener(changed -> check());
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		super.createButtonsForButtonBar(parent);
		check();
		reason.setFocus();
	}

	private void check() {
		getButton(OK).setEnabled(!reason.getText().isBlank());
	}

	@Override
	protected void okPressed() {
		acceptance = new Acceptance(note.getSelection(), reason.getText().strip(), person.getText().strip(), LocalDate.now().toString());
		super.okPressed();
	}

	/** What was answered. */
	public Acceptance acceptance() {
		return acceptance;
	}
}
