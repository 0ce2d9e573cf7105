package truelead.checker.thread;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.program.LengthUnit;

/**
 * The drill for a cut thread, and how much thread a drilled hole leaves.
 *
 * @param name     as it is ordered: {@code 6.8}, {@code #7}, {@code F}, {@code 27/64}
 * @param diameter mm
 * @param unit     the unit it is made in
 * @param origin   how far the choice can be traced
 * @param source   table, in words
 */
public record TapDrill(String name, double diameter, LengthUnit unit, Origin origin, String source) {
	private static final Remembered<ThreadSpec, Optional<TapDrill>> CUTTING = new Remembered<>(1000, TapDrill::chosen);
	private static final Lately<Optional<TapDrill>> LATELY = new Lately<>(CUTTING::of);

	/** Drills of metric threads, read when first asked for. */
	private static final class Metric {

		static final Map<String, TapDrill> TABLE = new HashMap<>();

		static {
			for (DataRow r : DataFile.rows(TapDrill.class, "tap-drill-metric.csv")) {
				TABLE.put(ThreadSpec.metric(DataFile.number(r, "D"), DataFile.number(r, "P")).designation(),
						new TapDrill(r.get("drill"), DataFile.number(r, "drill"), LengthUnit.MM, Origin.of(r.get("source")),
								r.get("source")));
			}
		}
	}

	/** Drills of inch and pipe threads, read when first asked for. */
	private static final class Other {

		static final Map<String, TapDrill> TABLE = new HashMap<>();

		static {
			for (DataRow r : DataFile.rows(TapDrill.class, "tap-drill-inch.csv")) {
				TABLE.put(r.get("size") + "-" + r.get("tpi"), inch(r.get("drill"), r.get("source")));
			}
			for (DataRow r : DataFile.rows(TapDrill.class, "tap-drill-pipe.csv")) {
				TABLE.put(r.get("system") + " " + r.get("size"), r.get("system").startsWith("NPT") ? inch(r.get("drill"), r.get("source"))
						: new TapDrill(r.get("drill"), DataFile.number(r, "drill"), LengthUnit.MM, Origin.FROM_MEMORY, r.get("source")));
			}
		}
	}

	/**
	 * The drill for cutting a thread: from the tables (ISO 2306 and trade tables), else the drill that is made nearest to D − P
	 * within the limits of the minor diameter, a metric one where no inch drill lies there; empty where neither gives one.
	 */
	public static Optional<TapDrill> cutting(ThreadSpec spec) {
		return LATELY.of(spec);
	}

	private static Optional<TapDrill> chosen(ThreadSpec spec) {
		TapDrill ruling = (spec.system() == ThreadSystem.METRIC ? Metric.TABLE : Other.TABLE).get(key(spec));
		if (ruling != null) {
			return Optional.of(ruling);
		}
		return spec.system().pipe() ? Optional.empty() : computed(spec);
	}

	/**
	 * How much of the full thread a hole leaves, in percent of a thread depth of 0.6495 P, 1.299 P on the diameter (3/4 H, the
	 * convention of Unified drill tables; Machinery's Handbook): 1/4-20 and drill #7 75.4. Other forms count by their own depth.
	 *
	 * @param hole the hole's diameter, mm
	 */
	public static double percentOfThread(ThreadSpec spec, double hole) {
		return 100 * (spec.diameter() - hole) / (2 * spec.system().depthOverPitch() * spec.pitch());
	}

	/**
	 * The same in percent of the thread depth of ISO 724, 5/8 H: 1.0825 P on the diameter. M8x1.25 and 6.8 mm: 88.7, where the other
	 * convention has 73.9.
	 */
	public static double percentOfBasicDepth(ThreadSpec spec, double hole) {
		return 100 * (spec.diameter() - hole) / (1.25 * spec.system().triangleHeight() * spec.pitch());
	}

	private static Optional<TapDrill> computed(ThreadSpec spec) {
		ThreadTable table = ThreadTable.standard();
		Optional<Limits> limits = table.limits(spec.withoutClass());
		double wanted = spec.diameter() - spec.pitch();
		OptionalDouble least = limits.isPresent() ? limits.get().minorMinMm() : OptionalDouble.empty();
		if (least.isEmpty() && table.isStandard(spec) && spec.system() == ThreadSystem.METRIC) {
			least = OptionalDouble.of(MetricTable.basicMinor(spec).doubleValue());
		}
		if (least.isEmpty()) {
			return Optional.empty();
		}
		OptionalDouble largest = limits.isPresent() ? limits.get().minorMaxMm() : OptionalDouble.empty();
		double most = largest.orElse(least.getAsDouble() + 0.3 * spec.pitch());
		double target = Math.min(Math.max(wanted, least.getAsDouble()), most);
		String rule = spec.system().metric() ? "ISO 2306: D - P, as a drill that is made"
				: "drill nearest to D - P in the limits of the minor diameter";
		double from = least.getAsDouble();
		return DrillSizes.nearest(target, from, most, spec.unit()).or(() -> spec.unit() == LengthUnit.INCH
				? DrillSizes.nearest(target, from, most, LengthUnit.MM) : Optional.empty())
				.map(d -> new TapDrill(d.name(), d.diameter(), d.unit(), Origin.COMPUTED, rule));
	}

	private static TapDrill inch(String name, String source) {
		double diameter = DrillSizes.drills(LengthUnit.INCH).stream().filter(d -> d.name().equals(name)).findFirst()
				.orElseThrow().diameter();
		return new TapDrill(name, diameter, LengthUnit.INCH, Origin.of(source), source);
	}

	private static String key(ThreadSpec spec) {
		return switch (spec.system()) {
			case METRIC -> ThreadSpec.metric(spec.diameter(), spec.pitch()).designation();
			case UNIFIED -> spec.size() + "-" + Decimals.plain(spec.tpi(), 4);
			default -> spec.system() + " " + spec.size();
		};
	}
}
