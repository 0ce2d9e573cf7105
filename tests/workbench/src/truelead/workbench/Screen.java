package truelead.workbench;

import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PlatformUI;

/** The screen and the keyboard of a test: lets the workbench work, waits, and presses keys as a person does. */
final class Screen {

	private static final long PATIENCE = 40_000;
	private static final long AGAIN = 250;

	private Screen() {
	}

	/** Lets the workbench work until the condition holds; fails with what was waited for where it never does. */
	static void waitUntil(String what, BooleanSupplier condition) {
		Display display = Display.getCurrent();
		long end = System.currentTimeMillis() + PATIENCE;
		while (!condition.getAsBoolean()) {
			if (System.currentTimeMillis() > end) {
				throw new AssertionError("waited in vain for: " + what);
			}
			if (!display.readAndDispatch()) {
				pause(5);
			}
		}
		settle();
	}

	/** Puts the focus into a control, as a click would. */
	static void focus(String what, Control control) {
		waitUntil("focus in " + what, control::isFocusControl, () -> {
			control.getShell().forceActive();
			control.setFocus();
		});
	}

	/**
	 * The same as {@link #waitUntil(String, BooleanSupplier)}, asking again and again: without a window manager a window that is asked to
	 * take the focus before the screen shows it stays without, and so does one whose focus a window that closes late gives elsewhere.
	 */
	static void waitUntil(String what, BooleanSupplier condition, Runnable asking) {
		long[] next = { 0 };
		waitUntil(what, () -> {
			boolean holds = condition.getAsBoolean();
			if (!holds && System.currentTimeMillis() >= next[0]) {
				asking.run();
				next[0] = System.currentTimeMillis() + AGAIN;
			}
			return holds;
		});
	}

	/** Lets the workbench do what is queued. */
	static void settle() {
		while (Display.getCurrent().readAndDispatch()) {
			// until nothing is queued
		}
	}

	/** Lets the workbench work for some milliseconds, for a test that something does not happen. */
	static void idle(int milliseconds) {
		long end = System.currentTimeMillis() + milliseconds;
		waitUntil("time", () -> System.currentTimeMillis() >= end);
	}

	/** Brings the workbench window to the front, so that keys reach it. */
	static void toFront() {
		Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
		shell.setVisible(true);
		shell.forceActive();
		settle();
	}

	/** Gives the keys to a view, to the control that it chooses itself. */
	static void toFront(IWorkbenchPart part) {
		part.getSite().getShell().forceActive();
		part.setFocus();
	}

	/** Presses and lets go of the keys of the characters, one after the other. */
	static void type(String characters) {
		for (char character : characters.toCharArray()) {
			press(0, 0, character);
		}
	}

	/** Presses a key that has no character, with modifiers held. */
	static void press(int modifiers, int keyCode) {
		press(modifiers, keyCode, (char) 0);
	}

	/** Presses a character's key with modifiers held. */
	static void chord(int modifiers, char character) {
		press(modifiers, 0, character);
	}

	/** Presses a key that has both a code and a character. */
	static void press(int modifiers, int keyCode, char character) {
		for (int modifier : new int[] { SWT.CTRL, SWT.SHIFT, SWT.ALT }) {
			if ((modifiers & modifier) != 0) {
				post(SWT.KeyDown, modifier, (char) 0);
			}
		}
		post(SWT.KeyDown, keyCode, character);
		post(SWT.KeyUp, keyCode, character);
		for (int modifier : new int[] { SWT.ALT, SWT.SHIFT, SWT.CTRL }) {
			if ((modifiers & modifier) != 0) {
				post(SWT.KeyUp, modifier, (char) 0);
			}
		}
		idle(20);
	}

	private static void post(int type, int keyCode, char character) {
		Event event = new Event();
		event.type = type;
		event.keyCode = keyCode;
		event.character = character;
		if (!Display.getCurrent().post(event)) {
			throw new AssertionError("the key could not be pressed: " + (keyCode == 0 ? "" + character : keyCode));
		}
	}

	private static void pause(int milliseconds) {
		try {
			Thread.sleep(milliseconds);
		} catch (InterruptedException interrupted) {
			Thread.currentThread().interrupt();
		}
	}
}
