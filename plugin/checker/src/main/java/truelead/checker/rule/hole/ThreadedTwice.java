package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * A hole is threaded again: by the same tap to the same depth, through a repeat count or a repeated position; or by another tap of the same
 * size and another lead or hand.
 */
public final class ThreadedTwice implements Rule {

	/** Lengths of threads that are the same, mm. */
	private static final double SAME = 1e-3;

	@Override
	public String name() {
		return "threaded-twice";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.PLACE_AGAIN);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.LEFT_ON, Slip.OTHER_AXIS, Slip.HEIGHTS_MISREAD, Slip.DISTANCE_MODE, Slip.STEPS_ADD_UP,
				Slip.POSITION_LEFT_OUT, Slip.BLOCK_LEFT_OUT);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		crossed(work, found);
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
				if (!said && before != null && !endless(work, stroke, before)
						&& stroke.direction() * (stroke.bottom() - before.bottom()) <= tolerance
						// a block that cannot be read may have been the way to another place
						&& Unread.from(tapping.block(), work) == 0 && !AnotherPart.between(work, stroke.hole(), before.order(),
								stroke.order())) {
					found.accept(draft(stroke, before).on(tapping).finding());
					said = true;
				}
			}
		}
	}

	/** Whether the same block is run again by a loop that cannot be followed to its end. */
	private static boolean endless(Work work, TapStroke stroke, TapStroke before) {
		return stroke.repeat() <= 1 && stroke.block().sameBlock(before.block()) && !work.course().toItsEnd();
	}

	/** Taps of the same size and another lead or hand go into the same hole one after the other, none of them deeper. */
	private void crossed(Work work, Consumer<Finding> found) {
		double tolerance = work.shop().profile().positionTolerance();
		Map<Place, Tapping> first = new HashMap<>();
		Map<Place, TapStroke> strokes = new HashMap<>();
		for (Tapping tapping : several(work.tappings()) ? work.tappings() : List.<Tapping>of()) {
			Optional<ThreadSpec> thread = tapping.wanted().statedThread().map(Fact::value).filter(t -> tapping.method().taps());
			for (TapStroke stroke : thread.isEmpty() ? List.<TapStroke>of() : tapping.strokes()) {
				Tapping before = stroke.place().known() ? first.putIfAbsent(stroke.place(), tapping) : null;
				if (before == null) {
					strokes.putIfAbsent(stroke.place(), stroke);
				} else if (before.tool().index() != tapping.tool().index() && another(before.wanted().statedThread().orElseThrow().value(),
						thread.get()) && stroke.direction() * (stroke.bottom() - strokes.get(stroke.place()).bottom()) <= tolerance
						&& !AnotherPart.between(work, stroke.hole(), strokes.get(stroke.place()).order(), stroke.order())) {
					found.accept(crossed(stroke, tapping, before).on(tapping).finding());
					break;
				}
			}
		}
	}

	/** Whether there are threads of one size that differ, wherever they are. */
	private static boolean several(List<Tapping> tappings) {
		List<ThreadSpec> threads = new ArrayList<>();
		for (Tapping tapping : tappings) {
			ThreadSpec thread = tapping.wanted().statedThread().map(Fact::value).orElse(null);
			if (thread != null && !threads.contains(thread)) {
				threads.add(thread);
			}
		}
		return threads.stream().anyMatch(one -> threads.stream().anyMatch(other -> another(one, other)));
	}

	private static boolean another(ThreadSpec one, ThreadSpec other) {
		return Math.abs(one.diameter() - other.diameter()) < SAME && (Math.abs(one.lead() - other.lead()) > SAME
				|| one.hand() != other.hand());
	}

	private Draft crossed(TapStroke stroke, Tapping tapping, Tapping before) {
		Figures figures = new Figures(stroke.modal().unit());
		Fact<ThreadSpec> own = tapping.wanted().statedThread().orElseThrow();
		Fact<ThreadSpec> cut = before.wanted().statedThread().orElseThrow();
		String message = tapping.tool().name() + " threads " + own.value().withoutClass().designation() + " at "
				+ HoleRule.at(stroke.place(), figures) + ", where " + before.tool().name() + " has cut "
				+ cut.value().withoutClass().designation() + ": the second thread destroys the first; see the position";
		return Draft.of(this, Severity.ERROR, Location.of(stroke.block()), message).tells(Slip.OTHER_THREAD_CUT)
				.programmed("place", HoleRule.at(stroke.place(), figures), stroke.block()).known("thread", own.value().designation(), own)
				.known("thread before", cut.value().designation(), cut).related(before.block(), "the first thread");
	}

	private Draft draft(TapStroke stroke, TapStroke before) {
		Figures figures = new Figures(stroke.modal().unit());
		Optional<Setting> count = stroke.step() instanceof Step.Stroke s && s.repeat() > 1
				? s.cycle().word('K').or(() -> s.cycle().word('L')).filter(c -> c.word().isPresent())
				: Optional.empty();
		boolean still = before.block().sameBlock(stroke.block()) && before.repeat() == stroke.repeat() - 1;
		String by = count.flatMap(Setting::word).map(w -> Figures.written(w) + " repeats").orElse("this block repeats");
		String message = by + " the thread at " + HoleRule.at(stroke.place(), figures) + ", cut before in line "
				+ (before.block().line() + 1) + ": the tap may start a second thread across the first; "
				+ (count.isEmpty() || still ? "once is enough" : count.get().word().get().address() + String.valueOf(stroke.repeat() - 1)
						+ " comes up to it");
		Draft draft = Draft.of(this, Severity.WARNING, count.flatMap(Setting::word).map(Location::of).orElse(Location.of(stroke.block())),
				message).programmed("place", HoleRule.at(stroke.place(), figures), stroke.block())
				.related(before.block(), "the first time");
		count.flatMap(Setting::word).flatMap(w -> Draft.change(w, still ? 1 : stroke.repeat() - 1, 0, false,
				still ? "see that the repeats were not meant for incremental positions" : "see that no other position is wrong"))
				.ifPresent(draft::fix);
		return draft;
	}
}
