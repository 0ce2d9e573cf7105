package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Commands on blocks, by their keys. */
class CommandsTest {

	private static final String CONTEXT = "truelead.editor.context";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void aBlockBecomesACommentAndABlockAgain() {
		OpenProgram program = open("G0 X1.\nG84 Z-10. F500 (M6X1)\n");
		program.caretBehind("G84");
		Screen.chord(SWT.CTRL, '/');
		waitText(program, "G0 X1.\n(G84 Z-10. F500) (M6X1)\n");
		Screen.chord(SWT.CTRL, '/');
		waitText(program, "G0 X1.\nG84 Z-10. F500 (M6X1)\n");
	}

	@Test
	void allBlocksAreRenumberedWithTheirJumpsAndOneUndoTakesItBack() {
		String before = "N1 #1=0\nN2 #1=[#1+1.]\nIF [#1 LT 3.] GOTO 2\nN7 M30\n";
		OpenProgram program = open(before);
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		enterSoon("Renumber Blocks");
		Screen.type("n");
		waitText(program, "N10 #1=0\nN20 #1=[#1+1.]\nIF [#1 LT 3.] GOTO 20\nN30 M30\n");
		program.focus();
		Screen.chord(SWT.CTRL, 'z');
		waitText(program, before);
	}

	@Test
	void numbersAreAddedAndTakenAway() {
		OpenProgram program = open("O1\nG0 X1.\nM30\n");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		enterSoon("Add Block Numbers");
		Screen.type("a");
		waitText(program, "O1\nN10 G0 X1.\nN20 M30\n");
		program.focus();
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("r");
		waitText(program, "O1\nG0 X1.\nM30\n");
	}

	@Test
	void aComputedJumpForbidsNewNumbers() {
		OpenProgram program = open("N1 G0 X1.\nGOTO #5\n");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		enterSoon("Renumber Blocks");
		Screen.type("n");
		Screen.idle(500);
		assertThat(program.document().get()).isEqualTo("N1 G0 X1.\nGOTO #5\n");
	}

	@Test
	void capitalsAndBlockDelete() {
		OpenProgram program = open("g0 x1. (Clear)\nm30\n");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("u");
		waitText(program, "G0 X1. (Clear)\nM30\n");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("b");
		waitText(program, "/G0 X1. (Clear)\nM30\n");
	}

	@Test
	void ourKeysTakeNoneOfThePlatforms() {
		IBindingService bindings = PlatformUI.getWorkbench().getService(IBindingService.class);
		List<Binding> all = Arrays.stream(bindings.getBindings()).filter(binding -> binding.getParameterizedCommand() != null).toList();
		List<Binding> ours = all.stream().filter(binding -> CONTEXT.equals(binding.getContextId())).toList();
		assertThat(ours).hasSizeGreaterThan(5);
		for (Binding binding : ours) {
			assertThat(all).filteredOn(other -> !CONTEXT.equals(other.getContextId())
					&& overlap(other.getTriggerSequence(), binding.getTriggerSequence()))
					.as("the platform's use of " + binding.getTriggerSequence()).isEmpty();
		}
	}

	@Test
	void noMenuOfTheMenuBarTakesAnothersLetter() {
		open("O1\n");
		Screen.idle(300);
		List<String> letters = Arrays.stream(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getMenuBar().getItems())
				.map(item -> item.getText()).filter(text -> text.contains("&"))
				.map(text -> text.substring(text.indexOf('&') + 1, text.indexOf('&') + 2).toLowerCase(Locale.ROOT)).toList();
		assertThat(letters).hasSizeGreaterThan(4).doesNotHaveDuplicates();
	}

	/** Whether one begins with the other. */
	private static boolean overlap(TriggerSequence one, TriggerSequence other) {
		return one.startsWith(other, true) || other.startsWith(one, true);
	}

	private static OpenProgram open(String text) {
		return OpenProgram.open(OpenProgram.file("commands.nc", text));
	}

	private static void waitText(OpenProgram program, String text) {
		try {
			Screen.waitUntil("the text", () -> program.document().get().equals(text));
		} catch (AssertionError never) {
			assertThat(program.document().get()).isEqualTo(text);
		}
	}

	/**
	 * Presses the enter key once the dialog of that title is there; a dialog runs the events itself until it is closed, so it is asked for
	 * beforehand.
	 */
	private static void enterSoon(String title) {
		Display.getCurrent().timerExec(100, () -> {
			if (dialog(title) == null) {
				enterSoon(title);
			} else {
				Screen.press(0, SWT.CR, '\r');
			}
		});
	}

	private static Shell dialog(String title) {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible() && shell.getText().equals(title))
				.findFirst().orElse(null);
	}
}
