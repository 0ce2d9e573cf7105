package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The helix does not cut the whole thread. A single-form cutter cuts only where it goes, so it must travel from the depth called out to the
 * surface; a comb cutter covers the depth by its length and must close one full turn at depth (geometry).
 */
public final class HelixTooShort implements Rule {

	/** Turns that count as a comb cutter's one turn where nobody says what cutter it is: one, and a little overlap. */
	private static final double ONE_TURN = 1.6;
	private static final double CLOSED = 0.99;
	/** Turns that no comb cutter makes, where nobody says that it has one row of teeth. */
	private static final double SEVERAL = 2.5;

	@Override
	public String name() {
		return "helix-too-short";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_PLANE, Slip.UNIT_WORD, Slip.NO_CENTRE, Slip.CENTRE_WITH_RADIUS, Slip.TURNED_ROUND,
				Slip.SHORT_WAY_ROUND, Slip.HELIX_LEAD, Slip.BEGINS_DEEP, Slip.HOLE_MISSED, Slip.DISTANCE_MODE);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			if (operation.wanted().statedThread().isPresent()) {
				operation.finishingWhere(passes -> wrong(work, operation, passes)).forEach(passes -> look(work, operation, passes, found));
			}
		}
	}

	private boolean wrong(Work work, ThreadMilling operation, List<MillPass> passes) {
		List<Finding> wrong = new ArrayList<>(1);
		look(work, operation, passes, wrong::add);
		return !wrong.isEmpty();
	}

	private void look(Work work, ThreadMilling operation, List<MillPass> passes, Consumer<Finding> found) {
		double turns = passes.stream().mapToDouble(pass -> HelixForm.of(pass).turns()).max().orElse(1);
		Optional<Boolean> comb = operation.tool().facts().comb().map(Fact::value);
		MillPass pass = passes.get(0);
		if (work.turnedOver(pass) || MillFacts.cutOff(work, pass)) {
			return;
		}
		double pitch = operation.wanted().statedThread().orElseThrow().value().pitch();
		Figures figures = new Figures(work.shop().unit().value());
		if (LeadsAlone.are(work, pass)) {
			found.accept(draft(operation, pass,
					"the cutter leads in from the middle of the hole and out to it again without a turn round it: no thread is cut; the "
					+ "helix between them is left out", figures).tells(Slip.NO_CENTRE).finding());
			return;
		}
		double above = -passes.stream().mapToDouble(p -> HelixForm.of(p).deepest(operation.wanted().surface().value())).max().orElse(0);
		if (above > pitch && MillFacts.reachesSurface(work, operation, pass)) {
			found.accept(draft(operation, pass, "the whole helix lies " + figures.length(above)
					+ " and more above the surface: it cuts nothing; see the sign of its level", figures).tells(Slip.ABOVE_WORK).finding());
			return;
		}
		if (turns < CLOSED && passes.size() == 1 && !Double.isNaN(pass.radius())) {
			found.accept(draft(operation, pass, "the helix goes round only " + Figures.number(turns, 2)
					+ " of a turn: the thread is not cut all round; one full turn at depth, " + figures.advance(operation.wanted()
							.statedThread().orElseThrow().value().lead()) + " of advance", figures).finding());
			return;
		}
		if (above > pitch) {
			// nothing goes below that level here: where the surface is nobody knows
			return;
		}
		Optional<Fact<Double>> depth = operation.wanted().depth().or(() -> operation.wanted().through().filter(Fact::value)
				.flatMap(through -> operation.wanted().wall()));
		if (comb.orElse(turns < ONE_TURN)) {
			new CombCover(this, operation, passes, figures).missing(work, depth).ifPresent(draft -> found.accept(draft.finding()));
			return;
		}
		double counts = comb.isPresent() ? CLOSED : SEVERAL;
		if (depth.isEmpty()) {
			gauge(operation, passes, figures).or(() -> top(work, operation, passes, turns > counts, figures)).ifPresent(found);
			return;
		}
		double surface = operation.wanted().surface().value();
		double deepest = passes.stream().mapToDouble(p -> HelixForm.of(p).deepest(surface)).max().orElse(Double.NaN);
		double travel = deepest - passes.stream().mapToDouble(p -> HelixForm.of(p).highest(surface)).min().orElse(Double.NaN);
		double wanted = depth.get().value();
		double open = 2 * HelixForm.of(pass).open() + 1e-6;
		if (travel + pitch < wanted - open) {
			// wherever the surface lies, this helix is shorter than the thread
			found.accept(draft(operation, pass, "the helix travels " + figures.length(travel) + ", the thread is " + figures.length(wanted)
					+ " deep: " + figures.length(wanted - travel) + " too short; from " + figures.length(wanted)
					+ " below the surface to the surface", figures).known("depth", figures.length(wanted), depth.get()).finding());
		} else if (Math.max(deepest, passes.stream().mapToDouble(p -> led(p, surface)).max().orElse(0)) < wanted - open) {
			found.accept(draft(operation, pass, "the helix reaches " + figures.length(deepest) + " deep, the thread is called out "
					+ figures.length(wanted) + ": " + figures.length(wanted - deepest) + " too short; "
					+ MillFacts.axisLetter(pass.axis()) + Figures.number((surface + pass.direction() * wanted) / figures.unit().mm(), 4),
					figures)
					.known("depth called out", figures.length(wanted), depth.get()).finding());
		} else {
			top(work, operation, passes, turns > counts, figures).ifPresent(found);
		}
	}

	/**
	 * A taper thread of which nobody says how long it is, and that is shorter than it goes together by hand: L1 of ASME B1.20.1, the gauge
	 * length of ISO 7-1.
	 */
	private Optional<Finding> gauge(ThreadMilling operation, List<MillPass> passes, Figures figures) {
		Fact<ThreadSpec> thread = operation.wanted().statedThread().orElseThrow();
		double travel = passes.stream().mapToDouble(pass -> Math.abs(pass.endLevel() - pass.startLevel())).max().orElse(Double.NaN);
		OptionalDouble gauge = ThreadTable.standard().gaugeLength(thread.value());
		if (gauge.isEmpty() || !(travel + thread.value().pitch() < gauge.getAsDouble())) {
			return Optional.empty();
		}
		return Optional.of(draft(operation, passes.get(0), Severity.WARNING, "the helix travels " + figures.length(travel) + ", "
				+ thread.value().designation() + " goes together by hand for " + figures.length(gauge.getAsDouble())
				+ ": the joint is not tight; at least " + figures.length(gauge.getAsDouble()), figures)
				.known("the callout", thread.value().designation(), thread).from("gauge length", figures.length(gauge.getAsDouble()),
						thread.value().system() == ThreadSystem.NPT ? "ASME B1.20.1" : "ISO 7-1").finding());
	}

	/**
	 * How deep a lead-in arc begins, mm below a level, as far as it climbs with the helix, which is half a turn at most; 0 where there is
	 * none.
	 */
	private static double led(MillPass pass, double surface) {
		Optional<Step> last = Approach.last(pass);
		double from = last.filter(Step.Arc.class::isInstance).map(step -> pass.below(((Step.Arc) step).from().along(pass.axis()), surface))
				.orElse(0.0);
		return Math.min(from, HelixForm.of(pass).deepest(surface) + Math.abs(pass.lead()) / 2);
	}

	/**
	 * The threads next to the surface are not cut, where the surface is stated, or the hole was drilled from close above it.
	 *
	 * @param single whether it is plain that the cutter cuts only where it goes
	 */
	private Optional<Finding> top(Work work, ThreadMilling operation, List<MillPass> passes, boolean single, Figures figures) {
		MillPass pass = passes.get(0);
		double pitch = operation.wanted().statedThread().orElseThrow().value().pitch();
		double surface = operation.wanted().surface().value();
		double highest = passes.stream().mapToDouble(p -> HelixForm.of(p).highest(surface)).min().orElse(Double.NaN);
		boolean stated = operation.wanted().surface().stated();
		boolean sure = stated || pass.axis() == 2 && single && HoleTop.known(work, operation, pass, surface);
		double missing = highest - (stated ? pitch : 2 * pitch);
		if (!sure || !(missing > 2 * HelixForm.of(pass).open() + 1e-6)) {
			return Optional.empty();
		}
		return Optional.of(draft(operation, pass, stated ? Severity.ERROR : Severity.WARNING, "the helix ends " + figures.length(highest)
				+ " below the surface: the first " + Figures.number(highest / pitch, 1) + " threads are not cut; go on to the surface",
				figures).known("surface", figures.length(surface), operation.wanted().surface()).finding());
	}

	private Draft draft(ThreadMilling operation, MillPass pass, String message, Figures figures) {
		return draft(operation, pass, Severity.ERROR, message, figures);
	}

	private Draft draft(ThreadMilling operation, MillPass pass, Severity severity, String message, Figures figures) {
		return Draft.of(this, severity, MillFacts.word(pass.block(), MillFacts.axisLetter(pass.axis())), message).on(operation)
				.programmed("range of the helix", figures.length(Math.abs(pass.endLevel() - pass.startLevel())), pass.block());
	}
}
