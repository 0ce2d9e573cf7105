package truelead.workbench;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.PlatformUI;

/** The list of proposals that stands open over a program, of quick fixes or of completions. */
final class Proposals {

	private Proposals() {
	}

	/** Presses a key and gives what is then proposed. */
	static List<String> at(int modifiers, char key) {
		Screen.chord(modifiers, key);
		Screen.waitUntil("proposals", () -> !shown().isEmpty() && shown().stream().noneMatch(Proposals::standsForOthersToCome));
		return shown();
	}

	/** The platform shows a row of this kind on a busy machine, until all who propose have answered. */
	private static boolean standsForOthersToCome(String row) {
		return row.startsWith("Computing proposals");
	}

	/** What the open list shows; empty where none is open. */
	static List<String> shown() {
		return tables().flatMap(table -> Arrays.stream(table.getItems())).map(TableItem::getText).toList();
	}

	/** Double-clicks the proposal that has the words: without a window manager keys do not reach the text while a list stands over it. */
	static void take(String words) {
		Table table = tables().findFirst().orElseThrow();
		TableItem item = choose(words);
		Event doubleClick = new Event();
		doubleClick.item = item;
		table.notifyListeners(SWT.DefaultSelection, doubleClick);
		Screen.settle();
	}

	/** Chooses the proposal that has the words, and gives what stands beside the list then, in one line however wide the list leaves it. */
	static String told(String words) {
		choose(words);
		Screen.waitUntil("what is told of " + words, () -> !beside().isBlank());
		return String.join(" ", beside().strip().split("\\s+"));
	}

	private static TableItem choose(String words) {
		Table table = tables().findFirst().orElseThrow();
		TableItem item = Arrays.stream(table.getItems()).filter(found -> found.getText().contains(words)).findFirst()
				.orElseThrow(() -> new AssertionError("no " + words + " in " + shown()));
		table.setSelection(item);
		Event chosen = new Event();
		chosen.item = item;
		table.notifyListeners(SWT.Selection, chosen);
		return item;
	}

	private static String beside() {
		return overTheWindow().flatMap(shell -> Dialogs.find(shell, StyledText.class).stream()).map(StyledText::getText)
				.findFirst().orElse("");
	}

	private static Stream<Table> tables() {
		return overTheWindow().flatMap(shell -> Arrays.stream(shell.getChildren())).filter(Table.class::isInstance).map(Table.class::cast)
				.filter(Control::isVisible).filter(table -> table.getItemCount() > 0);
	}

	private static Stream<Shell> overTheWindow() {
		return Arrays.stream(Display.getCurrent().getShells())
				.filter(shell -> shell.isVisible() && shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell());
	}
}
