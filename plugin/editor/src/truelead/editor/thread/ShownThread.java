package truelead.editor.thread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import truelead.checker.drawing.Drawing;
import truelead.checker.drawing.Ink;
import truelead.checker.program.BlockRef;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.SheetFigures;
import truelead.checker.sheet.Sheets;
import truelead.checker.sheet.TurnedSheet;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;
import truelead.editor.check.CheckedText;
import truelead.editor.look.SharpPicture;

/**
 * What the thread view shows of one operation; made on any thread but the UI's.
 *
 * @param title   the operation in a line
 * @param figures its numbers and those of the hole at the caret
 * @param picture the drawing; empty where there is nothing to draw
 * @param text    the drawing in words
 * @param width   room for the drawing, pixels at 100 percent
 * @param height  the same upwards
 */
record ShownThread(String title, List<SheetFigures.Figure> figures, Optional<SharpPicture> picture, String text, int width, int height) {

	/** Nothing is threaded at the caret. */
	static final ShownThread NOTHING = empty("No threading operation in this program.");

	/** Words alone. */
	static ShownThread empty(String title) {
		return new ShownThread(title, List.of(), Optional.empty(), "", 0, 0);
	}

	/** The operation at a line of the program, or the last one that starts above it, or the first. */
	static ShownThread at(CheckedText checked, int line, boolean dark, int width, int height) {
		Work work = checked.result().work();
		List<TurnedSheet> turned = Sheets.turned(work);
		Optional<ThreadingOperation> inHole = work.operations().stream().filter(o -> start(o.block()) <= line)
				.max(Comparator.comparingInt(o -> start(o.block())));
		Optional<TurnedSheet> byPoint = turned.stream().filter(sheet -> start(sheet.block()) <= line)
				.max(Comparator.comparingInt(sheet -> start(sheet.block())));
		if (byPoint.isPresent() && inHole.filter(o -> start(o.block()) > start(byPoint.get().block())).isEmpty()) {
			return of(byPoint.get(), dark, width, height);
		}
		return inHole.or(() -> work.operations().stream().findFirst()).map(operation -> of(Sheets.of(operation), line, dark, width, height))
				.or(() -> turned.stream().findFirst().map(sheet -> of(sheet, dark, width, height))).orElse(NOTHING);
	}

	private static int start(BlockRef block) {
		return block.outermost().line();
	}

	private static ShownThread of(TurnedSheet sheet, boolean dark, int width, int height) {
		return of(sheet.name() + ", " + sheet.tool().name() + ", " + sheet.method(), SheetFigures.of(sheet),
				Drawings.of(sheet, SharpPicture.inkOn(dark)), width, height);
	}

	private static ShownThread of(OperationSheet sheet, int line, boolean dark, int width, int height) {
		Optional<HoleSheet> here = sheet.holes().stream().filter(hole -> hole.block().outermost().line() == line).findFirst();
		Ink ink = SharpPicture.inkOn(dark);
		Optional<Drawing> drawing = here.flatMap(hole -> Drawings.of(sheet, hole, ink)).or(() -> Drawings.of(sheet, ink));
		List<SheetFigures.Figure> figures = new ArrayList<>(SheetFigures.of(sheet));
		here.or(() -> sheet.holes().stream().findFirst()).ifPresent(hole -> figures.addAll(SheetFigures.of(sheet, hole)));
		sheet.notKnown().forEach(why -> figures.add(new SheetFigures.Figure("not known", why)));
		int holes = sheet.holes().size();
		return of(sheet.name() + ", " + sheet.tool().name() + ", " + holes + (holes == 1 ? " hole" : " holes"), List.copyOf(figures),
				drawing, width, height);
	}

	private static ShownThread of(String title, List<SheetFigures.Figure> figures, Optional<Drawing> drawing, int width, int height) {
		return new ShownThread(title, figures, drawing.flatMap(one -> SharpPicture.filling(one, width, height)),
				drawing.map(Drawing::text).orElse("No drawing: sizes of hole and thread are not known."), width, height);
	}
}
