package truelead.checker.rule.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.Written;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** Start and end of an arc lie at different distances from its centre, by more than the control takes and the written decimals explain. */
public final class ArcNotClosed implements Rule {

	/** As many other blocks as a person looks through. */
	private static final int MOST_PLACES = 200;

	@Override
	public String name() {
		return "arc-not-closed";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.NO_CENTRE);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_PLANE, Slip.UNIT_WORD);
	}

	@Override
	public boolean isOfAStay() {
		return true;
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Map<Object, List<Step.Arc>> open = new LinkedHashMap<>();
		for (Step.Arc arc : work.trouble().openArcs()) {
			if (difference(arc) > tolerance(work, arc) + 3 * Written.open(arc.resolution()) && !SidewaysArc.is(arc, work)) {
				Optional<ThreadMilling> milling = work.threadMillings().stream().filter(one -> !one.around(arc).isEmpty()).findFirst();
				open.computeIfAbsent(milling.<Object>map(ThreadMilling::index).orElse(arc), one -> new ArrayList<>()).add(arc);
			}
		}
		Set<Step.Arc> said = new HashSet<>();
		open.values().forEach(said::addAll);
		for (ThreadMilling milling : work.threadMillings()) {
			// what begins and ends on the circle of the helix before it has a wrong R, and no wrong end
			milling.passes().where(pass -> !pass.tapered() && OddRadius.behind(pass).filter(odd -> said.contains(odd.arc())).isPresent())
					.stream().findFirst().flatMap(OddRadius::behind).ifPresent(odd -> {
						open.remove(milling.index());
						found.accept(odd.draft(this, milling).finding());
					});
		}
		for (ThreadMilling milling : open.isEmpty() ? List.<ThreadMilling>of() : work.threadMillings()) {
			// an end beside the circle leaves the arc behind it open as well
			List<Step.Arc> arcs = open.getOrDefault(milling.index(), List.of());
			if (arcs.size() == 1 && stray(milling).filter(stray -> stray.arc().to().equals(arcs.get(0).from())
					&& stray.off() > 0).isPresent()) {
				open.remove(milling.index());
			}
		}
		open.forEach((at, arcs) -> found.accept(at instanceof Integer index ? draft(work, arcs).on(work.threadMillings().stream()
				.filter(one -> one.index() == index).findFirst().orElseThrow()).finding() : draft(work, arcs).finding()));
		for (ThreadMilling milling : work.threadMillings()) {
			TurnedCentre.of(milling).filter(turned -> !open.containsKey(milling.index()))
					.ifPresent(turned -> found.accept(turned.draft(this, milling).finding()));
			double taper = taper(milling);
			milling.passes().where(pass -> byRadius(pass) && StrayEnd.of(pass, taper).isPresent())
					.forEach(pass -> StrayEnd.of(pass, taper).ifPresent(stray -> found.accept(stray.draft(this, milling).finding())));
			milling.passes().where(pass -> StrayChord.of(pass).isPresent())
					.forEach(pass -> StrayChord.of(pass).ifPresent(stray -> found.accept(stray.draft(this, milling).finding())));
			milling.passes().where(pass -> !pass.tapered() && odd(pass, said).isPresent())
					.forEach(pass -> odd(pass, said).ifPresent(odd -> found.accept(odd.draft(this, milling).finding())));
		}
	}

	/** The first end of a helix by R that lies beside its circle. */
	private static Optional<StrayEnd> stray(ThreadMilling milling) {
		double taper = taper(milling);
		return milling.passes().where(pass -> byRadius(pass) && StrayEnd.of(pass, taper).isPresent()).stream().findFirst()
				.flatMap(pass -> StrayEnd.of(pass, taper));
	}

	private static boolean byRadius(MillPass pass) {
		return pass.helix().size() > 2 && pass.helix().stream().allMatch(Step.Arc::byRadius);
	}

	private static double taper(ThreadMilling milling) {
		return milling.wanted().statedThread().map(thread -> thread.value().taperOnDiameter() / 2).orElse(0.0);
	}

	/** An arc with a wrong R beside a helix, where nothing is said of it or of the arcs before it. */
	private static Optional<OddRadius> odd(MillPass pass, Set<Step.Arc> said) {
		return OddRadius.of(pass).filter(odd -> !said.contains(odd.arc()) && pass.helix().stream().noneMatch(said::contains));
	}

	private static double difference(Step.Arc arc) {
		return Math.abs(arc.startRadius() - arc.endRadius());
	}

	private static double tolerance(Work work, Step.Arc arc) {
		return work.shop().profile().arcTolerance(arc.modal().unit());
	}

	/** The first of the arcs of a thread that do not close: one slip leaves those behind it open too. */
	private Draft draft(Work work, List<Step.Arc> arcs) {
		Step.Arc arc = arcs.get(0);
		double tolerance = tolerance(work, arc);
		Optional<ArcReading> meant = ArcReading.closing(arcs, tolerance);
		long more = arcs.stream().map(one -> one.block().line()).distinct().count() - 1;
		Figures figures = new Figures(arc.modal().unit());
		String message = "the arc starts " + figures.fine(arc.startRadius()) + " from its centre and ends " + figures.fine(arc.endRadius())
				+ " from it: " + figures.fine(difference(arc)) + " apart, the control takes " + figures.fine(tolerance)
				+ " and stops or cuts a spiral" + (more > 0 ? ", and so do " + more + " more" : "")
				+ meant.map(reading -> ": " + reading.fact() + "; " + reading.remedy()).orElse("; see the end point and I, J, K");
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(arc.block()), message)
				.programmed("radius at the start", figures.fine(arc.startRadius()), arc.block())
				.programmed("radius at the end", figures.fine(arc.endRadius()), arc.block())
				.from("tolerance of arcs", figures.fine(tolerance), "machine profile " + work.shop().profile().name());
		arcs.stream().skip(1).limit(MOST_PLACES).forEach(one -> draft.related(one.block(), "does not close either"));
		return draft;
	}
}
