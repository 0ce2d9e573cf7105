package truelead.checker.rule.hole;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.machine.Location;
import truelead.checker.machine.Setting;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.work.Place;
import truelead.checker.work.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** One tap goes into the same hole to the same depth again, by a repeat count or a repeated position. */
public final class ThreadedTwice implements Rule {

	@Override
	public String name() {
		return "threaded-twice";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Map<Integer, Map<Place, TapStroke>> threaded = new HashMap<>();
		double tolerance = work.shop().profile().positionTolerance();
		Map<Integer, Integer> operations = new HashMap<>();
		for (Tapping tapping : work.tappings()) {
			operations.merge(tapping.tool().index(), 1, Integer::sum);
		}
		for (Tapping tapping : work.tappings()) {
			boolean alone = operations.get(tapping.tool().index()) == 1;
			if (alone && tapping.holes().size() == tapping.strokes().size()) {
				continue;
			}
			Map<Place, TapStroke> earlier = threaded.computeIfAbsent(tapping.tool().index(), stay -> new HashMap<>());
			boolean said = !tapping.method().taps();
			for (TapStroke stroke : tapping.strokes()) {
				TapStroke before = stroke.place().known() ? earlier.put(stroke.place(), stroke) : null;
				if (!said && before != null && stroke.direction() * (stroke.bottom() - before.bottom()) <= tolerance) {
					found.accept(draft(stroke, before).on(tapping).finding());
					said = true;
				}
			}
		}
	}

	private Draft draft(TapStroke stroke, TapStroke before) {
		Figures figures = new Figures(stroke.modal().unit());
		Optional<Setting> count = stroke.step() instanceof Step.Stroke s && s.repeat() > 1
				? s.cycle().word('K').or(() -> s.cycle().word('L')).filter(c -> c.word().isPresent())
				: Optional.empty();
		String by = count.flatMap(Setting::word).map(w -> Figures.written(w) + " repeats").orElse("this block repeats");
		String message = by + " the thread at " + HoleRule.at(stroke.place(), figures) + ", cut before in line " + (before.block().line() + 1)
				+ ": the tap may start a second thread across the first; once is enough";
		Draft draft = Draft.of(this, Severity.WARNING, count.flatMap(Setting::word).map(Location::of).orElse(Location.of(stroke.block())), message)
				.programmed("place", HoleRule.at(stroke.place(), figures), stroke.block()).related(before.block(), "the first time");
		count.flatMap(Setting::word).flatMap(w -> Draft.change(w, 1, 0, false, "see that the repeats were not meant for incremental positions"))
				.ifPresent(draft::fix);
		return draft;
	}
}
