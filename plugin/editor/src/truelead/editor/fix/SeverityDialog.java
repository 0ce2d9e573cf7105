package truelead.editor.fix;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.dialogs.TrayDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import truelead.editor.page.Form;
import truelead.editor.page.PageTray;
import truelead.editor.settings.CheckSettings;

/** Asks for the severity of one rule, and where it is to hold: in the program's project, or in the workspace. */
final class SeverityDialog extends TrayDialog {

	private static final List<String> WORDS = List.of("", "error", "warning", "information", CheckSettings.OFF);

	private final String rule;
	private final Optional<IProject> project;
	private Combo severity;
	private Button ofProject;

	/** @param project the program's; empty for a program that is in none */
	SeverityDialog(Shell parent, String rule, Optional<IProject> project) {
		super(parent);
		this.rule = rule;
		this.project = project;
		setHelpAvailable(true);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText("Severity of " + rule);
		PageTray.install(shell, rule);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
		Form.label(area, "Se&verity:");
		severity = new Combo(area, SWT.READ_ONLY);
		WORDS.forEach(word -> severity.add(word.isEmpty() ? "as the rule says" : word));
		GridDataFactory.fillDefaults().grab(true, false).applyTo(severity);
		Composite places = Form.choices(area, "Holds in:");
		ofProject = Form.choice(places, "this &project, for all who share it");
		ofProject.setEnabled(project.isPresent());
		Button workspace = Form.choice(places, "the &workspace, where a project says nothing else");
		(project.isPresent() ? ofProject : workspace).setSelection(true);
		ofProject.addListener(SWT.Selection, chosen -> showSeverity());
		workspace.addListener(SWT.Selection, chosen -> showSeverity());
		showSeverity();
		return area;
	}

	private CheckSettings settings() {
		return project.filter(any -> ofProject.getSelection()).map(CheckSettings::of).orElseGet(CheckSettings::ofWorkspace);
	}

	private void showSeverity() {
		severity.select(Math.max(0, WORDS.indexOf(settings().severityOf(rule))));
	}

	@Override
	protected void okPressed() {
		CheckSettings settings = settings();
		settings.severityOf(rule, WORDS.get(severity.getSelectionIndex()));
		if (ofProject.getSelection()) {
			settings.severitiesCount(true);
		}
		settings.save();
		super.okPressed();
	}
}
