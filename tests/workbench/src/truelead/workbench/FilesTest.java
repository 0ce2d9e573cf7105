package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.content.IContentType;
import org.eclipse.swt.SWT;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which files are programs, and that none is harmed. */
class FilesTest {

	private static final String EDITOR = "truelead.editor.program";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@ParameterizedTest
	@ValueSource(strings = { "a.nc", "a.NGC", "a.cnc", "a.tap", "a.eia", "a.mpf", "a.spf", "a.min", "a.gcode", "a.pim", "a.ptp" })
	void aProgramOpensInOurEditor(String name) {
		assertThat(PlatformUI.getWorkbench().getEditorRegistry().getDefaultEditor(name).getId()).isEqualTo(EDITOR);
	}

	@Test
	void aFileWithoutAnExtensionIsOursByAPersonsChoiceAlone() throws CoreException {
		IFile file = OpenProgram.file("O4711", Programs.WRONG_FEED);
		assertThat(PlatformUI.getWorkbench().getEditorRegistry().getEditors("O4711")).noneMatch(editor -> EDITOR.equals(editor.getId()));
		IContentType program = Platform.getContentTypeManager().getContentType("truelead.editor.program");
		program.addFileSpec("O4711", IContentType.FILE_NAME_SPEC);
		try {
			assertThat(OpenProgram.open(file).waitFor("F500").under()).isEqualTo("F500");
		} finally {
			OpenProgram.closeAll();
			program.removeFileSpec("O4711", IContentType.FILE_NAME_SPEC);
		}
	}

	@Test
	void aPlainTextIsNotOurs() {
		assertThat(PlatformUI.getWorkbench().getEditorRegistry().getEditors("readme.txt"))
				.noneMatch(editor -> EDITOR.equals(editor.getId()));
	}

	@ParameterizedTest
	@CsvSource({ "UTF-8, false", "UTF-8, true", "ISO-8859-1, false" })
	void aCommentIsReadInTheEncodingItWasWrittenInAndSavedBackInIt(String encoding, boolean marked, @TempDir Path folder)
			throws IOException {
		Charset charset = Charset.forName(encoding);
		String text = "O8 (BOHRUNG \u00d8 5)\r\nM30\r\n";
		Path file = Files.write(folder.resolve("bore.nc"), ((marked ? "\ufeff" : "") + text).getBytes(charset));
		OpenProgram program = OpenProgram.open(file);
		assertThat(program.widget().getText()).startsWith("O8 (BOHRUNG \u00d8 5)");
		program.widget().setSelection(0);
		Screen.type("N");
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("saved", () -> !program.editor().isDirty());
		assertThat(Files.readAllBytes(file)).isEqualTo(((marked ? "\ufeffN" : "N") + text).getBytes(charset));
	}

	@Test
	void aProgramInAProjectKeepsItsBytesToo() throws Exception {
		byte[] bytes = "O8 (\u00d8 5)\n".getBytes(StandardCharsets.ISO_8859_1);
		IFile file = OpenProgram.file("eight-bit.nc", "");
		file.setContents(new ByteArrayInputStream(bytes), true, false, null);
		OpenProgram program = OpenProgram.open(file);
		program.widget().setSelection(0);
		Screen.type("N");
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("saved", () -> !program.editor().isDirty());
		try (InputStream saved = file.getContents()) {
			assertThat(new String(saved.readAllBytes(), StandardCharsets.ISO_8859_1)).isEqualTo("NO8 (\u00d8 5)\n");
		}
	}

	@Test
	void everyByteOfAnEightBitProgramIsSavedBack(@TempDir Path folder) throws IOException {
		byte[] bytes = "O7 (BOHRUNG \u00d8 5)\r\nG0 X1.\r\r\nM30".getBytes(StandardCharsets.ISO_8859_1);
		Path file = Files.write(folder.resolve("eight-bit.nc"), bytes);
		OpenProgram program = OpenProgram.open(file);
		assertThat(program.widget().getText()).contains("\u00d8 5");
		program.widget().setSelection(0);
		Screen.type("N");
		Screen.chord(SWT.CTRL, 's');
		Screen.waitUntil("saved", () -> !program.editor().isDirty());
		assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
				.isEqualTo("N" + new String(bytes, StandardCharsets.ISO_8859_1));
	}
}
