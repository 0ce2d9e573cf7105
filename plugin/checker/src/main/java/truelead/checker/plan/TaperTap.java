package truelead.checker.plan;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/**
 * A taper thread by a taper tap: its size is set by how deep the tap goes. Lengths in mm.
 *
 * @param tip    from the surface to the tap's end, when the gauge plane comes flush
 * @param full   full thread that the joint needs
 * @param source where the tip's depth comes from
 */
record TaperTap(double tip, double full, String source) {
	/** An inch in mm (by definition). */
	private static final double INCH = 25.4;
	/** How far an NPT tap stands out of its ring gauge of length L1, inch (ASME B94.9, from memory; tolerance 1/16 to 3/32). */
	private static final Map<String, Double> PROJECTION = Map.ofEntries(Map.entry("1/16", 0.312), Map.entry("1/8", 0.312),
			Map.entry("1/4", 0.459), Map.entry("3/8", 0.454), Map.entry("1/2", 0.579), Map.entry("3/4", 0.565), Map.entry("1", 0.678),
			Map.entry("1-1/4", 0.686), Map.entry("1-1/2", 0.699), Map.entry("2", 0.667), Map.entry("2-1/2", 0.925), Map.entry("3", 0.925));
	/** Wrench make-up L3 of NPT, threads (ASME B1.20.1). */
	private static final double WRENCH = 3;
	/** The lead of a taper tap, threads (common practice, no source: 2 to 3.5). */
	private static final double LEAD = 3.5;

	/** The depths for a taper thread; empty for a parallel one and for sizes whose taps are not in the tables. */
	static Optional<TaperTap> of(ThreadSpec thread) {
		if (!thread.system().taper()) {
			return Optional.empty();
		}
		OptionalDouble gauge = ThreadTable.standard().gaugeLength(thread);
		OptionalDouble useful = ThreadTable.standard().usefulLength(thread);
		boolean american = thread.system() == ThreadSystem.NPT || thread.system() == ThreadSystem.NPTF;
		Double projection = PROJECTION.get(thread.size());
		if (gauge.isEmpty() || useful.isEmpty() || american && projection == null) {
			return Optional.empty();
		}
		if (american) {
			return Optional.of(new TaperTap(projection * INCH + gauge.getAsDouble(), gauge.getAsDouble() + WRENCH * thread.pitch(),
					"L1 of ASME B1.20.1 and the projection of the tap out of its ring gauge (ASME B94.9, from memory)"));
		}
		return Optional.of(new TaperTap(useful.getAsDouble() + LEAD * thread.pitch(), useful.getAsDouble(),
				"useful length of ISO 7-1 and a lead of 3.5 threads (estimate; the tap maker states where its gauge plane is)"));
	}
}
