package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** The standards' tables of threads: which there are, and their limits of size. What is not in a table is empty, never guessed. */
public final class ThreadTable {
	/** Diameters and pitches closer than this are the same, mm (a choice of ours: below the last decimal of any table). */
	private static final double SAME = 1e-4;
	/** ISO 965-1 recommends 6H, and 5H for threads up to M1.4. */
	private static final double SMALL_METRIC = 1.4 + SAME;

	private final MetricTable metric = new MetricTable();
	private final Map<ThreadSystem, List<ThreadSpec>> bySystem = new ConcurrentHashMap<>();
	private final Lately<Optional<Limits>> limits =
			new Lately<>(spec -> limits(spec, spec.threadClass().orElseGet(() -> defaultClass(spec))));

	/** The tables that a metric program never asks for are read when they are. */
	private static final class Inch {
		static final UnifiedTable UNIFIED = new UnifiedTable();
	}

	private static final class Pipe {
		static final PipeTable PIPE = new PipeTable();
	}

	private static final class Other {
		static final OtherTable TABLE = new OtherTable();
	}

	private static final class Rounded {
		static final RoundedTable ROUNDED = new RoundedTable();
	}

	private static final class Loaded {
		static final ThreadTable TABLE = new ThreadTable();
	}

	private ThreadTable() {
	}

	/** The tables of the standards, read once. */
	public static ThreadTable standard() {
		return Loaded.TABLE;
	}

	/** The coarse pitch of a metric diameter, both in mm; empty for a diameter without one. */
	public OptionalDouble coarsePitch(double diameter) {
		return metric.coarsePitch(diameter);
	}

	/** The series that holds a Unified diameter (inches) and number of threads per inch; empty when none does. */
	public Optional<String> unifiedSeries(double inches, double tpi) {
		return Inch.UNIFIED.row(inches, tpi).map(UnifiedTable.Row::series);
	}

	/** The pipe thread of a size written like {@code 1-1/4}; empty for a size that the standard does not hold. */
	public Optional<ThreadSpec> pipeThread(ThreadSystem system, String size) {
		return Pipe.PIPE.find(system, size).map(PipeTable.PipeSize::spec);
	}

	/** Whether size and pitch are in a series of their standard. */
	public boolean isStandard(ThreadSpec spec) {
		return switch (spec.system()) {
			case METRIC, MJ -> metric.holds(spec.diameter(), spec.pitch());
			case UNIFIED, UNJ -> Inch.UNIFIED.row(spec.inches(), spec.tpi()).isPresent();
			case BSW, BSF -> Rounded.ROUNDED.whitworth().stream().anyMatch(w -> w.system() == spec.system() && sameSize(w, spec));
			case NPT, NPTF, NPSM, NPSC, G, RP, RC, R -> Pipe.PIPE.find(spec.system(), spec.size()).filter(s ->
					s.tpi() == spec.tpi()).isPresent();
			default -> Other.TABLE.holds(spec);
		};
	}

	/** Every thread of one system's series, right-hand, one start, no class said; MJ and UNJ are held by their parents' series. */
	public List<ThreadSpec> threads(ThreadSystem system) {
		return bySystem.computeIfAbsent(system, this::list);
	}

	private List<ThreadSpec> list(ThreadSystem system) {
		return switch (system) {
			case METRIC -> metric.rows().stream().map(r -> ThreadSpec.metric(r.diameter(), r.pitch())).toList();
			case MJ -> metric.rows().stream().map(r -> ThreadSpec.mj(r.diameter(), r.pitch())).toList();
			case UNIFIED -> Inch.UNIFIED.rows().stream().map(r -> ThreadSpec.inch(system, r.series(), r.diameter(), r.tpi())).toList();
			case UNJ -> Inch.UNIFIED.rows().stream().map(r -> ThreadSpec.inch(system, unj(r.series()), r.diameter(), r.tpi())).toList();
			case BSW, BSF -> Rounded.ROUNDED.whitworth().stream().filter(w -> w.system() == system).toList();
			case NPT, NPTF, NPSM, NPSC, G, RP, RC,
					R -> Pipe.PIPE.sizes().stream().filter(s -> s.system() == system).map(PipeTable.PipeSize::spec).toList();
			default -> Other.TABLE.threads(system);
		};
	}

	/** Every thread of every system. */
	public List<ThreadSpec> all() {
		List<ThreadSpec> all = new ArrayList<>();
		for (ThreadSystem system : ThreadSystem.values()) {
			all.addAll(threads(system));
		}
		return all;
	}

	/** The threads of a system that have a diameter (mm), in the order of the table. */
	public List<ThreadSpec> threadsOf(ThreadSystem system, double diameter) {
		return threads(system).stream().filter(t -> Math.abs(t.diameter() - diameter) < 0.002).toList();
	}

	/**
	 * Metric, Unified, G and NPT threads that a pitch and a drilled hole would make, nearest hole first; all in mm.
	 *
	 * @param pitch     the pitch, such as F / S
	 * @param tolerance how far a pitch may be from it
	 * @param hole      the drill's diameter; the hole of a thread is taken as D − P
	 */
	public List<ThreadSpec> threadsFor(double pitch, double tolerance, double hole) {
		List<ThreadSpec> found = new ArrayList<>();
		for (ThreadSystem system : List.of(ThreadSystem.METRIC, ThreadSystem.UNIFIED, ThreadSystem.G, ThreadSystem.NPT)) {
			threads(system).stream().filter(t -> Math.abs(t.pitch() - pitch) <= tolerance)
					.filter(t -> Math.abs(t.diameter() - t.pitch() - hole) <= 0.3 * t.pitch()).forEach(found::add);
		}
		found.sort(Comparator.comparingDouble(t -> Math.abs(t.diameter() - t.pitch() - hole)));
		return found;
	}

