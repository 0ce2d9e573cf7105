package truelead.audit.gauge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import truelead.checker.job.Fact;
import truelead.checker.job.GaugingInterval;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.thread.Limits;

/**
 * What to check of one thread, as it is written on a gauge sheet.
 *
 * @param thread      designation, or that nothing names it
 * @param tool        the tool that makes it
 * @param holes       number of holes
 * @param goPin       go side of the pin for the minor diameter: its smallest limit
 * @param noGoPin     no-go side: its largest limit
 * @param threadGauge which thread gauge
 * @param depth       depth of thread to check
 * @param countersink smallest diameter of the countersink
 * @param interval    which holes to check
 * @param source      where the limits come from
 */
public record GaugeRow(String thread, String tool, int holes, String goPin, String noGoPin, String threadGauge, String depth, String countersink,
		String interval, String source) {

	/** The rows of a program, operations of one thread by one tool in one row; {@code every} holes a check, 0 for the usual number. */
	public static List<GaugeRow> of(List<OperationSheet> sheets, int every) {
		Map<String, List<OperationSheet>> threads = new LinkedHashMap<>();
		for (OperationSheet sheet : sheets) {
			threads.computeIfAbsent(sheet.name() + "\n" + sheet.tool().index() + "\n" + sheet.called(), any -> new ArrayList<>()).add(sheet);
		}
		return threads.values().stream().map(same -> row(same, every)).toList();
	}

	private static GaugeRow row(List<OperationSheet> sheets, int every) {
		OperationSheet first = sheets.get(0);
		Figures figures = new Figures(first.unit());
		int holes = (int) sheets.stream().flatMap(sheet -> sheet.holes().stream()).map(HoleSheet::label).distinct().count();
		double depth = Double.isNaN(first.called()) ? Double.NaN : first.called();
		double major = first.thread().map(fact -> fact.value().diameter()).orElse(Double.NaN);
		boolean pipe = first.thread().filter(fact -> fact.value().system().pipe()).isPresent();
		return new GaugeRow(first.name(), first.tool().name(), holes, pin(first.limits().map(Limits::minorMinMm), first),
				pin(first.limits().map(Limits::minorMaxMm), first), gauge(first), Double.isNaN(depth) ? "as drawn" : "full thread to " + figures.length(depth),
				Double.isNaN(major) || pipe ? "as drawn" : "over " + figures.length(major), interval(first, holes, every),
				first.limits().map(limits -> limits.source()).orElse("not in the tables"));
	}

	private static String pin(java.util.Optional<OptionalDouble> mm, OperationSheet sheet) {
		OptionalDouble value = mm.orElse(OptionalDouble.empty());
		LengthUnit unit = sheet.limits().map(Limits::unit).orElse(sheet.unit());
		return value.isPresent() ? new Figures(unit).fine(value.getAsDouble()) : "as drawn";
	}

	private static String gauge(OperationSheet sheet) {
		return sheet.thread().map(Fact::value).map(spec -> spec.designation() + (spec.threadClass().isEmpty() ? usual(sheet) : "")
				+ (spec.system().taper() ? " taper plug gauge" : " go / no-go thread gauge")).orElse("thread gauge as drawn");
	}

	private static String usual(OperationSheet sheet) {
		String usual = sheet.limits().map(Limits::threadClass).orElse("");
		return usual.isEmpty() ? "" : " (" + usual + " where the drawing gives no class)";
	}

	private static String interval(OperationSheet sheet, int holes, int every) {
		int step = every > 0 ? every : GaugingInterval.of(sheet.tool().facts());
		return holes <= 1 ? "the hole" : holes <= step ? "first and last hole" : "first hole, every " + step + "th, last hole";
	}
}
