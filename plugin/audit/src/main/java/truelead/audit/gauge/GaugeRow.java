package truelead.audit.gauge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import truelead.checker.job.GaugingInterval;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.SheetFigures;
import truelead.checker.sheet.Sheets;
import truelead.checker.sheet.TurnedSheet;
import truelead.checker.work.Work;

/**
 * What to check of one thread, as it is written on a gauge sheet.
 *
 * @param thread   designation, or that nothing names it
 * @param tool     the tool that makes it
 * @param number   how many of them the program makes: holes, or threads that a lathe cuts by a single point
 * @param gauges   what it is measured and gauged by
 * @param depth    depth of thread to check
 * @param interval which holes, or which parts, to check
 */
public record GaugeRow(String thread, String tool, int number, Gauges gauges, String depth, String interval) {

	/**
	 * The rows of a program, operations of one thread by one tool in one row; a check every so many holes or parts, 0 for the usual number.
	 */
	public static List<GaugeRow> of(Work work, int every) {
		Map<String, List<OperationSheet>> threads = new LinkedHashMap<>();
		for (OperationSheet sheet : Sheets.of(work)) {
			threads.computeIfAbsent(sheet.name() + "\n" + sheet.tool().index() + "\n" + sheet.called() + "\n" + sheet.outside(),
					any -> new ArrayList<>()).add(sheet);
		}
		return Stream.concat(threads.values().stream().map(same -> row(same, every)), turned(Sheets.turned(work), every)).toList();
	}

	private static GaugeRow row(List<OperationSheet> sheets, int every) {
		OperationSheet first = sheets.get(0);
		int holes = (int) sheets.stream().flatMap(sheet -> sheet.holes().stream()).map(HoleSheet::label).distinct().count();
		int step = every > 0 ? every : GaugingInterval.of(first.tool().facts());
		return new GaugeRow(first.name(), first.tool().name(), holes, Gauges.of(first), Double.isNaN(first.called()) ? Gauges.AS_DRAWN
				: "full thread to " + new Figures(first.unit()).length(first.called()), holes <= 1 ? "the hole" : holes <= step
				? "first and last hole" : "first hole, every " + step + "th, last hole");
	}

	private static Stream<GaugeRow> turned(List<TurnedSheet> all, int every) {
		Map<String, List<TurnedSheet>> threads = new LinkedHashMap<>();
		for (TurnedSheet sheet : all) {
			if (!isBegun(sheet, all)) {
				threads.computeIfAbsent(sheet.name() + "\n" + sheet.tool().name() + "\n" + sheet.method(), any -> new ArrayList<>())
						.add(sheet);
			}
		}
		return threads.values().stream().map(same -> turnedRow(same, every));
	}

	/** Whether another tool cuts the same thread deeper later: then it is gauged when that has finished it. */
	private static boolean isBegun(TurnedSheet sheet, List<TurnedSheet> all) {
		return all.stream().filter(later -> later.index() > sheet.index())
				.anyMatch(later -> !later.tool().name().equals(sheet.tool().name()) && later.name().equals(sheet.name())
						&& later.outside() == sheet.outside() && later.cut().overlaps(sheet.cut())
						&& (sheet.outside() ? later.diameter() < sheet.diameter() : later.diameter() > sheet.diameter()));
	}

	private static GaugeRow turnedRow(List<TurnedSheet> sheets, int every) {
		TurnedSheet first = sheets.get(0);
		// what the same block cuts again, as in a loop, is the next part's
		int number = (int) sheets.stream().map(sheet -> sheet.block().file().name() + " " + sheet.block().line()).distinct().count();
		return new GaugeRow(first.name(), first.tool().name(), number, Gauges.of(first), Gauges.AS_DRAWN + ", programmed to "
				+ SheetFigures.level(first.to(), new Figures(first.unit())), "first part, every " + (every > 0 ? every
						: GaugingInterval.of(first.tool().facts())) + "th, last part; after each new point or offset");
	}
}
