package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A thread is planned by keys alone: what is wanted, the ways, the blocks. */
class PlanWizardTest {

	private static final String PLAN = "Plan a Thread";
	private static final String WHAT_ELSE = "What Else Could Make This Thread?";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void aThreadIsPlannedByKeysAndOneUndoTakesItOut() {
		OpenProgram program = checked(Programs.GOOD);
		String before = program.document().get();
		program.caretBehind("(FOUR M6 HOLES)");
		inWizard('p', PLAN, () -> {
			assertThat(complaint()).as("where nothing names a thread for certain").startsWith("Name the thread");
			Screen.chord(SWT.ALT, 't');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("M8");
			Screen.chord(SWT.ALT, 'd');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("12");
			Screen.waitUntil("the request, not " + complaint(), () -> complaint().contains("M8x1.25, 12 mm of full thread, blind"));
			next();
			Screen.waitUntil("the ways", () -> chosen().startsWith("cutting tap, spiral flute"));
			assertThat(complaint()).startsWith("Recommended: cutting tap, spiral flute");
			next();
			Screen.waitUntil("the blocks", () -> blocks().contains("G84"));
			finish();
		});
		String after = program.document().get();
		assertThat(after).contains("(FOUR M6 HOLES)\n(SPEEDS AND FEEDS FROM MEMORY")
				.contains("(THREAD: M8X1.25, DEPTH 12., BLIND, COUNT 1)").contains("(SPIRAL FLUTE TAP M8X1.25)");
		program.focus();
		Screen.chord(SWT.CTRL, 'z');
		Screen.waitUntil("the program as it was", () -> program.document().get().equals(before));
	}

