package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The completion key proposes what may stand at the caret, and enter puts it there. */
class CompletionTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void theFeedThatFitsTheTapIsProposedAndTaken() {
		OpenProgram program = open(Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("R5. F500");
		for (int i = 0; i < 3; i++) {
			Screen.press(0, SWT.BS);
		}
		Screen.idle(400);
		Screen.chord(SWT.CTRL, ' ');
		Screen.waitUntil("proposals", () -> !proposals().isEmpty());
		assertThat(proposals().get(0)).isEqualTo("F520 — S520 × 1 for M6x1");
		take("F520");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void codesOfTheProfileAreProposedWithTheirMeaning() {
		OpenProgram program = open(Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("M6X1 TAP)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("G8");
		Screen.chord(SWT.CTRL, ' ');
		Screen.waitUntil("proposals", () -> proposals().contains("G84 — tap"));
	}

	@Test
	void aTemplatePutsInTheBlocksForTheCalloutAbove() {
		OpenProgram program = open(Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("(FOUR M6 HOLES)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("(M8X1.25 DEPTH 12)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("form");
		assertThat(program.document().get()).contains("HOLES)\n(M8X1.25 DEPTH 12)\nform\n");
		Screen.chord(SWT.CTRL, ' ');
		Screen.waitUntil("proposals, not " + proposals(), () -> proposals().stream().anyMatch(text -> text.startsWith("form-tap")));
		take("form-tap");
		Screen.waitUntil("blocks", () -> program.document().get().contains("FORM TAP"));
		String text = program.document().get();
		assertThat(text).contains("T6 M6").contains("G84").contains("H6").doesNotContain("\nform");
	}

	private static OpenProgram open(String text) {
		return OpenProgram.open(OpenProgram.file("complete.nc", text));
	}

	/** Double-clicks the proposal: without a window manager keys do not reach the text while a list stands over it. */
	private static void take(String words) {
		Table table = tables().findFirst().orElseThrow();
		TableItem item = Arrays.stream(table.getItems()).filter(found -> found.getText().startsWith(words)).findFirst().orElseThrow();
		table.setSelection(item);
		Event doubleClick = new Event();
		doubleClick.item = item;
		table.notifyListeners(SWT.Selection, doubleClick);
		table.notifyListeners(SWT.DefaultSelection, doubleClick);
		Screen.settle();
	}

	/** What the open list of proposals shows; empty where none is open. */
	private static List<String> proposals() {
		return tables().flatMap(table -> Arrays.stream(table.getItems())).map(TableItem::getText).toList();
	}

	private static Stream<Table> tables() {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible()).flatMap(shell -> Arrays.stream(shell.getChildren()))
				.filter(Table.class::isInstance).map(Table.class::cast);
	}
}
