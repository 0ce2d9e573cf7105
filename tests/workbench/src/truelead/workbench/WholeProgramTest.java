package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.ui.texteditor.MarkerUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Commands that change every block of a program of some thousand: one step to undo, and what was marked stays with its blocks. */
class WholeProgramTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void allBlocksGetNumbersAndOneUndoTakesThemAway() {
		String before = program();
		OpenProgram program = open("many.nc", before);
		program.waitFor("F500");
		addNumbers(program);
		Screen.waitUntil("numbers", () -> program.document().get().contains(" G84 Z-14.5"));
		String numbered = program.document().get();
		assertThat(numbered.lines().filter(line -> line.startsWith("N"))).hasSize((int) before.lines().count() - 3);
		assertThat(program.widget().getText()).isEqualTo(numbered);
		Screen.waitUntil("the finding at its block",
				() -> program.findings().stream().anyMatch(finding -> finding.message().contains("F500")
						&& finding.under().contains("F500")));
		program.focus();
		Screen.chord(SWT.CTRL, 'z');
		Screen.waitUntil("the program as it was", () -> program.document().get().equals(before));
		assertThat(program.widget().getText()).isEqualTo(before);
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'z');
		Screen.waitUntil("the numbers again", () -> program.document().get().equals(numbered));
	}

	@Test
	void whatIsFoldedStaysFoldedAndTheCaretStaysInItsBlock() {
		OpenProgram program = open("many-folded.nc", program());
		program.waitFor("F500");
		program.caretBehind("T2 M6");
		Screen.press(SWT.CTRL, SWT.KEYPAD_SUBTRACT, '-');
		Screen.waitUntil("the drill folded", () -> !program.widget().getText().contains("G83"));
		program.caretBehind("G84 Z-14.5");
		addNumbers(program);
		Screen.waitUntil("numbers", () -> program.document().get().contains(" G84 Z-14.5"));
		Screen.idle(500);
		assertThat(program.document().get()).contains("G83");
		assertThat(program.widget().getText()).doesNotContain("G83").contains("T2 M6").contains("G84");
		Screen.type("5");
		Screen.waitUntil("what is typed in the block of the caret", () -> program.document().get().contains(" G84 Z-14.55 R5."));
		program.caretBehind("T2 M6");
		Screen.press(SWT.CTRL, SWT.KEYPAD_ADD, '+');
		Screen.waitUntil("all to be seen", () -> program.widget().getText().equals(program.document().get()));
	}

	@Test
	void aBookmarkStaysAtItsBlock() throws CoreException {
		String before = program();
		IFile file = OpenProgram.file("many-marked.nc", before);
		IMarker bookmark = file.createMarker(IMarker.BOOKMARK);
		int at = before.indexOf("G84");
		MarkerUtilities.setCharStart(bookmark, at);
		MarkerUtilities.setCharEnd(bookmark, at + 3);
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		addNumbers(program);
		Screen.waitUntil("numbers", () -> program.document().get().contains(" G84 Z-14.5"));
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("the bookmark at its block", () -> MarkerUtilities.getCharEnd(bookmark) == program.document().get().indexOf("G84")
				+ 3);
	}

	@Test
	void allBlocksAreWrittenInCapitals() {
		OpenProgram program = open("many-small.nc", program().replace('Y', 'y'));
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("u");
		Screen.waitUntil("capitals", () -> program.document().get().equals(program()));
	}

	private static OpenProgram open(String name, String text) {
		return OpenProgram.open(OpenProgram.file(name, text));
	}

	private static void addNumbers(OpenProgram program) {
		Dialogs.inDialog("Add Block Numbers", () -> Screen.press(0, SWT.CR, '\r'), () -> {
			Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
			Screen.type("a");
		});
		program.focus();
	}

	/** A surface of three thousand blocks before the drill and the tap. */
	private static String program() {
		StringBuilder surface = new StringBuilder("G1 Z-1. F900.\n");
		for (int i = 0; i < 3000; i++) {
			surface.append('X').append(i * 7 % 200).append(". Y").append(i / 400).append(".5\n");
		}
		return Programs.WRONG_FEED.replace("T2 M6", surface + "G0 Z25.\nT2 M6");
	}
}
