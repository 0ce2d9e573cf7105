package truelead.editor.page;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The lines of our small dialogs: a label at the left, what is typed or chosen behind it. */
public final class Form {

	private Form() {
	}

	/** The area below a dialog's title, in which lines of so many columns stand. */
	public static Composite below(Composite title, int columns) {
		Composite area = new Composite(title, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.swtDefaults().numColumns(columns).applyTo(area);
		return area;
	}

	/** A label; {@code &} stands before the letter that leads to what comes behind it. */
	public static void label(Composite area, String text) {
		new Label(area, SWT.NONE).setText(text);
	}

	/** A label and a field of one line that takes the room there is. */
	public static Text field(Composite area, String label, String text) {
		label(area, label);
		Text field = new Text(area, SWT.BORDER);
		field.setText(text);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
		return field;
	}

	/** A label at the first of several choices, and the place where they stand below each other. */
	public static Composite choices(Composite area, String label) {
		Label first = new Label(area, SWT.NONE);
		first.setText(label);
		GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).indent(0, 3).applyTo(first);
		Composite places = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(places);
		return places;
	}

	/** One of several choices, of which one holds. */
	public static Button choice(Composite choices, String text) {
		Button choice = new Button(choices, SWT.RADIO);
		choice.setText(text);
		return choice;
	}
}
