package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Keys lead from a name to what it stands for, from a hole to its blocks, from finding to finding. */
class NavigationTest {

	private static final String LOOP = """
			N10 #101=0
			N20 #101=#101+1.
			IF [#101 LT 3.] GOTO 20
			M98 P8001
			M30
			""";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void aJumpLeadsToItsBlock() {
		OpenProgram program = open("jump.nc", LOOP);
		waitChecked(program);
		program.caretBehind("GOTO 2");
		Screen.press(0, SWT.F3);
		Screen.waitUntil("N20 selected", () -> program.widget().getSelectionText().equals("N20"));
	}

	@Test
	void aCallLeadsToTheOtherFile() {
		OpenProgram.file("O8001.nc", "%\nO8001\nG0 X1.\nM99\n%\n");
		OpenProgram program = open("call.nc", LOOP);
		waitChecked(program);
		program.caretBehind("P80");
		Screen.press(0, SWT.F3);
		Screen.waitUntil("the other file", () -> active().getTitle().equals("O8001.nc"));
		Screen.waitUntil("its program number", () -> new OpenProgram(active()).widget().getSelectionText().equals("O8001"));
	}

	@Test
	void occurrencesOfAVariableAreMarked() {
		OpenProgram program = open("occur.nc", LOOP);
		waitChecked(program);
		program.caretBehind("N10 #10");
		Screen.press(0, SWT.ARROW_RIGHT);
		Screen.waitUntil("marks", () -> marked(program).size() == 4);
		assertThat(marked(program)).containsOnly("#101");
	}

