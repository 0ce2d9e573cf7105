package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.osgi.service.prefs.BackingStoreException;

/** The note behind a threading block is drawn beside the text and is no part of it. */
class NotesTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void aNoteStandsBehindTheTapBlockAndNoOther() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("note.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Screen.waitUntil("ink behind the tap block", () -> ink(program, "R5. F500"));
		assertThat(ink(program, "R2. Q4. F320")).as("behind the drill block").isFalse();
		StyleRange last = program.widget().getStyleRangeAtOffset(program.widget().getText().indexOf("F500") + 3);
		assertThat(last == null ? null : last.metrics).as("the last character is as wide as it is, so what underlines it ends with it")
				.isNull();
	}

	@Test
	void aKeyHidesTheNotesAndShowsThemAgain() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("hide.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Screen.waitUntil("ink behind the tap block", () -> ink(program, "R5. F500"));
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("e");
		Screen.waitUntil("no ink", () -> !ink(program, "R5. F500"));
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("e");
		Screen.waitUntil("ink again", () -> ink(program, "R5. F500"));
	}

	@Test
	void aNoteMovesNoLineAndNoCharacter() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("still.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Screen.waitUntil("ink behind the tap block", () -> ink(program, "R5. F500"));
		Point below = program.widget().getLocationAtOffset(Programs.WRONG_FEED.indexOf("M30"));
		Point end = program.widget().getLocationAtOffset(Programs.WRONG_FEED.indexOf("F500") + 4);
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("e");
		Screen.waitUntil("no ink", () -> !ink(program, "R5. F500"));
		assertThat(program.widget().getLocationAtOffset(Programs.WRONG_FEED.indexOf("M30"))).isEqualTo(below);
		assertThat(program.widget().getLocationAtOffset(Programs.WRONG_FEED.indexOf("F500") + 4)).isEqualTo(end);
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("e");
		Screen.waitUntil("ink again", () -> ink(program, "R5. F500"));
	}

	@Test
	void aHelixHasItsNoteToo() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("helix-note.nc", Programs.HELIX));
		Screen.waitUntil("ink behind the helix", () -> ink(program, "Z-15.375 I-4.02 J0."));
	}

	@Test
	void aTurnedThreadHasItsNoteBehindItsFirstPass() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("turned-note.nc", Programs.TURNED));
		Screen.waitUntil("ink behind the first pass", () -> ink(program, "G92 X19.3 Z-27. F1.5"));
		assertThat(ink(program, "X18.16")).as("behind the last pass").isFalse();
	}

	@Test
	void aNoteStaysAtItsBlockWhileLinesAboveAreTyped() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("stay.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Screen.waitUntil("ink behind the tap block", () -> ink(program, "R5. F500"));
		program.caretBehind("(M6X1 TAP)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("(SECOND SIDE)");
		assertThat(ink(program, "R5. F500")).isTrue();
	}

	@Test
	void aProgramOfMoreOperationsThanAPersonWantsNotesForHasNone() throws BackingStoreException {
		String second = Programs.WRONG_FEED.replace("M30",
				"T4 M6 (M6X1 TAP)\nG0 X20. Y20. S400 M3\nG43 Z25. H4\nG99 G84 Z-12. R5. F400\nG80\nM30");
		OpenProgram program = OpenProgram.open(OpenProgram.file("many.nc", second));
		program.waitFor("F500");
		Screen.waitUntil("ink behind the tap block", () -> ink(program, "R5. F500"));
		Dialogs.inPreferences("truelead.editor.settings", () -> {
			Screen.chord(SWT.ALT, 'm');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("1");
		});
		Screen.waitUntil("no ink", () -> !ink(program, "R5. F500"));
		IEclipsePreferences node = InstanceScope.INSTANCE.getNode("truelead.editor");
		node.clear();
		node.flush();
		Screen.waitUntil("ink again", () -> ink(program, "R5. F500"));
	}

	/** Whether anything is drawn between the end of the line that holds a text and 300 pixels behind it, a little away from the text. */
	private static boolean ink(OpenProgram program, String text) {
		StyledText widget = program.widget();
		int end = widget.getText().indexOf(text) + text.length();
		Point at = widget.getLocationAtOffset(end);
		int height = widget.getLineHeight(end) - 2;
		Image image = new Image(widget.getDisplay(), 300, height);
		GC gc = new GC(widget);
		gc.copyArea(image, at.x + 12, at.y + 1);
		gc.dispose();
		ImageData data = image.getImageData();
		image.dispose();
		int first = data.getPixel(0, 0);
		int different = 0;
		for (int x = 0; x < data.width; x++) {
			for (int y = 0; y < data.height; y++) {
				different += data.getPixel(x, y) == first ? 0 : 1;
			}
		}
		return different > 50;
	}
}
