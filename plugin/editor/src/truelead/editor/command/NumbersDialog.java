package truelead.editor.command;

import java.util.Optional;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TrayDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import truelead.editor.check.CheckedEditor;
import truelead.editor.page.Form;
import truelead.editor.page.PageTray;
import truelead.help.HelpBook;

/** Asks for the first block number and the step; both are remembered while the workbench runs. */
final class NumbersDialog extends TrayDialog {

	private static final int MOST_DIGITS = 6;
	private static Numbers last = new Numbers(10, 10);

	private final String title;
	private Text first;
	private Text step;

	/** First number and step, both 1 or more. */
	record Numbers(int first, int step) {
	}

	private NumbersDialog(Shell parent, String title) {
		super(parent);
		this.title = title;
		setHelpAvailable(true);
	}

	/** What the person chose; empty where it was given up. */
	static Optional<Numbers> ask(CheckedEditor editor, String title) {
		return new NumbersDialog(editor.getSite().getShell(), title).open() == OK ? Optional.of(last) : Optional.empty();
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(title);
		PageTray.install(shell, HelpBook.OVERVIEW, "Keys in the editor");
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
		first = number(area, "&First number:", last.first);
		step = number(area, "&Step:", last.step);
		first.selectAll();
		return area;
	}

	private Text number(Composite area, String label, int value) {
		Text text = Form.field(area, label, Integer.toString(value));
		text.setTextLimit(MOST_DIGITS);
		text.addVerifyListener(event -> event.doit = event.text.chars().allMatch(c -> c >= '0' && c <= '9'));
		text.addModifyListener(event -> {
			if (getButton(IDialogConstants.OK_ID) != null) {
				getButton(IDialogConstants.OK_ID).setEnabled(number(first) > 0 && number(step) > 0);
			}
		});
		GridDataFactory.fillDefaults().grab(true, false).hint(90, SWT.DEFAULT).applyTo(text);
		return text;
	}

	private static int number(Text text) {
		return text.getText().isEmpty() ? 0 : Integer.parseInt(text.getText());
	}

	@Override
	protected void okPressed() {
		last = new Numbers(number(first), number(step));
		super.okPressed();
	}
}
