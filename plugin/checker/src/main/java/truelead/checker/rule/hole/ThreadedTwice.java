package truelead.checker.rule.hole;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import truelead.checker.machine.Location;
import truelead.checker.machine.Setting;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.Place;
import truelead.checker.work.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** One tap goes into the same hole to the same depth again, by a repeat count or a repeated position. */
public final class ThreadedTwice extends HoleRule {

	public ThreadedTwice() {
		super("threaded-twice");
	}

	@Override
	void check(ThreadingOperation operation, List<Visit> visits, Work work, Consumer<Draft> found) {
		if (!(operation instanceof Tapping tapping) || !tapping.method().taps()) {
			return;
		}
		double tolerance = work.shop().profile().positionTolerance();
		Map<Place, TapStroke> earlier = new HashMap<>();
		Map<Integer, Tapping> others = new TreeMap<>();
		for (TapStroke stroke : tapping.strokes()) {
			for (ThreadingOperation at : work.threading(stroke.hole())) {
				if (at instanceof Tapping other && other.index() < tapping.index() && other.tool().index() == tapping.tool().index() && stroke.place().known()) {
					others.put(other.index(), other);
				}
			}
		}
		others.values().forEach(other -> other.strokes().forEach(s -> earlier.put(s.place(), s)));
		for (TapStroke stroke : tapping.strokes()) {
			TapStroke before = earlier.put(stroke.place(), stroke);
			if (before != null && stroke.place().known() && stroke.direction() * (stroke.bottom() - before.bottom()) <= tolerance) {
				found.accept(draft(stroke, before));
				return;
			}
		}
	}

	private Draft draft(TapStroke stroke, TapStroke before) {
		Figures figures = new Figures(stroke.modal().unit());
		Optional<Setting> count = stroke.step() instanceof Step.Stroke s && s.repeat() > 1
				? s.cycle().word('K').or(() -> s.cycle().word('L')).filter(c -> c.word().isPresent())
				: Optional.empty();
		String by = count.flatMap(Setting::word).map(w -> Figures.written(w) + " repeats").orElse("this block repeats");
		String message = by + " the thread at " + at(stroke.place(), figures) + ", cut before in line " + (before.block().line() + 1)
				+ ": the tap may start a second thread across the first; once is enough";
		Draft draft = Draft.of(this, Severity.WARNING, count.flatMap(Setting::word).map(Location::of).orElse(Location.of(stroke.block())), message)
				.programmed("place", at(stroke.place(), figures), stroke.block()).related(before.block(), "the first time");
		count.flatMap(Setting::word).flatMap(w -> Draft.change(w, 1, 0, false, "see that the repeats were not meant for incremental positions"))
				.ifPresent(draft::fix);
		return draft;
	}
}
