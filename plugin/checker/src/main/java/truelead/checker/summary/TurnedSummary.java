package truelead.checker.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.Setting;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.SheetFigures;
import truelead.checker.sheet.TurnedSheet;

/**
 * A thread that a lathe cuts by a single point in one quiet line for the end of its first block: the thread, the lead against its own,
 * passes, and what is left to the shoulder:
 * {@code M20x1.5 · 1.5 a turn, pitch 1.500 ✓ · 4 passes, first 0.35 mm deep, last to 18.16 mm · 3 mm to the shoulder}. Parts that are not
 * known are left out.
 */
final class TurnedSummary {

	private TurnedSummary() {
	}

	/** The line; empty where nothing worth saying is known. */
	static String of(TurnedSheet sheet) {
		Figures figures = new Figures(sheet.unit());
		List<String> parts = new ArrayList<>();
		sheet.thread().filter(Fact::stated).ifPresent(thread -> parts.add(thread.value().designation()));
		lead(sheet, figures).ifPresent(parts::add);
		parts.add(passes(sheet, figures));
		SheetFigures.room(sheet, figures).ifPresent(parts::add);
		return String.join(" \u00b7 ", parts);
	}

	private static Optional<String> lead(TurnedSheet sheet, Figures figures) {
		Setting written = sheet.cut().pass().lead();
		if (!written.known()) {
			return Optional.empty();
		}
		String said = Figures.number(Math.abs(written.value()), 6) + " a turn";
		return Optional.of(sheet.thread().filter(Fact::stated).map(thread -> said + (thread.value().starts() > 1 ? ", lead " : ", pitch ")
				+ figures.advance(sheet.lead())
				+ (OperationSummary.fits(Math.abs(written.value()), written.rounding(), sheet.lead() / sheet.unit().mm()) ? " \u2713"
						: " \u2717")).orElse(said));
	}

	private static String passes(TurnedSheet sheet, Figures figures) {
		String count = sheet.counted() ? SheetFigures.count(sheet) + (sheet.passes() == 1 ? " pass, " : " passes, ") : "";
		double deep = sheet.firstDeep();
		String first = sheet.counted() && sheet.passes() == 1 ? "" : Double.isNaN(deep) ? Double.isNaN(sheet.firstDiameter()) ? ""
				: "first to " + figures.fine(sheet.firstDiameter()) + ", " : "first " + figures.fine(deep) + " deep, ";
		return count + first + (count.isEmpty() || sheet.passes() > 1 ? "last " : "") + "to " + figures.fine(sheet.diameter());
	}
}
