package truelead.workbench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
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

	/** Moves to a place of the screen, pixels. */
	static void move(int x, int y) {
		Event event = new Event();
		event.type = SWT.MouseMove;
		event.x = x;
		event.y = y;
		Display.getCurrent().post(event);
	}
}
