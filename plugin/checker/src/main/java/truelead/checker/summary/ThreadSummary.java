package truelead.checker.summary;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.rule.Figures;
import truelead.checker.thread.BoltLimits;
import truelead.checker.thread.Hand;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/**
 * A thread in a few lines: pitch, limits of the hole and of the pitch diameter with their source, and the drill for cutting it; of one with
 * a class of screws those of the major diameter.
 */
public final class ThreadSummary {

	private ThreadSummary() {
	}

	/** The lines, the designation first; those that the tables do not tell are left out. */
	public static List<String> of(ThreadSpec spec) {
		List<String> lines = new ArrayList<>();
		Figures figures = new Figures(spec.unit());
		lines.add(spec.designation() + (spec.hand() == Hand.LEFT ? ", left hand" : "") + ": pitch " + figures.advance(spec.pitch()) + " "
				+ figures.symbol() + (spec.starts() > 1 ? ", " + spec.starts() + " starts" : ""));
		Optional<BoltLimits> bolt = spec.threadClass().isEmpty() || ThreadTable.standard().limits(spec).isPresent() ? Optional.empty()
				: ThreadTable.standard().boltLimits(spec);
		ThreadTable.standard().limits(spec).ifPresent(limits -> add(lines, limits));
		bolt.ifPresent(limits -> add(lines, limits));
		TapDrill.cutting(spec).filter(drill -> bolt.isEmpty())
				.ifPresent(drill -> lines.add("drill for a cut thread " + drill.name() + " (" + drill.source() + ")"));
		return lines;
	}

	private static void add(List<String> lines, Limits limits) {
		range(limits.minorMin(), limits.minorMax()).ifPresent(range -> lines.add("minor diameter " + range + named(limits)));
		range(limits.pitchMin(), limits.pitchMax()).ifPresent(range -> lines.add("pitch diameter " + range + named(limits)));
	}

	private static void add(List<String> lines, BoltLimits limits) {
		String named = " for " + limits.threadClass() + " outside (" + limits.source() + ")";
		lines.add("major diameter " + limits.majorMin().toPlainString() + " to " + limits.majorMax().toPlainString() + named);
		lines.add("pitch diameter " + limits.pitchMin().toPlainString() + " to " + limits.pitchMax().toPlainString() + named);
	}

	private static String named(Limits limits) {
		return (limits.threadClass().isEmpty() ? "" : " for " + limits.threadClass()) + " (" + limits.source() + ")";
	}

	private static Optional<String> range(Optional<BigDecimal> least, Optional<BigDecimal> most) {
		return least.map(from -> from.toPlainString() + most.map(to -> " to " + to.toPlainString()).orElse(" or more"));
	}
}
