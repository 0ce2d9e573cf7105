package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
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
			assertThat(program.findings().stream().map(OpenProgram.Shown::message).filter(message -> message.startsWith("F500"))).hasSize(1);
			assertThat(OpenProgram.markers(file, OURS)).filteredOn(message -> message.startsWith("F500")).hasSize(1);
		}
		assertThat(program.waitFor("F500").under()).isEqualTo("F500");
	}

	@Test
	void aFileOutsideAnyProjectIsCheckedToo(@TempDir Path folder) throws IOException {
		Path file = Files.writeString(folder.resolve("outside.ngc"), Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(file);
		assertThat(program.waitFor("F500").under()).isEqualTo("F500");
	}
}
