package truelead.workbench;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.Test;

/** No test: figures of the editor in a real workbench, printed. {@code sh tests/speed/run workbench} runs it; nothing else does. */
class WorkbenchSpeed {

	private static final String OURS = "truelead.editor.program";
	private static final String PLAIN = "org.eclipse.ui.DefaultTextEditor";
	private static final int ROUNDS = 3;
	private static final int EDITS = 25;
	private static final long PATIENCE = 60_000;
	private static final long SHORT = 25_000;

	@Test
	void figures() throws CoreException {
		say("%-46s %12s %12s %14s", "", "3000 blocks", "1 M blocks", "goal");
		List<List<String>> columns = List.of(column(3_000), column(1_000_000));
		String[] names = { "open in our editor, ms", "open in the platform's text editor, ms", "ours / platform's",
				"findings after opening, ms", "findings after a key, median, ms", "findings after a key, worst, ms",
				"longest hold of the screen, ms", "longest hold with our code in it, ms", "hover on a word, ms",
				"adding all block numbers, ms", "longest hold with our code in it, ms", "undoing that, ms",
				"longest hold with our code in it, ms", "capitals, ms", "renumbering, ms" };
		String[] goals = { "", "", "1.5", "", "100 / 250", "100 / 250", "", "50", "", "", "", "", "", "", "" };
		for (int i = 0; i < names.length; i++) {
			say("%-46s %12s %12s %14s", names[i], columns.get(0).get(i), columns.get(1).get(i), goals[i]);
		}
	}

	private static List<String> column(int blocks) throws CoreException {
		String text = program(blocks);
		IFile program = file("speed.nc", text);
		IFile plain = file("speed.txt", text);
		List<Double> ours = new ArrayList<>();
		List<Double> platform = new ArrayList<>();
		Screen.toFront();
		for (int i = 0; i < ROUNDS; i++) {
			platform.add(open(plain, PLAIN));
			OpenProgram.closeAll();
			ours.add(open(program, OURS));
			OpenProgram.closeAll();
			System.gc();
		}
		System.err.println("ours " + ours + " platform " + platform);
		List<String> column = new ArrayList<>(List.of(number(median(ours)), number(median(platform)),
				String.format(Locale.ROOT, "%.2f", median(ours) / median(platform))));
		try (UiWatch watch = new UiWatch()) {
			column.addAll(work(program, watch));
		}
		OpenProgram.closeAll();
		return column;
	}

