package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A hole that was made and threaded is drilled again to the full diameter: the crests of the thread are cut away, or the thread itself. */
public final class DrilledAfterThreading extends HoleRule {

	public DrilledAfterThreading() {
		super("drilled-after-threading");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.LEFT_ON);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		List<Visit> spoiled = visits.where(v -> again(v, work).isPresent());
		if (spoiled.isEmpty()) {
			return;
		}
		Visit first = spoiled.get(0);
		Cut cut = again(first, work).orElseThrow();
		Figures figures = new Figures(first.modal().unit());
		String with = cut.diameter().map(d -> " with diameter " + figures.length(d.value())).orElse("");
		String message = "the hole at " + at(first.hole().place(), figures) + " is drilled again" + with + " after "
				+ operation.tool().name() + " threaded it in line " + (first.block().line() + 1) + more(spoiled)
				+ ": the thread is cut away; drill before threading";
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(cut.block()), message)
				.programmed("place", at(first.hole().place(), figures), cut.block())
				.related(first.block(), "the block that threads the hole");
		cut.diameter().ifPresent(d -> draft.known("diameter of the later tool", figures.length(d.value()), d));
		found.accept(draft);
	}

	/**
	 * A later cut as wide as the hole and deeper than half of it; a counterbore at the top, or a smaller hole through the bottom, is none.
	 */
	private static Optional<Cut> again(Visit visit, Work work) {
		Optional<Cut> before = visit.hole().deepestBefore(visit.order());
		if (before.isEmpty()) {
			return Optional.empty();
		}
		double half = (before.get().start() + before.get().tip()) / 2;
		double size = visit.hole().sizedBefore(visit.order()).flatMap(Cut::diameter).map(Fact::value).orElse(Double.NaN);
		return visit.hole().making().stream().filter(c -> c.order() > visit.order() && c.direction() * (c.tip() - half) > 0)
				.filter(c -> c.tool().number() > 0 && visit.hole().makingBefore(visit.order()).stream().anyMatch(b ->
						b.tool().number() == c.tool().number())
						|| c.diameter().map(Fact::value).filter(d -> d > size - 0.05).isPresent())
				.filter(c -> !nextPart(c, visit, work)).findFirst();
	}

	/**
	 * On a lathe the block that made the hole comes again for the next part of the bar, or a second spindle turns the other end towards the
	 * tools, where they go the other way; and at a stop the part may be turned over.
	 */
	private static boolean nextPart(Cut cut, Visit visit, Work work) {
		boolean again = visit.hole().makingBefore(visit.order()).stream().anyMatch(before -> before.block().sameBlock(cut.block())
				|| before.direction() != cut.direction());
		return work.shop().profile().isLathe() && again || AnotherPart.between(work, visit.hole(), visit.order(), cut.order());
	}
}