	@Test
	void whatCannotBeUsedIsSaidAsItIsTyped() {
		OpenProgram program = checked(Programs.GOOD);
		program.caretBehind("(FOUR M6 HOLES)");
		inWizard('p', PLAN, () -> {
			Screen.chord(SWT.ALT, 't');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("M8x9");
			Screen.waitUntil("a complaint",
					() -> complaint().contains("\"M8x9\" is no thread that is known here; the nearest spellings: "));
			assertThat(button("Next").isEnabled()).isFalse();
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("M8");
			Screen.chord(SWT.ALT, 'o');
			Screen.waitUntil("a question", () -> complaint().equals("Wall: how thick is it?"));
			Screen.chord(SWT.ALT, 'w');
			Screen.type("15");
			Screen.waitUntil("no complaint, not " + complaint(), () -> complaint().contains("15 mm through"));
			Screen.press(0, SWT.ESC, SWT.ESC);
		});
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void whatElseBeginsWithTheProgramsNumbersAndAnotherWayCanBeTaken() {
		OpenProgram program = checked(Programs.GOOD);
		program.caretBehind("G84");
		inWizard('w', WHAT_ELSE, () -> {
			assertThat(numbers()).contains("thread | M6x1 | called out in a comment: \"M6X1\"")
					.anyMatch(row -> row.startsWith("machine | ")).anyMatch(row -> row.startsWith("speed now | S520, 9.8 m/min"));
			assertThat(reasons()).anyMatch(text -> text.contains("no chips, the strongest tap"))
					.anyMatch(text -> text.contains("a blind hole: the chips it pushes ahead pack at the bottom"));
			Button mill = radios().stream().filter(one -> one.getText().startsWith("thread mill, single form")).findFirst().orElseThrow();
			mill.setFocus();
			Screen.chord(0, ' ');
			Screen.waitUntil("the mill", () -> chosen().startsWith("thread mill, single form"));
			next();
			Screen.waitUntil("the blocks", () -> blocks().contains("THREAD MILL"));
			finish();
		});
		String after = program.document().get();
		assertThat(after.indexOf("THREAD MILL")).as("before the tap's part of the program").isPositive()
				.isLessThan(after.indexOf("M6X1 TAP)"));
		program.focus();
		Screen.chord(SWT.CTRL, 'z');
		Screen.waitUntil("the program as it was", () -> program.document().get().equals(Programs.GOOD));
	}

	@Test
	void aStockOfTwoWordsWithACommaStaysWhole() {
		OpenProgram program = checked(Programs.GOOD.replace("(FOUR M6 HOLES)", "(FOUR M6 HOLES)\n(STOCK: ALUMINIUM, CAST)"));
		program.caretBehind("G84");
		inWizard('p', PLAN, () -> {
			Combo stock = Dialogs.find(shell(PLAN), Combo.class).get(0);
			assertThat(stock.getText()).isEqualTo("ALUMINIUM, CAST");
			assertThat(complaint()).contains("M6x1").contains("ALUMINIUM, CAST");
			Screen.press(0, SWT.ESC, (char) 27);
		});
	}

	@Test
	void withoutAThreadTheWizardSaysWhyItStaysAway() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("plain.nc", "G21 G90\nG1 X5. F100\nM30\n"));
		Screen.idle(800);
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("w");
		Screen.idle(800);
		assertThat(shell(WHAT_ELSE)).isNull();
		assertThat(program.document().get()).hasLineCount(3);
	}

	private static OpenProgram checked(String text) {
		OpenProgram program = OpenProgram.open(OpenProgram.file("plan.nc", text));
		Screen.idle(1200);
		return program;
	}

	/** Presses the key behind Ctrl+Shift+N and does {@code inside} in the wizard, which is to be closed by that. */
	private static void inWizard(char key, String title, Runnable inside) {
		Display display = Display.getCurrent();
		List<Throwable> failures = new ArrayList<>();
		boolean[] done = { false };
		Dialogs.whenOpen(title, 100, () -> {
			try {
				Dialogs.takeFocus(title);
				inside.run();
				Screen.waitUntil("the wizard to close", () -> shell(title) == null);
			} catch (AssertionError | RuntimeException failed) {
				failures.add(failed);
				Arrays.stream(display.getShells()).filter(shell -> shell.getText().equals(title)).forEach(Shell::close);
			}
			done[0] = true;
		});
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type(String.valueOf(key));
		Screen.waitUntil("the end of the wizard", () -> done[0]);
		assertThat(failures).isEmpty();
	}

	private static void next() {
		Screen.chord(SWT.ALT, 'n');
	}

	private static void finish() {
		Screen.chord(SWT.ALT, 'f');
	}

	private static WizardDialog wizard() {
		return Arrays.stream(Display.getCurrent().getShells()).map(Shell::getData).filter(WizardDialog.class::isInstance)
				.map(WizardDialog.class::cast).findFirst().orElseThrow();
	}

	/** What the wizard says at its top. */
	private static String complaint() {
		WizardDialog dialog = wizard();
		String error = dialog.getCurrentPage().getErrorMessage();
		return error == null ? String.valueOf(dialog.getCurrentPage().getMessage()) : error;
	}

	private static Control page() {
		return wizard().getCurrentPage().getControl();
	}

	private static List<Button> radios() {
		return find(page(), Button.class);
	}

	private static String chosen() {
		return radios().stream().filter(Button::getSelection).map(Button::getText).findFirst().orElse("");
	}

	private static List<String> reasons() {
		return find(page(), Label.class).stream().map(Label::getText).toList();
	}

	private static List<String> numbers() {
		return find(page(), Table.class).stream().flatMap(table -> Arrays.stream(table.getItems())).map(PlanWizardTest::row).toList();
	}

	private static String row(TableItem item) {
		return item.getText(0) + " | " + item.getText(1) + " | " + item.getText(2);
	}

	private static String blocks() {
		return find(page(), StyledText.class).stream().map(StyledText::getText).findFirst().orElse("");
	}

	private static Button button(String words) {
		return find(Display.getCurrent().getActiveShell(), Button.class).stream().filter(button -> button.getText().replace("&", "")
				.startsWith(words)).findFirst().orElseThrow();
	}

	private static <C extends Control> List<C> find(Control in, Class<C> kind) {
		List<C> found = new ArrayList<>();
		if (kind.isInstance(in)) {
			found.add(kind.cast(in));
		} else if (in instanceof Composite composite) {
			Arrays.stream(composite.getChildren()).forEach(child -> found.addAll(find(child, kind)));
		}
		return found;
	}

	private static Shell shell(String title) {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.getText().equals(title)).findFirst().orElse(null);
	}
}
