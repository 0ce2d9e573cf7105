package truelead.checker.rule.milling;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.CycleDepth;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.Work;

/**
 * How deep the first pass of a lathe's thread goes: a point takes some of the depth at first and less from pass to pass (common practice,
 * no source).
 */
final class TurnedDepth {

	/** Part of the whole depth, and mm, that a first pass takes at most. */
	private static final double PART = 0.6;
	private static final double MOST = 0.45;
	/** As many times the thread's depth a cycle's height is another number. */
	private static final double FAR = 2;
	/** Passes a millimetre of pitch, for what the first one should take (common practice, no source). */
	private static final double PASSES = 4;

	/**
	 * Part of the depth that is left to spring passes: a thread that only they cut is there already, or its first passes are lost (common
	 * practice, no source).
	 */
	private static final double SPRING = 0.1;

	/** Part of the whole depth that a pass goes beyond the next one by a slip (common practice, no source). */
	private static final double OUT_OF_ORDER = 0.1;
	/** No burr is taken off so deep in the thread, as a part of its depth (common practice, no source). */
	private static final double BURR = 0.2;
	/** So many passes behind the deepest may be meant to finish a thread. */
	private static final int FEW = 2;

	private TurnedDepth() {
	}

	/**
	 * The finding of a thread that goes too deep at first, or whose cycle has a height that is not its thread's; empty where neither is.
	 */
	static Optional<Draft> of(Rule rule, Work work, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> named = turned.agreed();
		Optional<WallLimits> limits = named.flatMap(t -> WallLimits.of(t.value(), turned.inside(), turned.pass()));
		double end = turned.deepest().radius();
		if (limits.isEmpty() || !(2 * end >= limits.get().least() && 2 * end <= limits.get().most()) || begun(work, turned)) {
			return Optional.empty();
		}
		ThreadSpec thread = named.get().value();
		double height = thread.system().profileOverPitch() * thread.pitch();
		double crest = turned.inside() ? thread.diameter() / 2 - height : thread.diameter() / 2;
		double whole = thread.system().taper() ? height : Math.abs(end - crest);
		Optional<CycleDepth> cycle = CycleDepth.of(turned.pass());
		if (cycle.isEmpty() && (thread.system().movement() || thread.system().taper())) {
			// wide forms are cut side by side, and how deep a taper begins is not known
			return thread.system().movement() ? Optional.empty()
					: fallsBack(turned, thread, whole).map(out -> fallsBack(rule, turned, named.get(), out));
		}
		double first = cycle.isPresent() ? cycle.get().firstOf(whole) : turned.passes().size() < 2 && threadingCycle(turned) ? Double.NaN
				: whole - Math.abs(end - turned.passes().get(0).radius());
		if (cycle.filter(depth -> depth.sized() && depth.height() > FAR * whole).isPresent()) {
			return Optional.of(air(rule, turned, named.get(), cycle.get(), whole));
		}
		return first > PART * whole && first > MOST ? Optional.of(heavy(rule, turned, named.get(), cycle, first, whole))
				: tooFar(turned, thread, whole).map(out -> tooFar(rule, turned, named.get(), out, whole)).or(() ->
						fallsBack(turned, thread, whole).map(out -> fallsBack(rule, turned, named.get(), out)));
	}

	/** A pass out of the order of its groove's. */
	private record Odd(List<SinglePoint.Pass> row, int at) {

		SinglePoint.Pass pass() {
			return row.get(at);
		}
	}

	/**
	 * The first pass between two that are less deep, the one behind it deeper than the one before, or the first one where all behind it are
	 * less deep: it is out of their order, and those behind it cut air.
	 */
	private static Optional<Odd> tooFar(SinglePoint turned, ThreadSpec thread, double whole) {
		double out = turned.inside() ? 1 : -1;
		for (List<SinglePoint.Pass> row : turned.ofEach(turned.asCut(thread))) {
			for (int i = 0; i + 1 < row.size(); i++) {
				double before = i > 0 ? out * row.get(i - 1).radius() : Double.NEGATIVE_INFINITY;
				double here = out * row.get(i).radius();
				double next = out * row.get(i + 1).radius();
				boolean first = i > 0 || row.size() > FEW && row.stream().skip(1).allMatch(pass -> here - out * pass.radius() > 0);
				if (first && before < next && here - next > OUT_OF_ORDER * whole) {
					return Optional.of(new Odd(row, i));
				}
			}
		}
		return Optional.empty();
	}

	/** The first of the last passes of a groove that are all less deep than those before, by more than a tool wears: they cut air. */
	private static Optional<Odd> fallsBack(SinglePoint turned, ThreadSpec thread, double whole) {
		double out = turned.inside() ? 1 : -1;
		for (List<SinglePoint.Pass> row : turned.grooves(turned.asCut(thread)) < 1 ? List.<List<SinglePoint.Pass>>of()
				: turned.ofEach(turned.asCut(thread))) {
			double deepest = out * turned.deepest(row).radius();
			int at = row.size();
			while (at > 0 && deepest - out * row.get(at - 1).radius() > OUT_OF_ORDER * whole) {
				at--;
			}
			double most = row.subList(at, row.size()).stream().mapToDouble(pass -> out * pass.radius()).max().orElse(0);
			double least = row.subList(0, at).stream().mapToDouble(pass -> out * pass.radius()).min().orElse(0);
			// what begins again from the crests is the thread of the next part, or a burr that is taken off
			boolean meant = most > least || most - (deepest - whole) > BURR * whole;
			if (at < row.size() && row.size() - at <= FEW && meant) {
				return Optional.of(new Odd(row, at));
			}
		}
		return Optional.empty();
	}

