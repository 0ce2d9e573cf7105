package truelead.workbench;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.text.source.CompositeRuler;
import org.eclipse.jface.text.source.IVerticalRulerColumn;
import org.eclipse.jface.text.source.IVerticalRulerInfo;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** The mouse of a test. */
final class Mouse {

	private Mouse() {
	}

	/** Comes to rest on the first place of a program where the text stands. */
	static void rest(OpenProgram program, String text) {
		Point at = place(program, text);
		move(at.x - 30, at.y + 60);
		Screen.idle(100);
		for (int step = 0; step < 3; step++) {
			move(at.x + 2 + step, at.y + 6);
			Screen.idle(50);
		}
	}

	/** Leaves the text, so that what was told goes. */
	static void away(OpenProgram program) {
		move(2, 2);
		Screen.idle(300);
		program.focus();
		Screen.press(0, SWT.ESC, SWT.ESC);
	}

	private static Point place(OpenProgram program, String text) {
		int offset = program.widget().getText().indexOf(text) + 1;
		program.widget().setSelection(offset);
		program.widget().showSelection();
		Screen.settle();
		return program.widget().toDisplay(program.widget().getLocationAtOffset(offset));
	}

	/** Comes to rest beside the first line where the text stands, at the signs of findings. */
	static void restAtRuler(OpenProgram program, String text) {
		int y = place(program, text).y + 6;
		int x = columns(program).get(0).getControl().toDisplay(3, 0).x;
		move(x + 200, y + 80);
		Screen.idle(100);
		for (int step = 0; step < 3; step++) {
			move(x + step, y);
			Screen.idle(50);
		}
	}

	/**
	 * Clicks beside the first line where the text stands, at one of the ruler's columns: the signs of findings are in its first, folds in
	 * its last.
	 */
	static void clickRuler(OpenProgram program, String text, int column) {
		Point line = place(program, text);
		Control at = columns(program).get(column).getControl();
		move(at.toDisplay(3, 0).x, line.y + 6);
		Screen.idle(200);
		button(at, SWT.MouseDown, line.y + 6);
		button(at, SWT.MouseUp, line.y + 6);
		Screen.idle(200);
	}

	/** The columns of the ruler at the left. */
	static List<IVerticalRulerColumn> columns(OpenProgram program) {
		List<IVerticalRulerColumn> columns = new ArrayList<>();
		((CompositeRuler) program.editor().getAdapter(IVerticalRulerInfo.class)).getDecoratorIterator().forEachRemaining(columns::add);
		return columns;
	}

	/** What the widget is told of a button; a display without a window manager passes no posted button on. */
	private static void button(Control at, int type, int y) {
		Event event = new Event();
		event.button = 1;
		event.x = 3;
		event.y = at.toControl(0, y).y;
		event.count = 1;
		at.notifyListeners(type, event);
		Screen.settle();
	}

	/** Moves to a place of the screen, pixels. */
	static void move(int x, int y) {
		Event event = new Event();
		event.type = SWT.MouseMove;
		event.x = x;
		event.y = y;
		Display.getCurrent().post(event);
	}
}
