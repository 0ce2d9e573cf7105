package truelead.checker.turn;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;
import truelead.checker.tool.ToolUse;

/**
 * The thread of a single point that nobody names, where all that is cut agrees on one of the tables: the lead is its pitch, the deepest or
 * the last pass ends where its does, and the outside is turned to its diameter, or the hole bored to its crests, before. It is no reason to
 * doubt any of these; passes, start and end are judged by it.
 */
final class ImpliedThread {

	/** What a lead may be rounded, as a part of it (common practice, no source). */
	private static final double ROUNDED = 0.003;
	/**
	 * Pitches on the diameter that the end of the deepest pass may lie beside that of the thread: the form of the root leaves outside 1.08
	 * to 1.3 P (ISO 68-1).
	 */
	private static final double BESIDE = 0.2;
	/** Depth of a thread outside on the diameter, in pitches (ISO 68-1). */
	private static final double DEPTH = 1.2269;
	/** Sixteenths of an inch that the sizes of Unified threads above 1/4 in are multiples of. */
	private static final double SIXTEENTHS = 16;

	private ImpliedThread() {
	}

	/** The one thread that suits; empty where none does. */
	static Optional<Fact<ThreadSpec>> of(Chase chase, LatheMotions.Found found, List<ToolUse> uses) {
		double lead = chase.passes.get(0).lead();
		double root = chase.inside(Optional.empty()) ? 0 : DEPTH * lead;
		double last = chase.passes.get(chase.passes.size() - 1).radius();
		return !(lead > 0) ? Optional.empty() : of(chase, 2 * chase.deepest() + root, lead, found, uses).or(() ->
				of(chase, 2 * last + root, lead, found, uses));
	}

	private static Optional<Fact<ThreadSpec>> of(Chase chase, double ends, double lead, LatheMotions.Found found, List<ToolUse> uses) {
		List<ThreadSpec> suiting = Stream.concat(metric(ends, lead).stream(), unified(ends, lead).stream())
				.filter(spec -> Math.abs(ends - spec.diameter()) <= BESIDE * lead && chase.prepared(spec, found, uses)).toList();
		return suiting.size() != 1 ? Optional.empty() : Optional.of(Fact.of(suiting.get(0), FactSource.IMPLIED,
				"lead, depth and what is turned before"));
	}

	private static Optional<ThreadSpec> metric(double diameter, double lead) {
		double pitch = Math.rint(lead * 20) / 20;
		return Math.abs(lead - pitch) <= ROUNDED * lead && Math.rint(diameter) > 1
				? Optional.of(ThreadSpec.metric(Math.rint(diameter), pitch)).filter(ThreadTable.standard()::isStandard) : Optional.empty();
	}

	private static Optional<ThreadSpec> unified(double diameter, double lead) {
		double turns = Math.rint(LengthUnit.INCH.mm() / lead);
		double inches = Math.rint(diameter / LengthUnit.INCH.mm() * SIXTEENTHS) / SIXTEENTHS;
		boolean turned = Math.abs(LengthUnit.INCH.mm() / turns - lead) <= ROUNDED * lead && inches > 0 && turns >= 4;
		return turned && ThreadTable.standard().unifiedSeries(inches, turns).filter(series -> !series.equals("UNS")).isPresent()
				? Optional.of(ThreadSpec.unified(inches, turns)).filter(spec -> spec.system() == ThreadSystem.UNIFIED) : Optional.empty();
	}
}
