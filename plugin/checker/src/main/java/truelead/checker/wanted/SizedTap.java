package truelead.checker.wanted;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.ToolFacts;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/**
 * The thread of a tap of which nothing but the diameter is said, as programs that a machine wrote list their tools
 * ({@code T2 D=8. right hand tap}): of the pitches in use at that diameter, the one that S and F advance in a turn, or the one that the
 * drill is made for. Where both speak and differ, the coarse one is meant.
 */
final class SizedTap {

	/** How far feeds are rounded, a part of the lead. */
	private static final double ROUNDED = 0.01;
	/**
	 * How far a drill may be from D - P to be made for that pitch alone, a part of the pitch; and how much farther it must be from the
	 * next.
	 */
	private static final double MADE_FOR = 0.12;
	private static final double APART = 2;
	/** A number that the hole is smaller than this part of is something else than the tap's diameter. */
	private static final double LEAST_HOLE = 0.6;

	private final AsCut cut;
	private final List<ThreadSpec> inUse;

	private SizedTap(double diameter, AsCut cut) {
		this.cut = cut;
		this.inUse = new ArrayList<>(ThreadTable.standard().threadsOf(ThreadSystem.METRIC, diameter));
		ThreadTable.standard().threadsOf(ThreadSystem.UNIFIED, diameter).stream()
				.filter(t -> List.of("UNC", "UNF", "UNEF").contains(t.series())).forEach(inUse::add);
	}

	/** The thread, by who says the diameter; empty where nobody does, or neither feed nor drill tells the pitch. */
	static Optional<Fact<ThreadSpec>> thread(ToolFacts tool, AsCut cut) {
		Optional<Fact<Double>> diameter = tool.diameter().filter(Fact::stated);
		boolean other = diameter.isPresent() && cut.drill().filter(drill -> drill < LEAST_HOLE * diameter.get().value()).isPresent();
		if (!tool.isTap() || diameter.isEmpty() || other || !(cut.lead() > 0)) {
			return Optional.empty();
		}
		SizedTap tap = new SizedTap(diameter.get().value(), cut);
		return tap.fed().filter(fed -> coarse(fed) || tap.drilled().filter(SizedTap::coarse).isEmpty()).or(tap::drilled)
				.map(spec -> diameter.get().map(d -> spec));
	}

	private Optional<ThreadSpec> fed() {
		return inUse.stream().filter(thread -> Math.abs(thread.lead() - cut.lead()) <= ROUNDED * thread.lead()).findFirst();
	}

	private Optional<ThreadSpec> drilled() {
		if (cut.drill().isEmpty()) {
			return Optional.empty();
		}
		List<ThreadSpec> near = inUse.stream().sorted(Comparator.comparingDouble(this::amiss)).limit(2).toList();
		return near.stream().limit(1).filter(first -> amiss(first) <= MADE_FOR
				&& (near.size() < 2 || amiss(near.get(1)) >= APART * Math.max(amiss(first), MADE_FOR / 2))).findFirst();
	}

	private double amiss(ThreadSpec thread) {
		return Math.abs(thread.diameter() - thread.pitch() - cut.drill().orElseThrow()) / thread.pitch();
	}

	private static boolean coarse(ThreadSpec thread) {
		return thread.system() == ThreadSystem.METRIC
				? ThreadTable.standard().coarsePitch(thread.diameter()).orElse(Double.NaN) == thread.pitch()
				: thread.series().equals("UNC");
	}
}
