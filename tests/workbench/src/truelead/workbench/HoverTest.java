package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What the mouse rests on tells what it means. */
class HoverTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void aWordTellsWhatWasInForceAndIs() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("hover.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		List<String> told = rest(program, "G83");
		assertThat(told).anyMatch(line -> line.startsWith("G83: peck drill"))
				.anyMatch(line -> line.contains("in force behind it") && line.contains("tool T2") && line.contains("speed 3200 rev/min"));
	}

	@Test
	void anExpressionTellsItsPartsAtAKey() {
		OpenProgram program =
				OpenProgram.open(OpenProgram.file("parts.nc", Programs.GOOD.replace("T1 M6", "#101=[2.*6.+SQRT[9.]]\nT1 M6")));
		Screen.idle(1000);
		program.caretBehind("#101=[2");
		Screen.press(0, SWT.F2);
		Screen.waitUntil("its parts, not " + told(),
				() -> told().containsAll(List.of("2.*6.+SQRT[9.] = 15", "2.*6. = 12", "SQRT[9.] = 3")));
		Screen.press(0, SWT.ESC, SWT.ESC);
	}

	@Test
	void aCalloutTellsLimitsAndDrillsWithTheirSource() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("callout.nc", Programs.GOOD.replace("M6X1 TAP", "M6X1-6H TAP")));
		Screen.idle(1000);
		assertThat(rest(program, "M6X1-6H")).anyMatch(line -> line.startsWith("M6x1-6H: pitch 1.000 mm"))
				.anyMatch(line -> line.startsWith("minor diameter 4.917 to 5.153 for 6H") && line.contains("ISO 965-1"))
				.anyMatch(line -> line.startsWith("drill for a cut thread 5"));
	}

	@Test
	void aFindingTellsWhatHappensAtTheSpindle() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("finding.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		List<String> told = rest(program, "F500");
		assertThat(told).anyMatch(line -> line.contains("F500 at S520")).anyMatch(line -> line.contains("error · feed-off-pitch"))
				.anyMatch(line -> line.length() > 80);
		assertThat(pictures()).as("the drawing of the feed that runs off").isPositive();
	}

	@Test
	void theNoteBehindABlockIsToldWholeThoughItsLineIsShort() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("note-told.nc", Programs.GOOD));
		Screen.idle(1000);
		program.caretBehind("G99 G84 Z-1");
		Screen.press(0, SWT.F2);
		Screen.waitUntil("the note, not " + told(),
				() -> told().stream().anyMatch(line ->
						line.matches("M6x1 \u00b7 520 \u00d7 1\\.000 = 520 \u2713 \u00b7 14\\.5 mm deep, [0-9.]+ mm below the tap")));
		Screen.press(0, SWT.ESC, SWT.ESC);
	}

	@Test
	void theNoteBehindATurnedThreadIsToldToo() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("turned-told.nc", Programs.TURNED));
		Screen.idle(1000);
		program.caretBehind("G92 X19.");
		Screen.press(0, SWT.F2);
		Screen.waitUntil("the note, not " + told(),
				() -> told().contains("M20x1.5 \u00b7 1.5 a turn, pitch 1.500 \u2713 \u00b7 3 passes, first 0.35 mm deep, last to 18.16 mm "
						+ "\u00b7 3 mm to the shoulder"));
		Screen.press(0, SWT.ESC, SWT.ESC);
	}

	@Test
	void theDrawingOfAFindingComesAtAKeyToo() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("drawn-at-key.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Screen.press(0, SWT.F2);
		Screen.waitUntil("the drawing of the feed that runs off", () -> pictures() > 0);
		assertThat(told()).anyMatch(line -> line.contains("F500 at S520"));
		Screen.press(0, SWT.ESC, SWT.ESC);
	}

	@Test
	void aFindingsOtherBlocksAreReachedFromItByKeys() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("reach.nc", Programs.GOOD.replace("G83 Z-19.", "G83 Z-15.")));
		program.waitFor("14.5 mm deep");
		program.caretBehind("G99 G84 Z-14");
		Screen.press(0, SWT.F2);
		Screen.waitUntil("a way to the drill block", () -> links().stream().anyMatch(link -> link.getText().startsWith("<a>line 14 ")));
		Link way = links().stream().filter(link -> link.getText().startsWith("<a>line 14 ")).findFirst().orElseThrow();
		for (int tab = 0; tab < 20 && !way.isFocusControl(); tab++) {
			Screen.press(0, SWT.TAB, '\t');
		}
		assertThat(way.isFocusControl()).as("reached by the tab key").isTrue();
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the drill block", () -> program.widget().getSelectionText().contains("G83"));
	}

	private static List<Link> links() {
		List<Link> links = new ArrayList<>();
		Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible()
				&& shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell())
				.forEach(shell -> links.addAll(Dialogs.find(shell, Link.class)));
		return links;
	}

	/** Rests the mouse on a text of the program until something is told, and gives the lines. */
	private static List<String> rest(OpenProgram program, String text) {
		Mouse.rest(program, text);
		Screen.waitUntil("something told", () -> !told().isEmpty());
		return told();
	}

	private static List<String> told() {
		List<String> lines = new ArrayList<>();
		Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible()
				&& shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()).forEach(shell -> collect(shell, lines));
		return lines;
	}

	private static long pictures() {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible()
				&& shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()).mapToLong(HoverTest::pictures).sum();
	}

	private static long pictures(Composite parent) {
		return Arrays.stream(parent.getChildren()).mapToLong(child -> child instanceof Label label && label.getImage() != null ? 1
				: child instanceof Composite composite ? pictures(composite) : 0).sum();
	}

	private static void collect(Composite parent, List<String> lines) {
		for (Control child : parent.getChildren()) {
			if (child instanceof Label label && !label.getText().isBlank()) {
				lines.add(label.getText());
			} else if (child instanceof Composite composite) {
				collect(composite, lines);
			}
		}
	}
}
