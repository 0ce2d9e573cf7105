package truelead.editor.settings.page;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** How our settings pages lay things out. */
public final class Layouts {

	private Layouts() {
	}

	/** A part of a page that is as wide as the page and has so many columns. */
	public static Composite columns(Composite parent, int columns) {
		Composite part = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(columns).applyTo(part);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(part);
		return part;
	}

	/** A button that does something. */
	public static Button push(Composite parent, String text, Runnable work) {
		return button(parent, SWT.PUSH, text, work);
	}

	/** A check box that does something when it is ticked or not. */
	public static Button check(Composite parent, String text, Runnable work) {
		return button(parent, SWT.CHECK, text, work);
	}

	private static Button button(Composite parent, int style, String text, Runnable work) {
		Button button = new Button(parent, style);
		button.setText(text);
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(pressed -> work.run()));
		return button;
	}

	/** Lets a part of a page be used, or greys all of it. */
	public static void enable(Control part, boolean enabled) {
		if (part instanceof Composite composite) {
			for (Control child : composite.getChildren()) {
				enable(child, enabled);
			}
		}
		part.setEnabled(enabled);
	}
}
