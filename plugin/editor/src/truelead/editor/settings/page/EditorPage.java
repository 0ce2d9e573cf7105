package truelead.editor.settings.page;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import truelead.editor.settings.EditorSettings;

/**
 * What the editor shows while a program is open: findings before it is saved, notes behind threading blocks. A matter of taste, so the
 * workspace's alone.
 */
public final class EditorPage extends ScopedPage {

	private Button typing;
	private Button notes;
	private Label most;
	private Spinner operations;

	public EditorPage() {
		super("truelead.editor.settings");
	}

	@Override
	protected void fill(Composite page) {
		typing = Layouts.check(page, "Show findings &while typing; else when the program is saved", () -> {
		});
		notes = Layouts.check(page, "Show &notes behind threading blocks: thread, feed check, depth", this::notesChanged);
		Composite line = Layouts.columns(page, 2);
		GridDataFactory.fillDefaults().grab(true, false).indent(20, 0).applyTo(line);
		most = new Label(line, SWT.NONE);
		most.setText("in programs with at &most this many threading operations:");
		operations = new Spinner(line, SWT.BORDER);
		operations.setValues(0, 1, 100_000, 0, 50, 500);
		show(EditorSettings.warnsWhileTyping(), EditorSettings.showsNotes(), EditorSettings.mostNotes());
	}

	private void show(boolean whileTyping, boolean withNotes, int mostOperations) {
		typing.setSelection(whileTyping);
		notes.setSelection(withNotes);
		operations.setSelection(mostOperations);
		notesChanged();
	}

	private void notesChanged() {
		most.setEnabled(notes.getSelection());
		operations.setEnabled(notes.getSelection());
	}

	@Override
	protected void ownChanged() {
		super.ownChanged();
		notesChanged();
	}

	@Override
	protected boolean save(boolean counts) {
		EditorSettings.save(typing.getSelection(), notes.getSelection(), operations.getSelection());
		return true;
	}

	@Override
	protected void performDefaults() {
		show(true, true, EditorSettings.MOST_NOTES);
		super.performDefaults();
	}
}
