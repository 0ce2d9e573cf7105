package truelead.editor.settings.page;

import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import truelead.checker.profile.ProfileProblem;

/** A machine profile as text, with the lines that cannot be used named below it; each leads to its line. */
final class ProfileTextPart {

	private final Text text;
	private final Label heading;
	private final org.eclipse.swt.widgets.List named;
	private List<ProfileProblem> problems = List.of();
	private boolean showing;

	/** @param typed is told when a person changes the text */
	ProfileTextPart(Composite parent, Runnable typed) {
		new Label(parent, SWT.NONE).setText("The profile as &text:");
		text = new Text(parent, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
		text.setFont(JFaceResources.getTextFont());
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 4 * text.getLineHeight()).applyTo(text);
		text.addModifyListener(changed -> {
			if (!showing) {
				typed.run();
			}
		});
		heading = new Label(parent, SWT.NONE);
		heading.setText("Lines that cannot be &used:");
		named = new org.eclipse.swt.widgets.List(parent, SWT.BORDER | SWT.SINGLE | SWT.V_SCROLL);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 2 * named.getItemHeight()).applyTo(named);
		named.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> toLine()));
	}

	/** What stands in the field. */
	String text() {
		return text.getText();
	}

	/** Puts a text into the field, where it is another one. */
	void show(String fresh) {
		if (!fresh.equals(text.getText())) {
			showing = true;
			text.setText(fresh);
			showing = false;
		}
	}

	/** Names these lines. */
	void name(List<ProfileProblem> found) {
		problems = found;
		heading.setText(found.isEmpty() ? "All lines can be &used." : "Lines that cannot be &used:");
		heading.getParent().layout(new org.eclipse.swt.widgets.Control[] { heading });
		named.setItems(found.stream().map(ProfileTextPart::words).toArray(String[]::new));
	}

	/** A line and what is wrong with it. */
	static String words(ProfileProblem problem) {
		return "line " + (problem.line() + 1) + ": " + problem.message();
	}

	private void toLine() {
		int line = named.getSelectionIndex() < 0 ? 0 : problems.get(named.getSelectionIndex()).line();
		String all = text.getText();
		int start = 0;
		for (int passed = 0; passed < line; passed++) {
			start = all.indexOf('\n', start) + 1;
		}
		int end = all.indexOf('\n', start);
		text.setSelection(start, end < 0 ? all.length() : end);
	}
}