	/** The classes that the tables can give for a thread; one empty name for systems without classes, none when it is in no table. */
	public List<String> classes(ThreadSpec spec) {
		List<String> names = switch (spec.system()) {
			case METRIC -> MetricClass.NAMES;
			case MJ -> List.of("4H4H", "4H5H", "4H6H");
			case UNIFIED -> Inch.UNIFIED.classes(spec);
			case UNJ -> List.of("3B");
			default -> OtherLimits.classes(spec.system());
		};
		return names.stream().filter(name -> limits(spec, name).isPresent()).toList();
	}

	/** The limits of one class of internal thread; empty where the tables do not give them. */
	public Optional<Limits> limits(ThreadSpec spec, String threadClass) {
		return switch (spec.system()) {
			case METRIC, MJ -> MetricClass.of(threadClass).flatMap(c -> metric.limits(spec, c));
			case UNIFIED -> Inch.UNIFIED.limits(spec, threadClass);
			case UNJ -> Rounded.ROUNDED.unjLimits(spec, Inch.UNIFIED.limits(spec, threadClass));
			case BSW, BSF -> Rounded.ROUNDED.whitworthLimits(spec);
			case NPT, NPTF, NPSM, NPSC, G, RP, RC, R -> threadClass.isEmpty() ? Pipe.PIPE.limits(spec) : Optional.empty();
			default -> OtherLimits.of(spec, threadClass);
		};
	}

	/** The limits of the class called out, or else of the default class. */
	public Optional<Limits> limits(ThreadSpec spec) {
		return limits.of(spec);
	}

	/**
	 * The limits of an external thread of the class called out, a metric one in capitals too, or else of its default class: 6g, 2A; empty
	 * where neither table nor formula gives them.
	 */
	public Optional<BoltLimits> boltLimits(ThreadSpec spec) {
		boolean inch = spec.system() == ThreadSystem.UNIFIED || spec.system() == ThreadSystem.UNJ;
		return BoltTable.limits(spec, spec.threadClass().orElseGet(() -> BoltTable.defaultClass(spec)),
				inch ? Inch.UNIFIED.row(spec.inches(), spec.tpi()) : Optional.empty());
	}

	/** The limits of screws of the class called out, or else of all usual ones; none for a class of holes. */
	public List<BoltLimits> boltClasses(ThreadSpec spec) {
		List<String> names = spec.threadClass().map(List::of).orElseGet(() -> BoltTable.classes(spec.system()));
		return limits(spec).isPresent() && spec.threadClass().isPresent() ? List.of()
				: names.stream().flatMap(name -> boltLimits(spec.withClass(name)).stream()).toList();
	}

	/**
	 * The class that is meant when none is said: 6H (5H up to M1.4; where ISO 965-1 has no such grade at the pitch, the next finer one),
	 * 2B, 3B for UNJ, 4H5H for MJ above 5 mm, 7H for Tr, 2G for ACME; empty for the others.
	 */
	public String defaultClass(ThreadSpec spec) {
		return switch (spec.system()) {
			case METRIC -> MetricTolerances.grade(spec, spec.diameter() < SMALL_METRIC ? 5 : 6) + "H";
			case MJ -> "4H" + MetricTolerances.grade(spec, spec.diameter() > 5 + SAME ? 5 : 6) + "H";
			case UNIFIED -> "2B";
			case UNJ -> "3B";
			default -> OtherLimits.classes(spec.system()).get(0);
		};
	}

	/** Pitch diameter E0 at the small end of an NPT thread, mm. */
	public OptionalDouble smallEndPitchDiameter(ThreadSpec spec) {
		return pipeLength(spec, PipeTable.PipeSize::smallEnd);
	}

	/** Hand-tight length L1 of NPT, gauge length of ISO 7-1, mm; empty for threads that are not taper. */
	public OptionalDouble gaugeLength(ThreadSpec spec) {
		return pipeLength(spec, PipeTable.PipeSize::gaugeLength);
	}

	/** Effective length L2 of NPT, useful length of ISO 7-1, mm; empty for threads that are not taper. */
	public OptionalDouble usefulLength(ThreadSpec spec) {
		return pipeLength(spec, PipeTable.PipeSize::usefulLength);
	}

	private OptionalDouble pipeLength(ThreadSpec spec, Function<PipeTable.PipeSize, Optional<BigDecimal>> length) {
		Optional<BigDecimal> value = Pipe.PIPE.find(spec.system(), spec.size()).flatMap(length);
		return value.isPresent() ? OptionalDouble.of(value.get().doubleValue() * spec.unit().mm()) : OptionalDouble.empty();
	}

	private static boolean sameSize(ThreadSpec a, ThreadSpec b) {
		return Math.abs(a.diameter() - b.diameter()) < SAME && a.tpi() == b.tpi();
	}

	/** The series of UNJ threads: UNC becomes UNJC, UN becomes UNJ, and so on. */
	public static String unj(String series) {
		return "UNJ" + series.substring(2);
	}
}
