package truelead.checker.thread;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import truelead.checker.program.LengthUnit;

/** The series of threads of other forms: trapezoids, saw teeth, knuckles, BA, conduit, miniature, gas cylinders. */
final class OtherTable {
	/** Pitches closer than this are the same, mm (a choice of ours: below the last decimal of any table). */
	private static final double SAME = 1e-4;

	private final Map<ThreadSystem, List<ThreadSpec>> threads = new EnumMap<>(ThreadSystem.class);

	OtherTable() {
		for (DataRow r : DataFile.rows(OtherTable.class, "other-threads.csv")) {
			ThreadSystem system = ThreadSystem.valueOf(r.get("system"));
			double diameter = DataFile.number(r, "D") * system.unit().mm();
			double tpi = r.get("tpi").isEmpty() ? 0 : DataFile.number(r, "tpi");
			threads.computeIfAbsent(system, s -> new ArrayList<>()).add(ThreadSpec.other(system, r.get("size"), diameter,
					tpi > 0 ? LengthUnit.INCH.mm() / tpi : DataFile.number(r, "P"), tpi));
		}
	}

	List<ThreadSpec> threads(ThreadSystem system) {
		return List.copyOf(threads.getOrDefault(system, List.of()));
	}

	boolean holds(ThreadSpec spec) {
		return threads(spec.system()).stream().anyMatch(t -> t.size().equals(spec.size()) && Math.abs(t.pitch() - spec.pitch()) < SAME);
	}
}
