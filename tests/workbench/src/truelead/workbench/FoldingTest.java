package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Tools and cycles fold with the platform's own keys. */
class FoldingTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void aToolFoldsToItsChangeAndOpensAgain() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("fold.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("T2 M6");
		Screen.press(SWT.CTRL, SWT.KEYPAD_SUBTRACT, '-');
		Screen.waitUntil("the drill folded, not " + program.widget().getText(), () -> !program.widget().getText().contains("G83"));
		assertThat(program.widget().getText()).contains("T2 M6 (DRILL 5.0)\nT3 M6 (M6X1 TAP)");
		assertThat(program.document().get()).isEqualTo(Programs.WRONG_FEED);
		Screen.press(SWT.CTRL, SWT.KEYPAD_ADD, '+');
		Screen.waitUntil("all shown", () -> program.widget().getText().equals(Programs.WRONG_FEED));
	}

	@Test
	void anOperationFoldsToItsCycle() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("fold-cycle.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("G99 G84");
		Screen.press(SWT.CTRL, SWT.KEYPAD_SUBTRACT, '-');
		Screen.waitUntil("the cycle folded, not " + program.widget().getText(), () -> program.widget().getText().contains("R5. F500\nG80"));
		assertThat(program.widget().getText()).contains("T3 M6 (M6X1 TAP)\nG0 X20. Y20. S520 M3");
	}

	@Test
	void whatIsFoldedStaysFoldedWhileTyping() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("folded.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("T2 M6");
		Screen.press(SWT.CTRL, SWT.KEYPAD_SUBTRACT, '-');
		Screen.waitUntil("the drill folded", () -> !program.widget().getText().contains("G83"));
		program.caretBehind("R5. F500");
		Screen.press(0, SWT.BS);
		Screen.press(0, SWT.BS);
		Screen.type("20");
		program.waitGone("F500");
		Screen.idle(300);
		assertThat(program.widget().getText()).doesNotContain("G83").contains("F520");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void allFoldsAtOnce() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("folds.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Screen.press(SWT.CTRL | SWT.SHIFT, SWT.KEYPAD_DIVIDE, '/');
		Screen.waitUntil("tool changes alone",
				() -> program.widget().getText().contains("12 DIA)\nT2 M6 (DRILL 5.0)\nT3 M6 (M6X1 TAP)\n%"));
	}
}
