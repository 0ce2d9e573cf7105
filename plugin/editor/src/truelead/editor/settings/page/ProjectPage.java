package truelead.editor.settings.page;

import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import truelead.checker.job.Job;
import truelead.checker.job.Remark;
import truelead.editor.settings.CheckSettings;
import truelead.editor.settings.CheckedProject;

/** What holds for a whole project: whether its programs are checked though nobody has them open, and what its parts are cut from. */
public final class ProjectPage extends ScopedPage {

	private Button checked;
	private Text stock;

	public ProjectPage() {
		super("truelead.editor.project");
	}

	@Override
	protected void fill(Composite page) {
		checked = Layouts.check(page, "&Check all programs of the project, open or not", () -> {
		});
		checked.setSelection(CheckedProject.is(project().orElseThrow()));
		Composite line = Layouts.columns(page, 2);
		GridDataFactory.fillDefaults().grab(true, false).indent(0, 8).applyTo(line);
		new Label(line, SWT.NONE).setText("&Stock, where no program says:");
		stock = new Text(line, SWT.BORDER);
		stock.setMessage("as in a STOCK note: STEEL, 28 HRC");
		stock.setText(settings().stock());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(stock);
		stock.addModifyListener(typed -> validate());
		validate();
	}

	private void validate() {
		String words = stock.getText().strip();
		Optional<String> complaint = words.isEmpty() ? Optional.empty()
				: Job.EMPTY.withStock(words).remarks().stream().map(Remark::message).findFirst();
		setErrorMessage(complaint.orElse(null));
		setValid(complaint.isEmpty());
	}

	@Override
	protected boolean save(boolean counts) {
		CheckSettings settings = settings();
		settings.stock(stock.getText().strip());
		settings.save();
		IProject project = project().orElseThrow();
		try {
			CheckedProject.set(project, checked.getSelection());
			return true;
		} catch (CoreException cannot) {
			ILog.of(ProjectPage.class).log(cannot.getStatus());
			setErrorMessage(cannot.getStatus().getMessage());
			return false;
		}
	}

	@Override
	protected void performDefaults() {
		checked.setSelection(false);
		stock.setText("");
		super.performDefaults();
	}
}
