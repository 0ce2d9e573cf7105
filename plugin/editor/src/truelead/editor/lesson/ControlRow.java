package truelead.editor.lesson;

import java.util.function.DoubleConsumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Spinner;
import truelead.checker.lesson.Control;

/** One number of a lesson in the view: its name, a field with arrows and a slider; or a list where it is a choice. */
final class ControlRow {

	/** Wanted width, px; a wider view gives more. */
	private static final int NARROW = 60;
	/** Width of a field, px: six figures and the arrows. */
	private static final int FIELD = 130;
	private static final int FINE = 4;
	private static final int STEPS = 1000;
	private final Control control;
	private final DoubleConsumer moved;

	private ControlRow(Control control, DoubleConsumer moved) {
		this.control = control;
		this.moved = moved;
	}

	/** Puts the row into a grid of two columns, the name above; {@code moved} hears of every change a person makes. */
	static void into(Composite parent, Control control, double value, DoubleConsumer moved) {
		ControlRow row = new ControlRow(control, moved);
		Label label = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(label);
		label.setText((control.label() + (control.unit().isEmpty() ? "" : ", " + control.unit())).replace("&", "&&"));
		if (control.choices().isEmpty()) {
			row.number(parent, value);
		} else {
			row.choice(parent, value);
		}
	}

	private void choice(Composite parent, double value) {
		Combo list = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
		list.setData(control.name());
		list.setItems(control.choices().toArray(String[]::new));
		list.select((int) value);
		list.addListener(SWT.Selection, event -> moved.accept(list.getSelectionIndex()));
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(list);
	}

	private void number(Composite parent, double value) {
		Spinner field = new Spinner(parent, SWT.BORDER);
		field.setData(control.name());
		Scale slider = new Scale(parent, SWT.HORIZONTAL);
		slider.setMaximum(STEPS);
		GridDataFactory.fillDefaults().hint(FIELD, SWT.DEFAULT).applyTo(field);
		GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(slider);
		set(field, value);
		slide(slider, value);
		field.addListener(SWT.Selection, event -> {
			double typed = field.getSelection() / Math.pow(10, field.getDigits());
			slide(slider, typed);
			moved.accept(typed);
		});
		slider.addListener(SWT.Selection, event -> {
			double pulled = control.least() + (control.most() - control.least()) * slider.getSelection() / STEPS;
			double rounded = control.inRange(Math.rint(pulled / control.step()) * control.step());
			set(field, rounded);
			moved.accept(rounded);
		});
	}

	private void slide(Scale slider, double value) {
		slider.setSelection((int) Math.round((value - control.least()) / (control.most() - control.least()) * STEPS));
	}

	/** Shows a number with as many decimals as it has, and at least those of a step. */
	private void set(Spinner field, double value) {
		int digits = 0;
		while (digits < FINE && !(whole(control.step(), digits) && whole(control.least(), digits) && whole(value, digits))) {
			digits++;
		}
		double ten = Math.pow(10, digits);
		int step = (int) Math.max(1, Math.round(control.step() * ten));
		field.setValues((int) Math.round(value * ten), (int) Math.round(control.least() * ten), (int) Math.round(control.most() * ten),
				digits, step, 10 * step);
	}

	private static boolean whole(double value, int digits) {
		double scaled = value * Math.pow(10, digits);
		return Math.abs(scaled - Math.rint(scaled)) < 1e-6;
	}
}
