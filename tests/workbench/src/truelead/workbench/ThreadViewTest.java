package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The thread at the caret stands drawn and in numbers beside the program. */
class ThreadViewTest {

	private static final String VIEW = "truelead.editor.thread.view";

	private IViewPart view;
	private Table table;

	@BeforeEach
	void show() throws PartInitException {
		view = page().showView(VIEW);
		Screen.waitUntil("focus in the view", () -> Display.getCurrent().getFocusControl() instanceof Table, () -> Screen.toFront(view));
		table = (Table) Display.getCurrent().getFocusControl();
	}

	@AfterEach
	void close() {
		OpenProgram.closeAll();
		page().hideView(view);
		Screen.settle();
	}

	@Test
	void theOperationAtTheCaretIsDrawnWithItsNumbers() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("drawn.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.focus();
		program.caretBehind("F500\nX80");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the hole at X80, not " + texts(), () -> texts().stream().anyMatch(row -> row.startsWith("hole ")
				&& row.contains("X80")));
		assertThat(labels()).anyMatch(label -> label.getText().startsWith("M6x1, T") && label.getText().endsWith("2 holes"));
		assertThat(texts()).anyMatch(row -> row.startsWith("thread M6x1, "))
				.anyMatch(row -> row.startsWith("a turn advances 0.962 mm, the thread needs 1.000 mm (-0.038)"));
		Label picture = labels().get(1);
		assertThat(picture.getToolTipText()).contains("5 mm").contains("12 mm");
		assertThat(picture.getImage().getBounds().width).isGreaterThan(100);
	}

	@Test
	void whatIsTypedIsShownAndTheNumbersCanBeCopied() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("typed.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.focus();
		program.caretBehind("F500");
		Screen.press(0, SWT.BS, '\b');
		Screen.press(0, SWT.BS, '\b');
		Screen.type("20");
		Screen.waitUntil("the right feed, not " + texts(),
				() -> texts().stream().anyMatch(row -> row.startsWith("a turn advances 1.000 mm, the thread needs 1.000 mm")));
		page().activate(view);
		Screen.settle();
		Screen.press(SWT.MOD1, 'c', 'c');
		Clipboard clipboard = new Clipboard(Display.getCurrent());
		Screen.waitUntil("the numbers on the clipboard", () -> clipboard.getContents(TextTransfer.getInstance()) instanceof String text
				&& text.contains("feed\tF520"));
		clipboard.dispose();
	}

	@Test
	void aCaretThatTheOutlineMovesIsFollowedThoughTheKeysGoToTheOutline() throws PartInitException {
		OpenProgram program =
				OpenProgram.open(OpenProgram.file("two.nc",
						Programs.GOOD.replace("M30",
								"T4 M6 (M8X1.25 TAP)\nG0 X140. Y20. S400 M3\nG43 Z25. H4\nG99 G84 Z-14.5 R5. F500\nG80\nM30")));
		program.caretBehind("G84");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the first thread", () -> labels().get(0).getText().startsWith("M6x1"));
		IViewPart outline = page().showView("org.eclipse.ui.views.ContentOutline");
		Screen.waitUntil("the outline", () -> Display.getCurrent().getFocusControl() instanceof Tree tree && tree.getItemCount() > 0,
				() -> Screen.toFront(outline));
		Screen.press(0, SWT.END);
		Screen.waitUntil("the last thread, not " + labels().get(0).getText(), () -> labels().get(0).getText().startsWith("M8x1.25"));
		assertThat(Display.getCurrent().getFocusControl()).isInstanceOf(Tree.class);
		page().hideView(outline);
	}

	@Test
	void theDrawingStaysWhileTheCaretMovesWithinItsOperation() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("calm.nc", Programs.GOOD));
		program.caretBehind("S520 M3");
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.waitUntil("the drawing", () -> labels().get(1).getImage() != null);
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.idle(400);
		Image before = labels().get(1).getImage();
		for (int key = 0; key < 6; key++) {
			Screen.press(0, SWT.ARROW_LEFT);
		}
		Screen.idle(400);
		assertThat(labels().get(1).getImage()).as("the same picture, not one like it").isSameAs(before);
	}

	@Test
	void aHelixIsDrawnFromAboveWithItsCutterItsCirclesAndItsWayInAndOut() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("helix.nc", Programs.HELIX));
		program.caretBehind("G3 X54.02 Y40. Z-15.375");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the helix, not " + labels().get(0).getText(), () -> labels().get(0).getText().equals("M20x1.5-6H, T2, 1 hole"));
		assertThat(labels().get(1).getToolTipText()).contains("20 mm", "20.04 mm", "18.5 mm", "12 mm");
		assertThat(texts()).contains("made by thread milling, line 15", "cut diameter 20.04 mm")
				.anyMatch(row -> row.startsWith("a turn advances 1.500 mm, the thread needs 1.500 mm"))
				.anyMatch(row -> row.startsWith("limits 6H: minor diameter 18.376 mm to 18.676 mm") && row.contains("ISO 965-1"));
	}

	@Test
	void aTurnedThreadIsDrawnInSectionWithItsPasses() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("turned.nc", Programs.TURNED));
		program.caretBehind("X18.7");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the turned thread, not " + labels().get(0).getText(),
				() -> labels().get(0).getText().equals("M20x1.5, T3, single point outside"));
		assertThat(labels().get(1).getToolTipText())
				.isEqualTo("Passes from Z6 to Z-27, the first to diameter 19.3 mm, the deepest to diameter 18.16 mm. 3 mm before: "
						+ "shoulder Z-30.");
		assertThat(texts()).contains("passes 3: 19.3 \u00b7 18.7 \u00b7 18.16", "left behind it 3 mm to the shoulder")
				.anyMatch(row -> row.startsWith("limits 6g: major diameter 19.732 mm to 19.968 mm"));
	}

	@Test
	void theDrawingIsDrawnAnewForAScreenOfTwiceTheZoom() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("sharp.nc", Programs.GOOD));
		program.caretBehind("G84");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the drawing", () -> labels().get(1).getImage() != null);
		ImageData plain = labels().get(1).getImage().getImageData(100);
		ImageData twice = labels().get(1).getImage().getImageData(200);
		assertThat(twice.width).isBetween(2 * plain.width - 2, 2 * plain.width + 2);
		assertThat(finerThanDoubled(twice)).as("places where pixels of one doubled pixel differ").isGreaterThan(500);
	}

	private static int finerThanDoubled(ImageData picture) {
		int finer = 0;
		for (int x = 0; x + 1 < picture.width; x += 2) {
			for (int y = 0; y + 1 < picture.height; y += 2) {
				// of black ink on no ground the alpha tells, of coloured ink the pixel too
				finer += ink(picture, x, y) != ink(picture, x + 1, y) || ink(picture, x, y) != ink(picture, x, y + 1) ? 1 : 0;
			}
		}
		return finer;
	}

	private static long ink(ImageData picture, int x, int y) {
		return ((long) picture.getAlpha(x, y) << 32) + picture.getPixel(x, y);
	}

	@Test
	void aProgramWithoutThreadsSaysSo() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("none.nc", "%\nO1\nG21 G90\nG0 X1.\nM30\n%\n"));
		program.caretBehind("G0");
		Screen.waitUntil("a sentence, not " + labels().get(0).getText(),
				() -> labels().get(0).getText().equals("No threading operation in this program."));
	}

	@Test
	void theDrawingIsAsLargeAsItsRoom() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("grown.nc", Programs.GOOD));
		program.caretBehind("G84");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the drawing", () -> labels().get(1).getImage() != null);
		Screen.idle(400);
		Rectangle small = labels().get(1).getImage().getBounds();
		page().activate(view);
		Screen.settle();
		Screen.chord(SWT.CTRL, 'm');
		Screen.waitUntil("a larger drawing than " + small, () -> labels().get(1).getImage().getBounds().height > 1.3 * small.height);
		Screen.idle(400);
		Rectangle large = labels().get(1).getImage().getBounds();
		Point room = labels().get(1).getParent().getSize();
		assertThat(large.width).isLessThanOrEqualTo(room.x);
		assertThat(large.height).isLessThanOrEqualTo(room.y);
		assertThat(Math.max((double) large.width / room.x, (double) large.height / room.y)).as("part of its room").isGreaterThan(0.8);
		assertThat((double) large.width / large.height).as("to scale").isCloseTo((double) small.width / small.height, within(0.03));
		Screen.chord(SWT.CTRL, 'm');
		Screen.waitUntil("the drawing as it was", () -> labels().get(1).getImage().getBounds().equals(small));
	}

	@Test
	void whenTheProgramIsClosedItsThreadGoes() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("closed.nc", Programs.GOOD));
		program.caretBehind("G84");
		Screen.press(0, SWT.ARROW_LEFT);
		Screen.waitUntil("the thread", () -> labels().get(0).getText().startsWith("M6x1"));
		OpenProgram.closeAll();
		assertThat(labels().get(0).getText()).isEqualTo("Open a program: the thread at the caret is drawn here.");
		assertThat(texts()).isEmpty();
	}

	private List<String> texts() {
		return Arrays.stream(table.getItems()).map(item -> item.getText(0) + " " + item.getText(1)).toList();
	}

	private List<Label> labels() {
		return find(table.getParent().getParent(), Label.class).stream().map(Label.class::cast).toList();
	}

	private static List<Control> find(Control control, Class<?> kind) {
		return kind.isInstance(control) ? List.of(control) : control instanceof Composite composite
				? Arrays.stream(composite.getChildren()).flatMap(child -> find(child, kind).stream()).toList() : List.of();
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
