package truelead.editor.thread;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import truelead.checker.drawing.Drawing;
import truelead.checker.drawing.Ink;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.SheetFigures;
import truelead.checker.sheet.Sheets;
import truelead.checker.work.ThreadingOperation;
import truelead.editor.check.CheckedText;

/**
 * What the thread view shows of one operation; made on any thread but the UI's.
 *
 * @param title   the operation in a line
 * @param figures its numbers and those of the hole at the caret
 * @param sharp   the drawing at a zoom of 100 and of 200 percent; empty where there is nothing to draw
 * @param text    the drawing in words
 */
record ShownThread(String title, List<SheetFigures.Figure> figures, List<ImageData> sharp, String text) {

	/** Nothing is threaded at the caret. */
	static final ShownThread NOTHING = new ShownThread("No threading operation in this program.", List.of(), List.of(), "");

	/** The operation at a line of the program, or the last one that starts above it, or the first. */
	static ShownThread at(CheckedText checked, int line, boolean dark) {
		List<ThreadingOperation> operations = checked.result().work().operations();
		Optional<ThreadingOperation> above = operations.stream().filter(o -> o.block().outermost().line() <= line)
				.max(Comparator.comparingInt(o -> o.block().outermost().line()));
		return above.or(() -> operations.stream().findFirst()).map(operation -> of(Sheets.of(operation), line, dark)).orElse(NOTHING);
	}

	private static ShownThread of(OperationSheet sheet, int line, boolean dark) {
		Optional<HoleSheet> here = sheet.holes().stream().filter(hole -> hole.block().outermost().line() == line).findFirst();
		Ink ink = dark ? Ink.WHITE : Ink.BLACK;
		Optional<Drawing> drawing = here.flatMap(hole -> Drawings.of(sheet, hole, ink)).or(() -> Drawings.of(sheet, ink));
		List<SheetFigures.Figure> figures = new ArrayList<>(SheetFigures.of(sheet));
		here.or(() -> sheet.holes().stream().findFirst()).ifPresent(hole -> figures.addAll(SheetFigures.of(sheet, hole)));
		sheet.notKnown().forEach(why -> figures.add(new SheetFigures.Figure("not known", why)));
		int holes = sheet.holes().size();
		return new ShownThread(sheet.name() + ", " + sheet.tool().name() + ", " + holes + (holes == 1 ? " hole" : " holes"), List.copyOf(figures),
				drawing.map(one -> images(one.svg())).orElse(List.of()), drawing.map(Drawing::text).orElse("No drawing: sizes of hole and thread are not known."));
	}

	private static List<ImageData> images(String svg) {
		try {
			return List.of(image(svg), image(doubled(svg)));
		} catch (SWTException notLoaded) {
			ILog.of(ShownThread.class).error("A drawing could not be shown", notLoaded);
			return List.of();
		}
	}

	private static ImageData image(String svg) {
		return new ImageLoader().load(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))[0];
	}

	/** The same drawing twice as wide and high: its view box stays, only the size it is drawn at is another. */
	private static String doubled(String svg) {
		int head = svg.indexOf('>');
		StringBuilder large = new StringBuilder();
		for (String part : svg.substring(0, head).split(" ")) {
			large.append(large.isEmpty() ? "" : " ").append(part.startsWith("width=\"") || part.startsWith("height=\"") ? doubledSize(part) : part);
		}
		return large + svg.substring(head);
	}

	private static String doubledSize(String attribute) {
		int from = attribute.indexOf('"') + 1;
		int to = attribute.indexOf('"', from);
		return attribute.substring(0, from) + 2 * Double.parseDouble(attribute.substring(from, to)) + attribute.substring(to);
	}
}
