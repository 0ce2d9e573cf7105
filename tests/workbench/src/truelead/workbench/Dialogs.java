package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IProject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;

/** Dialogs as a person works in them. */
final class Dialogs {

	/** Times that a dialog is looked for after a failure, and the milliseconds between. */
	private static final int PATIENCE = 60;
	private static final int PAUSE = 500;

	private Dialogs() {
	}

	/** Opens a dialog by {@code opening} and does {@code inside} when it is there; a dialog that is not closed by that is a failure. */
	static void inDialog(String title, Runnable inside, Runnable opening) {
		List<Throwable> failures = new ArrayList<>();
		boolean[] stood = { false };
		whenOpen(title, PATIENCE * 4, () -> {
			stood[0] = true;
			try {
				takeFocus(title);
				inside.run();
				Screen.waitUntil("the dialog to close", () -> shell(title) == null);
			} catch (AssertionError failed) {
				failures.add(failed);
				closeFor(title, PATIENCE);
			}
		});
		opening.run();
		assertThat(failures).isEmpty();
		assertThat(stood[0]).as("the dialog %s has been there", title).isTrue();
	}

	/**
	 * Does something as soon as a dialog stands. Waiting for it would keep the keys that open it, which are pressed below on the stack,
	 * from being pressed where they take longer than the first look.
	 */
	static void whenOpen(String title, int looks, Runnable inside) {
		Display.getCurrent().timerExec(PAUSE / 4, () -> {
			if (shell(title) != null && shell(title).isVisible()) {
				inside.run();
			} else if (looks > 0) {
				whenOpen(title, looks - 1, inside);
			}
		});
	}

	/** Gives the keys to a dialog that stands, to the control that it chose itself. */
	static void takeFocus(String title) {
		Screen.waitUntil("focus in " + title, () -> hasFocus(title), () -> {
			shell(title).forceActive();
			if (Display.getCurrent().getActiveShell() == shell(title)) {
				shell(title).setFocus();
			}
		});
		Screen.idle(300);
	}

	/** Closes such dialogs for some time: one that comes later than a test waits for would keep it for ever. */
	private static void closeFor(String title, int tries) {
		Display display = Display.getCurrent();
		Arrays.stream(display.getShells()).filter(shell -> shell.getText().equals(title)).forEach(Shell::close);
		if (tries > 0) {
			display.timerExec(PAUSE, () -> closeFor(title, tries - 1));
		}
	}

	private static boolean hasFocus(String title) {
		Control focus = Display.getCurrent().getFocusControl();
		return focus != null && focus.getShell() == shell(title);
	}

	/** Does something on a page of the preferences and applies it by the enter key. */
	static void inPreferences(String page, Runnable inside) {
		inDialog("Preferences", () -> andApply(inside), () -> PreferencesUtil.createPreferenceDialogOn(window(), page, null, null).open());
	}

	/** Does something on a page of a project's properties and applies it by the enter key. */
	static void inProperties(IProject project, String page, Runnable inside) {
		inDialog("Properties for " + project.getName(), () -> andApply(inside), () -> PreferencesUtil.createPropertyDialogOn(window(),
				project, page, null, null).open());
	}

	private static void andApply(Runnable inside) {
		inside.run();
		Screen.press(0, SWT.CR, '\r');
	}

	static Shell shell(String title) {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.getText().equals(title)).findFirst().orElse(null);
	}

	/** All controls of a kind that are to be seen in a window or a part of it. */
	static <C extends Control> List<C> find(Composite in, Class<C> kind) {
		List<C> found = new ArrayList<>();
		for (Control child : in.getChildren()) {
			if (kind.isInstance(child) && child.isVisible()) {
				found.add(kind.cast(child));
			}
			if (child instanceof Composite composite) {
				found.addAll(find(composite, kind));
			}
		}
		return found;
	}

	private static Shell window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}
}
