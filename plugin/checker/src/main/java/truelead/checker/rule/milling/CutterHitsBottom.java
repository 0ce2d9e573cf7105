package truelead.checker.rule.milling;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** The cutter's end goes below the level down to which the hole has its full diameter, so that it cuts into the cone or the bottom. */
public final class CutterHitsBottom implements Rule {

	@Override
	public String name() {
		return "cutter-hits-bottom";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.BEGINS_DEEP);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD, Slip.TURNED_ROUND, Slip.LEVEL_FAR_OFF, Slip.DISTANCE_MODE);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Map<Place, Deep> deepest = new LinkedHashMap<>();
		for (ThreadMilling operation : work.threadMillings()) {
			MillFacts.look(operation.passes(), (pass, wrong) -> pass.hole().fullBefore(pass.order()).filter(drilled -> !pass.external()
					&& !MillFacts.cutOff(work, pass)).ifPresent(drilled -> look(work, operation, pass, drilled, deep -> {
						wrong.accept(deep.finding());
						deepest.merge(pass.place(), deep, (one, other) -> other.below() > one.below() ? other : one);
					})), any -> { });
		}
		deepest.values().forEach(deep -> found.accept(deep.finding()));
	}

	/**
	 * A finding, and how far the cutter goes into the bottom, mm: of several passes in a hole, by several tools too, the deepest says it.
	 */
	private record Deep(double below, Finding finding) {
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, Cut deepest, Consumer<Deep> found) {
		Optional<Cut> bore = BoreFloor.of(operation, pass, deepest);
		Cut drilled = bore.orElse(deepest);
		int axis = pass.axis();
		int into = pass.direction();
		Step.Arc lowest = pass.helix().get(0);
		double level = pass.startLevel();
		for (Step.Arc arc : pass.helix()) {
			if (into * (arc.to().along(axis) - level) > 0) {
				level = arc.to().along(axis);
				lowest = arc;
			}
		}
		for (Step step : pass.entry()) {
			double to = step instanceof Step.Arc arc ? arc.to().along(axis) : step instanceof Step.Move move
					? move.to().along(axis) : level;
			double from = step instanceof Step.Arc arc ? arc.from().along(axis) : to;
			level = into * (to - level) > 0 ? to : level;
			// a lead-in that climbs begins where the cutter came down
			level = into * (from - level) > 0 ? from : level;
		}
		boolean pointed = Double.isNaN(drilled.shoulder());
		double bottom = pointed ? drilled.tip() : drilled.shoulder();
		double below = into * (level - bottom);
		if (!(below > 2 * HelixForm.of(pass).open() + 2 * HelixForm.open(drilled.step(), drilled.resolution()) + 1e-6)) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		double surface = operation.wanted().surface().value();
		if (bore.isEmpty() && operation.wanted().through().map(Fact::value).orElse(false)) {
			new ConeLeft(this, operation, drilled, pass).draft(level, lowest, figures)
					.ifPresent(draft -> found.accept(new Deep(below, draft.finding())));
			return;
		}
		if (bore.isEmpty() && OpenedHole.mayGoOn(operation, pass, below)) {
			return;
		}
		Draft draft = Draft.of(this, Severity.ERROR, MillFacts.word(lowest.block(), MillFacts.axisLetter(axis)), "the cutter's end goes "
				+ figures.length(into * (level - surface)) + " deep, " + (pointed ? "the drill's tip goes to "
						: "the hole has its full diameter down to ") + figures.length(into * (bottom - surface)) + ": "
				+ figures.length(below) + (bore.isPresent() ? " into the floor, where the hole is narrower; bore "
						: " into the bottom; drill ") + figures.length(below) + " deeper or " + (into < 0 ? "stay above "
								: "go no farther than ") + MillFacts.axisLetter(axis) + Figures.number(bottom / figures.unit().mm(), 3))
				.on(operation).programmed("depth of the cutter", figures.length(into * (level - surface)), lowest.block())
				.programmed(pointed ? "depth of the drill's tip" : "full diameter depth of the hole",
						figures.length(into * (bottom - surface)), drilled.block())
				.related(drilled.block(), bore.isPresent() ? "the bore" : "the drill block");
		if (bore.isPresent()) {
			draft.known("bore", figures.fine(drilled.diameter().orElseThrow().value()), drilled.diameter().get()).tells(Slip.BORE_SHALLOW);
		}
		found.accept(new Deep(below, draft.finding()));
	}
}
