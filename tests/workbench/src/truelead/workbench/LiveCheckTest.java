package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Findings come and go as a person types. */
class LiveCheckTest {

	private static final String OURS = "truelead.editor.finding";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void aWrongFeedIsUnderlinedAtItsWord() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("feed.nc", Programs.WRONG_FEED));
		OpenProgram.Shown found = program.waitFor("F500");
		assertThat(found.under()).isEqualTo("F500");
		assertThat(found.offset()).isEqualTo(Programs.WRONG_FEED.indexOf("F500"));
		assertThat(found.type()).isEqualTo("error");
	}

	@Test
	void aGoodProgramStaysQuiet() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("good.nc", Programs.GOOD));
		program.caretBehind("M30");
		Screen.type(" F");
		Screen.idle(1000);
		assertThat(program.findings()).noneMatch(finding -> finding.message().contains("F520"));
	}

	@Test
	void typingTheRightFeedRemovesTheFinding() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("edit.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("R5. F500");
		Screen.press(0, SWT.BS);
		Screen.press(0, SWT.BS);
		Screen.type("20");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
		// on a slow machine the half-typed F52 is checked too: it has to go like the first finding
		Screen.waitUntil("no error left", () -> program.findings().stream().noneMatch(finding -> finding.type().equals("error")));
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void savingPutsMarkersOfOurTypeAndLeavesOthersAlone() throws CoreException {
		IFile file = OpenProgram.file("save.nc", Programs.WRONG_FEED);
		IMarker foreign = file.createMarker(IMarker.PROBLEM);
		foreign.setAttribute(IMarker.MESSAGE, "of another plug-in");
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		Screen.waitUntil("a marker", () -> OpenProgram.markers(file, OURS).stream().anyMatch(message -> message.contains("F500")));
		program.caretBehind("R5. F500");
		Screen.press(0, SWT.BS);
		Screen.press(0, SWT.BS);
		Screen.type("20");
		program.waitGone("F500");
		assertThat(OpenProgram.markers(file, OURS)).as("before saving").anyMatch(message -> message.contains("F500"));
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("saved", () -> !program.editor().isDirty());
		Screen.waitUntil("the marker gone", () -> OpenProgram.markers(file, OURS).stream().noneMatch(message -> message.contains("F500")));
		assertThat(foreign.exists()).isTrue();
		assertThat(foreign.getAttribute(IMarker.MESSAGE, "")).isEqualTo("of another plug-in");
	}

	@Test
	void noFindingStandsTwiceInTextOrProblemsHoweverOftenAPersonTypesAndSaves() {
		IFile file = OpenProgram.file("once.nc", Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		for (int round = 0; round < 3; round++) {
			program.widget().setSelection(2);
			Screen.type("(SIDE)");
			Screen.press(0, SWT.CR, '\r');
			Screen.chord(SWT.CTRL, 's');
			Screen.waitUntil("saved", () -> !program.editor().isDirty());
			Screen.idle(400);
			assertThat(program.findings().stream().map(OpenProgram.Shown::message).filter(message -> message.startsWith("F500")))
					.hasSize(1);
			assertThat(OpenProgram.markers(file, OURS)).filteredOn(message -> message.startsWith("F500")).hasSize(1);
		}
		assertThat(program.waitFor("F500").under()).isEqualTo("F500");
	}

	/** The check is told of edits, not of texts: one that it missed would put what it finds elsewhere from then on. */
	@Test
	void whateverIsPutInTakenOutAndTakenBackTheFindingSaysTheFeedThatStandsThere() throws BadLocationException {
		OpenProgram program = OpenProgram.open(OpenProgram.file("edits.nc", Programs.WRONG_FEED));
		IDocument document = program.document();
		Random random = new Random(6);
		for (int round = 0; round < 12; round++) {
			for (int edit = 0; edit < 6; edit++) {
				int line = document.getLineOffset(2 + random.nextInt(2));
				switch (random.nextInt(5)) {
					case 0 -> document.replace(line, 0, "(SIDE " + edit + ")\r\n");
					case 1 -> document.replace(line, 0, "(UP)\n".repeat(1 + random.nextInt(200)));
					case 2 -> document.replace(line, Math.max(0, document.getLineOffset(document.getNumberOfLines() - 24) - line), "");
					case 3 -> document.set(!document.get().contains("G17") ? document.get() : "%\nO1 (FOUR M6 HOLES)\n(ANEW)\n(ANEW)\n"
							+ document.get().substring(document.get().indexOf("G17")));
					default -> Screen.chord(SWT.CTRL, 'z');
				}
			}
			String feed = "F" + (400 + random.nextInt(100));
			int at = document.get().indexOf(" R5. F") + 5;
			document.replace(at, 4, feed);
			assertThat(program.waitFor(feed + " ").under()).isEqualTo(feed);
		}
	}

	@Test
	void aFileOutsideAnyProjectIsCheckedToo(@TempDir Path folder) throws IOException {
		Path file = Files.writeString(folder.resolve("outside.ngc"), Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(file);
		assertThat(program.waitFor("F500").under()).isEqualTo("F500");
	}
}
