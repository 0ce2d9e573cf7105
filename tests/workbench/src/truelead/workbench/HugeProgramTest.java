package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Commands that change every block of a program so long that it is done in pieces, and can be given up. */
class HugeProgramTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void allBlocksGetNumbersInPiecesAndOneUndoTakesThemAway() {
		String before = program(110_000);
		OpenProgram program = OpenProgram.open(OpenProgram.file("huge.nc", before));
		program.waitFor("F500");
		program.caretBehind("G17");
		numbers(program, 'a', "Add Block Numbers");
		Screen.waitUntil("numbers to the end", () -> end(program).contains(" G84 Z-14.5"));
		String numbered = program.document().get();
		assertThat(numbered.lines().filter(line -> line.startsWith("N"))).hasSize((int) before.lines().count() - 3);
		assertThat(numbered.lines().map(HugeProgramTest::unnumbered).toList()).isEqualTo(before.lines().toList());
		assertThat(program.widget().getText()).isEqualTo(numbered);
		Screen.waitUntil("the finding at its block",
				() -> program.findings().stream().anyMatch(finding -> finding.message().startsWith("F500")
						&& finding.under().equals("F500")));
		assertThat(program.widget().getTextRange(0, program.widget().getCaretOffset())).as("the caret in its block").endsWith(" G17");
		program.focus();
		Screen.chord(SWT.CTRL, 'z');
		Screen.waitUntil("the program as it was", () -> program.document().get().equals(before));
	}

	@Test
	void aRenumberingThatIsGivenUpLeavesTheTextUntouched() {
		String before = Programs.WRONG_FEED.replace("T2 M6", "N1 X1.\n".repeat(1_500_000) + "T2 M6");
		OpenProgram program = OpenProgram.open(OpenProgram.file("given-up.nc", before));
		program.waitFor("F500");
		boolean[] asked = new boolean[1];
		soon(HugeProgramTest::cancel, () -> {
			asked[0] = true;
			Screen.type(" ");
		});
		numbers(program, 'n', "Renumber Blocks");
		Screen.waitUntil("the dialog to be gone", () -> Arrays.stream(Display.getCurrent().getShells()).noneMatch(shell -> shell.isVisible()
				&& shell.getText().startsWith("Progress")));
		assertThat(asked[0]).as("there was something to give up").isTrue();
		assertThat(program.document().get().equals(before)).as("the text as it was").isTrue();
		assertThat(program.widget().getText().equals(before)).as("on the screen too").isTrue();
		assertThat(program.editor().isDirty()).isFalse();
	}

	/** The focus in the button that gives up what is under way, where there is one. */
	private static boolean cancel() {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible() && shell.getText().startsWith("Progress"))
				.flatMap(shell -> Dialogs.find(shell, Button.class).stream()).filter(button -> button.getText().contains("Cancel")
						&& button.isEnabled()).anyMatch(button -> {
					button.getShell().forceActive();
					return button.setFocus();
				});
	}

	private static void numbers(OpenProgram program, char key, String title) {
		program.focus();
		Dialogs.inDialog(title, () -> Screen.press(0, SWT.CR, '\r'), () -> {
			Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
			Screen.type("" + key);
		});
	}

	/** Does something as soon as it can be done. */
	private static void soon(BooleanSupplier can, Runnable work) {
		Display.getCurrent().timerExec(30, () -> {
			if (can.getAsBoolean()) {
				work.run();
			} else {
				soon(can, work);
			}
		});
	}

	private static String unnumbered(String line) {
		return line.startsWith("N") ? line.substring(line.indexOf(' ') + 1) : line;
	}

	private static String end(OpenProgram program) {
		int length = program.widget().getCharCount();
		return program.widget().getTextRange(length - 120, 120);
	}

	private static String program(int blocks) {
		StringBuilder surface = new StringBuilder("G1 Z-1. F900.\n");
		for (int i = 0; i < blocks; i++) {
			surface.append('X').append(i * 7 % 200).append(". Y").append(i / 400 % 150).append(".5\n");
		}
		return Programs.WRONG_FEED.replace("T2 M6", surface + "G0 Z25.\nT2 M6");
	}
}
