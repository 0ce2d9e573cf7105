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
 * @param width   room for the drawing, pixels at 100 percent
 */
record ShownThread(String title, List<SheetFigures.Figure> figures, List<ImageData> sharp, String text, int width) {

	/** A drawing smaller than this part of its own size cannot be read. */
	private static final double SMALLEST = 0.7;

	/** Nothing is threaded at the caret. */
	static final ShownThread NOTHING = empty("No threading operation in this program.");

	/** Words alone. */
	static ShownThread empty(String title) {
		return new ShownThread(title, List.of(), List.of(), "", 0);
	}

	/** The operation at a line of the program, or the last one that starts above it, or the first. */
	static ShownThread at(CheckedText checked, int line, boolean dark, int width) {
		List<ThreadingOperation> operations = checked.result().work().operations();
		Optional<ThreadingOperation> above = operations.stream().filter(o -> o.block().outermost().line() <= line)
				.max(Comparator.comparingInt(o -> o.block().outermost().line()));
		return above.or(() -> operations.stream().findFirst()).map(operation -> of(Sheets.of(operation), line, dark, width)).orElse(NOTHING);
	}

	private static ShownThread of(OperationSheet sheet, int line, boolean dark, int width) {
		Optional<HoleSheet> here = sheet.holes().stream().filter(hole -> hole.block().outermost().line() == line).findFirst();
		Ink ink = dark ? Ink.WHITE : Ink.BLACK;
		Optional<Drawing> drawing = here.flatMap(hole -> Drawings.of(sheet, hole, ink)).or(() -> Drawings.of(sheet, ink));
		List<SheetFigures.Figure> figures = new ArrayList<>(SheetFigures.of(sheet));
		here.or(() -> sheet.holes().stream().findFirst()).ifPresent(hole -> figures.addAll(SheetFigures.of(sheet, hole)));
		sheet.notKnown().forEach(why -> figures.add(new SheetFigures.Figure("not known", why)));
		int holes = sheet.holes().size();
		return new ShownThread(sheet.name() + ", " + sheet.tool().name() + ", " + holes + (holes == 1 ? " hole" : " holes"), List.copyOf(figures),
				drawing.map(one -> images(one.svg(), width)).orElse(List.of()),
				drawing.map(Drawing::text).orElse("No drawing: sizes of hole and thread are not known."), width);
	}

	private static List<ImageData> images(String svg, int width) {
		try {
			double scale = Math.max(SMALLEST, Math.min(1, width / size(svg, "width=\"")));
			return List.of(image(svg, scale), image(svg, 2 * scale));
		} catch (SWTException notLoaded) {
			ILog.of(ShownThread.class).error("A drawing could not be shown", notLoaded);
			return List.of();
		}
	}

	/** The drawing at another size: its view box stays, so that it is as sharp at any. */
	private static ImageData image(String svg, double scale) {
		int head = svg.indexOf('>');
		String resized = resized(resized(svg.substring(0, head), "width=\"", scale), "height=\"", scale) + svg.substring(head);
		return new ImageLoader().load(new ByteArrayInputStream(resized.getBytes(StandardCharsets.UTF_8)))[0];
	}

	private static String resized(String head, String attribute, double scale) {
		int from = head.indexOf(" " + attribute) + 1 + attribute.length();
		return head.substring(0, from) + Math.round(size(head, attribute) * scale) + head.substring(head.indexOf('"', from));
	}

	private static double size(String svg, String attribute) {
		int from = svg.indexOf(" " + attribute) + 1 + attribute.length();
		return Double.parseDouble(svg.substring(from, svg.indexOf('"', from)));
	}
}