	@Test
	void occurrencesOfAWordAndOfABlockNumberAreMarked() {
		OpenProgram program = open("words.nc", LOOP.replace("M98 P8001", "G0 X5.\nG1 X5. F100"));
		waitChecked(program);
		program.caretBehind("G0 X5");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("both X5., not " + marked(program), () -> marked(program).equals(List.of("X5.", "X5.")));
		program.caretBehind("GOTO 2");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the block and the jump, not " + marked(program), () -> marked(program).size() == 2
				&& marked(program).contains("N20"));
	}

	@Test
	void occurrencesOfALabelAreMarkedAndAJumpLeadsToIt() {
		OpenProgram program = open("label.nc", "AGAIN:\nG0 X1.\nGOTOB AGAIN\nM30\n");
		waitChecked(program);
		program.caretBehind("GOTOB AG");
		Screen.press(0, SWT.ARROW_RIGHT);
		Screen.waitUntil("the label and the jump, not " + marked(program), () -> marked(program).size() == 2);
		assertThat(marked(program)).allMatch(mark -> mark.startsWith("AGAIN"));
		Screen.press(0, SWT.F3);
		Screen.waitUntil("the label", () -> program.widget().getSelection().x == 0
				&& program.widget().getSelectionText().startsWith("AGAIN"));
	}

	@Test
	void aVariableLeadsToItsSetting() {
		OpenProgram program = open("setting.nc", LOOP);
		waitChecked(program);
		program.caretBehind("IF [#1");
		Screen.press(0, SWT.F3);
		Screen.waitUntil("where it is set last before, not " + program.widget().getSelection(),
				() -> program.widget().getSelectionText().equals("#101") && program.widget().getSelection().x == LOOP.indexOf("N20") + 4);
	}

	@Test
	void aNameThatStandsNowhereIsSaid() {
		OpenProgram program = open("nowhere.nc", "G0 X1.\nM98 P4711\nM30\n");
		waitChecked(program);
		program.caretBehind("P47");
		Screen.press(0, SWT.F3);
		Screen.waitUntil("a sentence in the status line", () -> status().contains("P4711 is not in this program, nor in a file beside it"));
		assertThat(program.widget().getCaretOffset()).isEqualTo("G0 X1.\nM98 P47".length());
	}

	private static String status() {
		return Dialogs.find(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), org.eclipse.swt.custom.CLabel.class).stream()
				.map(label -> label.getText()).filter(text -> text != null).reduce("", (one, other) -> one + "\n" + other);
	}

	@Test
	void theQuickOutlineLeadsToATool() {
		OpenProgram program = open("quick.nc", Programs.WRONG_FEED);
		program.waitFor("F500");
		Screen.chord(SWT.CTRL, 'o');
		Screen.waitUntil("the outline", () -> tree() != null && texts(tree().getItems()).stream().anyMatch(text -> text.startsWith("T2")));
		Screen.type("t2");
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the tool", () -> program.widget().getSelectionText().startsWith("T2 M6"));
	}

	@Test
	void theQuickOutlineBeginsAtTheCaret() {
		OpenProgram program = open("quick-here.nc", Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("G84 Z-14.5");
		Screen.chord(SWT.CTRL, 'o');
		Screen.waitUntil("the hole at the caret chosen", () -> tree() != null && tree().getSelectionCount() == 1
				&& tree().getSelection()[0].getText().startsWith("M6x1"));
		Screen.press(0, SWT.ESC, SWT.ESC);
	}

	@Test
	void aHoleLeadsToAllItsBlocks() {
		OpenProgram program = open("hole.nc", Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("G84 Z-14.5");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("h");
		Screen.waitUntil("the blocks", () -> tree() != null && tree().getItemCount() > 0);
		assertThat(texts(tree().getItems())).contains("Hole at 20 mm, 20 mm", "line 14 · T2 peck to -19 mm");
		Screen.type("t2 peck");
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the drill block", () -> program.widget().getSelectionText().startsWith("G99 G83"));
	}

	@Test
	void aFindingLeadsToTheOtherBlocksThatMatterToIt() {
		OpenProgram program = open("related.nc", Programs.GOOD.replace("G83 Z-19.", "G83 Z-15."));
		program.waitFor("14.5 mm deep");
		program.caretBehind("G99 G84 Z-14.");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("f");
		Screen.waitUntil("the finding", () -> tree() != null && texts(tree().getItems()).stream().anyMatch(text ->
				text.contains("14.5 mm deep")));
		assertThat(texts(tree().getItems())).anyMatch(text -> text.startsWith("line 14 \u00b7 ")
				&& text.endsWith(" \u00b7 G99 G83 Z-15. R2. Q4. F320"));
		Screen.type("g83");
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the drill block", () -> program.widget().getSelectionText().startsWith("G99 G83"));
	}

	@Test
	void theNextFindingIsReachedByThePlatformsKey() {
		OpenProgram program = open("next.nc",
				Programs.WRONG_FEED.replace("M30",
						"G0 Z25.\nT4 M6 (M6X1 TAP)\nG0 X20. Y20. S400 M3\nG43 Z25. H4\nG99 G84 Z-12. R5. F380\nG80\nM30"));
		program.waitFor("F380");
		program.widget().setSelection(0);
		next(program, '.', "F500");
		next(program, '.', "F380");
		next(program, ',', "F500");
	}

	/** Presses the key until the finding is selected; what stands between is a finding too. */
	private static void next(OpenProgram program, char key, String feed) {
		for (int i = 0; i < program.findings().size() && !program.widget().getSelectionText().equals(feed); i++) {
			Screen.chord(SWT.CTRL, key);
			String selected = program.widget().getSelectionText();
			assertThat(program.findings()).anyMatch(finding -> finding.under().equals(selected));
		}
		assertThat(program.widget().getSelectionText()).isEqualTo(feed);
	}

	@Test
	void bracketsCloseAndAreTypedOver() {
		OpenProgram program = open("brackets.nc", "G0 X1.\nG1 X\n");
		program.caretBehind("G0 X1.");
		Screen.type(" (CLEAR)");
		assertThat(program.document().get()).isEqualTo("G0 X1. (CLEAR)\nG1 X\n");
		program.caretBehind("G1 X");
		Screen.type("[");
		assertThat(program.document().get()).contains("G1 X[]\n");
		Screen.press(0, SWT.BS, '\b');
		assertThat(program.document().get()).contains("G1 X\n");
		program.caretBehind("X1. (");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'p');
		assertThat(program.widget().getCaretOffset()).isEqualTo("G0 X1. (CLEAR)".length());
	}

	private static OpenProgram open(String name, String text) {
		return OpenProgram.open(OpenProgram.file(name, text));
	}

	/** The first check is through when the loop's or call's remark stands, or a while has passed. */
	private static void waitChecked(OpenProgram program) {
		Screen.waitUntil("a check", () -> !program.findings().isEmpty());
	}

	private static ITextEditor active() {
		return (ITextEditor) PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().getActiveEditor();
	}

	private static List<String> marked(OpenProgram program) {
		IAnnotationModel model = program.editor().getDocumentProvider().getAnnotationModel(program.editor().getEditorInput());
		List<String> marked = new ArrayList<>();
		for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
			Annotation annotation = all.next();
			Position position = model.getPosition(annotation);
			if (annotation.getType().equals("truelead.editor.occurrence") && position != null) {
				marked.add(program.document().get().substring(position.getOffset(), position.getOffset() + position.getLength()));
			}
		}
		return marked;
	}

	/** The tree of the list that stands open over the program; null where none does. */
	private static Tree tree() {
		return Arrays.stream(Display.getCurrent().getShells())
				.filter(shell -> shell.isVisible() && shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell())
				.map(NavigationTest::tree).filter(found -> found != null).findFirst().orElse(null);
	}

	private static Tree tree(Composite parent) {
		for (Control child : parent.getChildren()) {
			Tree found = child instanceof Tree tree ? tree : child instanceof Composite composite ? tree(composite) : null;
			if (found != null) {
				return found;
			}
		}
		return null;
	}

	private static List<String> texts(TreeItem[] items) {
		List<String> texts = new ArrayList<>();
		for (TreeItem item : items) {
			texts.add(item.getText());
			texts.addAll(texts(item.getItems()));
		}
		return texts;
	}
}