	private static List<String> work(IFile file, UiWatch watch) throws CoreException {
		long start = System.nanoTime();
		OpenProgram program =
				new OpenProgram((ITextEditor) IDE.openEditor(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), file,
						OURS));
		await(() -> says(program, "F500"));
		double first = since(start);
		int at = program.document().getLength() - file(program).indexOf('F') - 1;
		List<Double> edits = new ArrayList<>();
		int feed = 500;
		program.widget().setSelection(at);
		program.widget().showSelection();
		pause(500);
		for (int i = 0; i < EDITS; i++) {
			int next = 500 + (feed + 17) % 100;
			program.widget().setSelection(at + 2, at + 4);
			start = System.nanoTime();
			program.widget().insert(String.format(Locale.ROOT, "%02d", next % 100));
			String wanted = "F" + next;
			await(() -> says(program, wanted));
			edits.add(since(start));
			feed = next;
			pause(300);
		}
		for (int i = 0; i < 60; i++) {
			Screen.press(0, SWT.PAGE_UP);
		}
		String longest = number(watch.longest());
		String longestOurs = held(watch);
		System.err.println("edits " + edits + " longest " + longest + " ours " + longestOurs);
		// Before the hover, whose shell keeps the keys where no window manager is.
		List<String> rewrites = rewrites(program, watch);
		System.err.println("rewrites " + rewrites);
		double hover = hover(program);
		Collections.sort(edits);
		List<String> figures = new ArrayList<>(List.of(number(first), number(median(edits)), number(edits.get(edits.size() - 1)), longest,
				longestOurs, number(hover)));
		figures.addAll(rewrites);
		return figures;
	}

	private static String held(UiWatch watch) {
		return number(watch.longestOurs()) + (watch.longestOurs() > 50 ? " " + watch.where() : "");
	}

	/** What changes every line, and taking it back. */
	private static List<String> rewrites(OpenProgram program, UiWatch watch) {
		program.widget().setTopIndex(0);
		program.widget().setSelection(0);
		program.focus();
		Screen.press(0, SWT.ESC, (char) 27);
		List<String> figures = new ArrayList<>();
		watch.forget();
		figures.add(number(numbers(program, 'a', "Add Block Numbers", "\nN20 ")));
		pause(2000);
		figures.add(held(watch));
		program.focus();
		watch.forget();
		long start = System.nanoTime();
		Screen.chord(SWT.CTRL, 'z');
		figures.add(number(comes(() -> !head(program).contains("\nN20 "), SHORT) ? since(start) : Double.NaN));
		pause(2000);
		figures.add(held(watch));
		program.document().set(program.document().get().replace("X", "x"));
		pause(3000);
		program.focus();
		start = System.nanoTime();
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("u");
		figures.add(number(comes(() -> program.widget().getTextRange(0, 200).contains("X0."), SHORT) ? since(start) : Double.NaN));
		pause(3000);
		program.focus();
		figures.add(number(numbers(program, 'n', "Renumber Blocks", "\nN10 ")));
		return figures;
	}

	private static String head(OpenProgram program) {
		return program.widget().getTextRange(0, 80);
	}

	/** The end of the program backwards, from which the feed of the tap is told. */
	private static String file(OpenProgram program) {
		int length = program.document().getLength();
		try {
			return new StringBuilder(program.document().get(length - 300, 300)).reverse().toString();
		} catch (org.eclipse.jface.text.BadLocationException never) {
			throw new AssertionError(never);
		}
	}

	private static boolean says(OpenProgram program, String feed) {
		var model = program.editor().getDocumentProvider().getAnnotationModel(program.editor().getEditorInput());
		for (var all = model.getAnnotationIterator(); all.hasNext();) {
			var annotation = all.next();
			if (annotation.getType().startsWith("truelead.editor.") && annotation.getText() != null
					&& annotation.getText().startsWith(feed + " ")) {
				return true;
			}
		}
		return false;
	}

	/** Until the text has been drawn. */
	private static double open(IFile file, String editor) {
		boolean[] drawn = new boolean[1];
		Listener listener = event -> drawn[0] |= event.widget instanceof StyledText text && text.getCharCount() > 0;
		Display display = Display.getCurrent();
		long start = System.nanoTime();
		display.addFilter(SWT.Paint, listener);
		try {
			IEditorPart part = IDE.openEditor(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), file, editor);
			Control text = part.getAdapter(Control.class);
			text.redraw();
			await(() -> drawn[0]);
			return since(start);
		} catch (PartInitException cannot) {
			throw new AssertionError(cannot);
		} finally {
			display.removeFilter(SWT.Paint, listener);
		}
	}

	private static double hover(OpenProgram program) {
		// a dialog that has gone leaves no window active where no window manager is
		Screen.toFront();
		program.focus();
		StyledText widget = program.widget();
		widget.setTopIndex(widget.getLineCount() / 2);
		pause(500);
		int offset = widget.getOffsetAtLine(widget.getTopIndex() + 4) + 1;
		Point place = widget.toDisplay(widget.getLocationAtOffset(offset));
		int before = shells();
		Mouse.move(place.x + 200, place.y + 60);
		pause(300);
		long start = System.nanoTime();
		Mouse.move(place.x + 3, place.y + 5);
		pause(30);
		Mouse.move(place.x + 4, place.y + 5);
		return comes(() -> shells() > before, 20_000) ? since(start) : Double.NaN;
	}

	private static int shells() {
		int visible = 0;
		for (Shell shell : Display.getCurrent().getShells()) {
			visible += shell.isVisible() ? 1 : 0;
		}
		return visible;
	}

	private static double numbers(OpenProgram program, char key, String title, String wanted) {
		long[] start = new long[1];
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		enter(title, start);
		Screen.type("" + key);
		return comes(() -> head(program).contains(wanted), SHORT) ? since(start[0]) : Double.NaN;
	}

	private static void enter(String title, long[] start) {
		Display.getCurrent().timerExec(100, () -> {
			for (Shell shell : Display.getCurrent().getShells()) {
				if (shell.isVisible() && shell.getText().equals(title)) {
					start[0] = System.nanoTime();
					Screen.press(0, SWT.CR, '\r');
					return;
				}
			}
			enter(title, start);
		});
	}

	/** Surfacing, and at its end six holes that are drilled and tapped with a feed that is not the pitch's. */
	private static String program(int blocks) {
		StringBuilder text =
				new StringBuilder("%\nO9 (SURFACE AND SIX HOLES)\nN1 G17 G21 G40 G49 G80 G90 G94 G54\nT1 M6 (BALL NOSE 6)\n"
						+ "G0 X0. Y0. S8000 M3\nG43 Z25. H1\nG1 Z-1. F900.\n");
		for (int i = 0; i < blocks - 30; i++) {
			text.append('X').append(i * 7 % 200).append('.').append(i % 10).append(" Y").append(i / 400 % 150).append(".5 Z-")
					.append(1 + i % 3).append('.').append(i % 9 + 1).append('\n');
		}
		return text + "G0 Z25.\nT2 M6 (DRILL 5.0)\nG0 X20. Y20. S3200 M3\nG43 Z25. H2\nG99 G83 Z-19. R2. Q4. F320\nX80.\nG80\n"
				+ "T3 M6 (M6X1 TAP)\n" + "G0 X20. Y20. S520 M3\nG43 Z25. H3\nG99 G84 Z-14.5 R5. F500\nX80.\nG80\nM30\n%\n";
	}

	private static IFile file(String name, String text) throws CoreException {
		IFile file = OpenProgram.file(name, "");
		file.setContents(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), true, false, null);
		return file;
	}

	private static void await(BooleanSupplier condition) {
		if (!comes(condition, PATIENCE)) {
			throw new AssertionError("waited in vain");
		}
	}

	private static boolean comes(BooleanSupplier condition, long patience) {
		long end = System.currentTimeMillis() + patience;
		Display display = Display.getCurrent();
		while (!condition.getAsBoolean()) {
			if (System.currentTimeMillis() > end) {
				return false;
			}
			if (!display.readAndDispatch()) {
				display.timerExec(2, () -> {
					// wakes the screen
				});
				display.sleep();
			}
		}
		return true;
	}

	private static void pause(int milliseconds) {
		long end = System.nanoTime() + milliseconds * 1_000_000L;
		await(() -> System.nanoTime() > end);
	}

	private static double since(long start) {
		return (System.nanoTime() - start) / 1e6;
	}

	private static double median(List<Double> values) {
		return values.stream().sorted().toList().get(values.size() / 2);
	}

	private static String number(double milliseconds) {
		return String.format(Locale.ROOT, "%.0f", milliseconds);
	}

	private static void say(String format, Object... values) {
		System.out.println(String.format(Locale.ROOT, format, values).stripTrailing());
	}
}