	private static Draft fallsBack(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, Odd odd) {
		Figures figures = new Figures(turned.pass().modal().unit());
		SinglePoint.Pass pass = odd.pass();
		SinglePoint.Pass deepest = turned.deepest(odd.row());
		String message = "the last pass, to diameter " + figures.fine(2 * pass.radius()) + ", cuts air: one before it went to "
				+ figures.fine(2 * deepest.radius()) + "; a diameter beyond that, or none";
		BlockRef at = pass.step().code() == 0 ? pass.step().block() : pass.infeed().orElse(pass.step().block());
		return draft(rule, Severity.WARNING, MillFacts.word(at, "X"), message, turned, thread)
				.related(deepest.step().block(), "the deepest pass");
	}

	private static Draft tooFar(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, Odd odd, double whole) {
		Figures figures = new Figures(turned.pass().modal().unit());
		SinglePoint.Pass pass = odd.pass();
		SinglePoint.Pass next = odd.row().get(odd.at() + 1);
		if (odd.at() == 0) {
			return draft(rule, Severity.WARNING, MillFacts.word(pass.deepBy(), "X"), "the first pass, to diameter "
					+ figures.fine(2 * pass.radius()) + ", takes all of the thread at once, and those behind it, the next to "
					+ figures.fine(2 * next.radius()) + ", cut air; a diameter before " + figures.fine(2 * next.radius()), turned, thread)
					.related(next.step().block(), "the next pass");
		}
		SinglePoint.Pass before = odd.row().get(odd.at() - 1);
		String message = "the pass to diameter " + figures.fine(2 * pass.radius()) + " takes "
				+ figures.fine(Math.abs(pass.radius() - before.radius())) + " of the thread's " + figures.fine(whole)
				+ " at once, and the next, to " + figures.fine(2 * next.radius()) + ", cuts air; a diameter between "
				+ figures.fine(2 * before.radius()) + " and " + figures.fine(2 * next.radius());
		BlockRef at = pass.deepBy();
		return draft(rule, Severity.WARNING, MillFacts.word(at, "X"), message, turned, thread)
				.related(next.step().block(), "the next pass");
	}

	/**
	 * Whether the thread has been cut before, by another tool or at another lead: then this one finishes it. A thread of another diameter
	 * is another part's.
	 */
	private static boolean begun(Work work, SinglePoint turned) {
		return work.course().singlePoints().stream().takeWhile(other -> other != turned).anyMatch(other -> other.inside() == turned.inside()
				&& other.overlaps(turned) && !anotherSize(other, turned) && !AnotherPart.between(work, turned, other));
	}

	private static boolean anotherSize(SinglePoint one, SinglePoint other) {
		return one.thread().filter(named -> other.thread().filter(there -> named.value().diameter() != there.value().diameter())
				.isPresent()).isPresent();
	}

	/** Whether one motion stands for all passes of a cycle whose depths are not understood. */
	private static boolean threadingCycle(SinglePoint turned) {
		BlockRef block = turned.pass().block();
		return turned.pass().code() == 0 && (!MillFacts.word(block, "PQKIJDC").equals(Location.of(block))
				|| MillFacts.word(block, "X").equals(Location.of(block)));
	}

	private static Draft heavy(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, Optional<CycleDepth> cycle, double first,
			double whole) {
		Figures figures = new Figures(turned.pass().modal().unit());
		SinglePoint.Pass pass = turned.passes().get(0);
		boolean low = cycle.filter(depth -> depth.sized() && depth.height() < whole / FAR).isPresent();
		double right = whole / Math.sqrt(Math.max(PASSES, Math.rint(PASSES * thread.value().pitch())));
		BlockRef at = pass.deepBy();
		String letter = cycle.map(depth -> low ? String.valueOf(depth.letter()) : depth.letter() == 'P' ? "Q" : depth.sized() ? "D"
				: "J").orElse("X");
		String message = (low ? letter + " makes the thread " + figures.fine(cycle.get().height()) + " deep, it is " + figures.fine(whole)
				+ ": the first pass takes " + figures.fine(first) + " at once" : "the first pass takes " + figures.fine(first)
				+ " of the thread's " + figures.fine(whole) + " at once") + ", and the point breaks; "
				+ (low ? letter + " for " + figures.fine(whole) : "some " + figures.length(right) + " at first, less from pass to pass");
		boolean there = cycle.isEmpty() && turned.passes().size() > 1 && first > (1 - SPRING) * whole && turned.shaft().isEmpty()
				&& turned.bore().isEmpty();
		return draft(rule, there ? Severity.INFORMATION : Severity.WARNING, MillFacts.word(at, letter),
				message + (there ? "; right where the thread is there already and is picked up" : ""), turned, thread)
				.from("depth of the thread", figures.fine(whole), "the form of the thread's standard");
	}

	private static Draft air(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, CycleDepth cycle, double whole) {
		Figures figures = new Figures(turned.pass().modal().unit());
		String message = cycle.letter() + " makes the thread " + figures.fine(cycle.height()) + " deep, it is " + figures.fine(whole)
				+ ": the cycle begins " + figures.length(cycle.height() - whole) + " before the wall; " + cycle.letter() + " for "
				+ figures.fine(whole);
		return draft(rule, Severity.WARNING, MillFacts.word(turned.pass().block(), String.valueOf(cycle.letter())), message,
				turned, thread);
	}

	private static Draft draft(Rule rule, Severity severity, Location at, String message, SinglePoint turned, Fact<ThreadSpec> thread) {
		return Draft.of(rule, severity, at, message).known("the callout", thread.value().designation(), thread)
				.programmed("diameter of the deepest pass", new Figures(turned.pass().modal().unit()).fine(2 * turned.deepest().radius()),
						turned.deepest().step().block());
	}
}
