package truelead.editor.audit;

import java.util.List;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PlatformUI;
import truelead.editor.check.ProjectAcceptFile;
import truelead.editor.settings.page.Layouts;
import truelead.editor.settings.page.ScopedPage;
import truelead.editor.settings.page.Sheet;

/** The findings of a project that somebody has accepted, stale ones first; a way to each, and acceptances taken back. */
public final class AcceptedPage extends ScopedPage {

	private Sheet<AcceptedFinding> sheet;
	private Label said;
	private Button go;
	private Button takeBack;
	private Job search;

	public AcceptedPage() {
		super("truelead.editor.accepted");
		noDefaultAndApplyButton();
	}

	@Override
	protected void fill(Composite page) {
		said = new Label(page, SWT.NONE);
		sheet = new Sheet<>(page, "&Findings:", AcceptedFinding.class);
		sheet.column("Rule", 130, AcceptedFinding::rule).column("Program", 120, AcceptedFinding::programName)
				.column("Line", 50, row -> row.line() < 0 ? "" : String.valueOf(row.line() + 1))
				.column("State", 140, AcceptedFinding::state).column("Reason", 150, row -> row.why().reason())
				.column("Who", 70, row -> row.why().person()).column("When", 80, row -> row.why().date())
				.column("Accepted by", 170, AcceptedFinding::by).strong(row -> !row.inForce()).tell(row -> row.why().reason())
				.onSelect(this::enableButtons).onOpen(this::goTo);
		Composite line = Layouts.columns(page, 2);
		go = Layouts.push(line, "&Go to It", this::goTo);
		takeBack = Layouts.push(line, "Take &Back", this::takeBack);
		look();
	}

	private void look() {
		said.setText("Looking for accepted findings in the programs of the project \u2026");
		enableButtons();
		search = AcceptedSearch.start(project().orElseThrow(), found -> later(() -> show(found)),
				complaint -> later(() -> setErrorMessage(complaint)));
		said.addDisposeListener(gone -> search.cancel());
	}

	private void show(List<AcceptedFinding> found) {
		sheet.rows(found, one -> one);
		long stale = found.stream().filter(one -> !one.inForce()).count();
		said.setText(found.isEmpty() ? "Nothing is accepted. A finding is accepted in the view Thread Audit, or by a note in the program: "
				+ "(ALLOW: RULE, REASON)." : found.size() + " accepted, " + stale + " of them stale.");
		said.getParent().layout();
		enableButtons();
	}

	private void enableButtons() {
		if (takeBack != null) {
			List<AcceptedFinding> chosen = sheet.selected();
			go.setEnabled(chosen.size() == 1 && chosen.get(0).program().isPresent());
			takeBack.setEnabled(!chosen.isEmpty());
		}
	}

	private void takeBack() {
		List<AcceptedFinding> chosen = sheet.selected();
		if (MessageDialog.openConfirm(getShell(), "Take Back", "Take " + chosen.size()
				+ " back? Notes are cut out of their programs, which are saved; " + "lines are taken out of "
				+ ProjectAcceptFile.NAME + ".")) {
			List<String> failed = TakingBack.of(project().orElseThrow(), chosen);
			if (!failed.isEmpty()) {
				MessageDialog.openWarning(getShell(), "Take Back", String.join("\n", failed));
			}
			look();
		}
	}

	private void goTo() {
		List<AcceptedFinding> chosen = sheet.selected();
		if (chosen.size() == 1 && chosen.get(0).program().isPresent() && getContainer() instanceof PreferenceDialog dialog) {
			Jump.to(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), chosen.get(0).program().get(),
					chosen.get(0).line());
			dialog.close();
		}
	}

	private void later(Runnable work) {
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
			if (!said.isDisposed()) {
				work.run();
			}
		});
	}

	/** All is done when it is asked for. */
	@Override
	protected boolean save(boolean counts) {
		return true;
	}
}
