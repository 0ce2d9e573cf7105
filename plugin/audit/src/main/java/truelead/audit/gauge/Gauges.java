package truelead.audit.gauge;

import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.job.Fact;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.thread.BoltLimits;
import truelead.checker.thread.BoltRoot;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/**
 * What a thread is measured and gauged by.
 *
 * @param measured what is measured beside the thread, and by what: the minor diameter by a pin, of a thread outside the major one by a
 *                 micrometer
 * @param go       the limit with most material: the smallest hole, the largest screw
 * @param noGo     the other limit
 * @param thread   which thread gauge
 * @param edge     smallest diameter of the countersink, or where the chamfer of a thread outside goes down to
 * @param source   where the limits come from
 */
public record Gauges(String measured, String go, String noGo, String thread, String edge, String source) {

	static final String AS_DRAWN = "as drawn";

	static Gauges of(ThreadSheet sheet) {
		return sheet.outside() ? outside(sheet) : inside(sheet);
	}

	private static Gauges inside(ThreadSheet sheet) {
		Optional<ThreadSpec> spec = sheet.thread().map(Fact::value);
		String edge = spec.filter(known -> !known.system().pipe())
				.map(known -> "over " + new Figures(sheet.unit()).length(known.diameter())).orElse(AS_DRAWN);
		return new Gauges("minor diameter, pin", pin(sheet.limits().map(Limits::minorMinMm), sheet),
				pin(sheet.limits().map(Limits::minorMaxMm), sheet), plug(sheet), edge,
				sheet.limits().map(Limits::source).orElseGet(() -> notHeld(sheet)));
	}

	private static String pin(Optional<OptionalDouble> mm, ThreadSheet sheet) {
		OptionalDouble value = mm.orElse(OptionalDouble.empty());
		LengthUnit unit = sheet.limits().map(Limits::unit).orElse(sheet.unit());
		return value.isPresent() ? new Figures(unit).fine(value.getAsDouble()) : AS_DRAWN;
	}

	private static String plug(ThreadSheet sheet) {
		return sheet.thread().map(Fact::value)
				.map(spec -> spec.designation() + (spec.threadClass().isEmpty() ? usual(sheet.limits().map(Limits::threadClass)) : "")
						+ (spec.system().taper() ? " taper plug gauge" : " go / no-go thread gauge")).orElse("thread gauge as drawn");
	}

	private static Gauges outside(ThreadSheet sheet) {
		Optional<ThreadSpec> spec = sheet.thread().map(Fact::value);
		Optional<BoltLimits> limits = sheet.boltLimits();
		Figures figures = new Figures(limits.map(BoltLimits::unit).orElse(sheet.unit()));
		// down to the root, so that no thin thread begins it (common practice, no source)
		String chamfer = spec.filter(BoltRoot::has).map(known -> "to " + new Figures(sheet.unit()).length(BoltRoot.usual(known))
				+ " or less").orElse(AS_DRAWN);
		Optional<String> taper = spec.filter(known -> known.system().taper()).flatMap(known -> ThreadTable.standard().limits(known))
				.map(Limits::source);
		return new Gauges("major diameter, micrometer", limits.map(known -> figures.fine(known.majorMaxMm())).orElse(AS_DRAWN),
				limits.map(known -> figures.fine(known.majorMinMm())).orElse(AS_DRAWN),
				spec.map(known -> ring(known, limits, figures)).orElse("ring gauge as drawn"), chamfer,
				limits.map(BoltLimits::source).or(() -> taper).orElseGet(() -> notHeld(sheet)));
	}

	/**
	 * The ring, and what a thread micrometer or wires measure where no ring is at hand; a taper one with how far behind the small end its
	 * plane lies.
	 */
	private static String ring(ThreadSpec spec, Optional<BoltLimits> limits, Figures figures) {
		if (spec.system().taper()) {
			OptionalDouble plane = ThreadTable.standard().gaugeLength(spec);
			return spec.designation() + " taper ring gauge"
					+ (plane.isPresent() ? ", gauge plane " + new Figures(spec.unit()).fine(plane.getAsDouble())
							+ " behind the small end" : "");
		}
		String named = spec.threadClass().isEmpty() ? spec.designation() + usual(limits.map(BoltLimits::threadClass))
				: limits.map(known -> spec.withClass(known.threadClass())).orElse(spec).designation();
		return named + " go / no-go ring gauge" + limits.map(known -> ", or pitch diameter " + figures.coordinate(known.pitchMinMm())
				+ " to " + figures.fine(known.pitchMaxMm())).orElse("");
	}

	private static String usual(Optional<String> threadClass) {
		return threadClass.filter(name -> !name.isEmpty()).map(name -> " (" + name + " where the drawing gives no class)").orElse("");
	}

	private static String notHeld(ThreadSheet sheet) {
		return sheet.thread().flatMap(fact -> fact.value().threadClass()).map(name -> "class " + name + (sheet.outside() ? " outside is "
				: " inside is ")).orElse("") + "not in the tables";
	}
}
