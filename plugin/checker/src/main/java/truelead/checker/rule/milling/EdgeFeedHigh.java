package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.ToolFacts;
import truelead.checker.machine.Modal;
import truelead.checker.pass.MillPass;
import truelead.checker.program.FeedMode;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * F is that of the cutter's edge although the control leads the cutter's centre: right is F (D − dc) / D (geometry). Speaks only where feed
 * a tooth and teeth, or an edge feed, are stated.
 */
public final class EdgeFeedHigh implements Rule {

	/** F may be this much above the centre's feed before it is taken for another one. */
	private static final double ALLOWED = 1.15;

	@Override
	public String name() {
		return "edge-feed-high";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD, Slip.CUTTER_TOO_BIG);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			if (MillFacts.parallelThread(operation).isPresent() && MillFacts.cutter(operation).isPresent()) {
				MillPass pass = operation.finishing(operation.holes().get(0)).get(0);
				look(work, operation, pass, found);
			}
		}
	}

	/**
	 * What F a minute is right at the cutter's centre, mm, where feed a tooth and teeth, or an edge feed, are stated; empty where they are
	 * not, or the path is the wall.
	 */
	static OptionalDouble right(ThreadMilling operation, MillPass pass) {
		Modal modal = pass.modal();
		if (MillFacts.parallelThread(operation).isEmpty() || MillFacts.cutter(operation).isEmpty()
				|| modal.feedMode() != FeedMode.PER_MINUTE) {
			return OptionalDouble.empty();
		}
		double diameter = MillFacts.parallelThread(operation).orElseThrow().diameter();
		double cutter = MillFacts.cutter(operation).orElseThrow();
		Optional<Double> edge = edgeFeed(operation.tool().facts(), modal, modal.feed().value() * modal.unit().mm());
		double right = edge.map(feed -> feed * (diameter - cutter) / diameter).orElse(0.0);
		return right > 0 && !HelixForm.of(pass).onContour(diameter, cutter) ? OptionalDouble.of(right) : OptionalDouble.empty();
	}

	/** Whether F is more than is right, and it is that of the pass that is judged here. */
	static boolean tells(ThreadMilling operation, MillPass pass) {
		OptionalDouble right = right(operation, pass);
		return right.isPresent() && pass.modal().feed().value() * pass.modal().unit().mm() > right.getAsDouble() * ALLOWED
				&& pass.order() == operation.finishing(operation.holes().get(0)).get(0).order();
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, Consumer<Finding> found) {
		if (!tells(operation, pass)) {
			return;
		}
		Modal modal = pass.modal();
		ToolFacts tool = operation.tool().facts();
		double diameter = MillFacts.parallelThread(operation).orElseThrow().diameter();
		double cutter = MillFacts.cutter(operation).orElseThrow();
		double feed = modal.feed().value() * modal.unit().mm();
		double right = right(operation, pass).orElseThrow();
		Figures figures = new Figures(work.shop().unit().value());
		String shown = Figures.number(right / modal.unit().mm(), modal.unit().mm() > 1 ? 2 : 0);
		Draft draft = Draft.of(this, Severity.WARNING, modal.feed(), pass.block(),
				"F" + Figures.number(modal.feed().value(), 3) + " at the cutter's centre is " + Figures.number(feed / right, 1)
						+ " times what the edge can take: " + figures.length(feed * diameter / (diameter - cutter))
						+ " a minute at the edge, "
						+ figures.length(right * diameter / (diameter - cutter)) + " wanted; F" + shown).on(operation)
				.programmed("feed", Figures.number(modal.feed().value(), 3), modal.feed());
		tool.toothFeed().ifPresent(f -> draft.known("feed a tooth", figures.fine(f.value()), f));
		tool.teeth().ifPresent(f -> draft.known("teeth", f.value().toString(), f));
		modal.feed().word().flatMap(word -> Draft.change(word, right / modal.unit().mm(), modal.unit().mm() > 1 ? 2 : 0, false,
				"look whether the control takes F at the contour under compensation")).ifPresent(draft::fix);
		found.accept(draft.finding());
	}

	private static Optional<Double> edgeFeed(ToolFacts tool, Modal modal, double feed) {
		if (tool.edgeFeed().map(Fact::value).orElse(false)) {
			return Double.isNaN(feed) ? Optional.empty() : Optional.of(feed);
		}
		if (tool.toothFeed().isPresent() && tool.teeth().isPresent() && modal.speed().known()) {
			return Optional.of(modal.speed().value() * tool.teeth().get().value() * tool.toothFeed().get().value());
		}
		return Optional.empty();
	}
}
