package truelead.checker.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Location;
import truelead.checker.machine.Plane;
import truelead.checker.machine.Setting;
import truelead.checker.machine.Step;

/** Makes the operations of the work out of the drafts: with their holes, what is wanted, groups, and what could not be evaluated. */
final class Operations {

	/** @param stay number of the tool's stay in the spindle */
	private record Group(int stay, Optional<Location> governing) {
	}

	private final Sorting sorting;
	private final WantedReader wanted;
	private final boolean turning;
	private final Map<Group, Integer> groups = new HashMap<>();
	/** The levels of each hole's cuts, worked out once: thousands of operations may come back to one hole. */
	private final Map<Hole, Surfaces> levels = new IdentityHashMap<>();

	Operations(Sorting sorting, WantedReader wanted, boolean turning) {
		this.sorting = sorting;
		this.wanted = wanted;
		this.turning = turning;
	}

	List<ThreadingOperation> all() {
		List<ThreadingOperation> operations = new ArrayList<>();
		Map<ToolLog, Draft> before = new HashMap<>();
		for (Draft draft : sorting.drafts()) {
			operations.add(operation(operations.size(), draft, Optional.ofNullable(before.put(draft.log, draft))));
		}
		return operations;
	}

	private ThreadingOperation operation(int index, Draft draft, Optional<Draft> before) {
		List<TapStroke> strokes = draft.strokes.stream().map(s -> s.at(sorting.hole(s.place(), 0))).toList();
		List<MillPass> passes = draft.passes.stream().map(p -> p.at(sorting.hole(p.place(), p.resolution()))).toList();
		Optional<Hole> first = strokes.stream().map(TapStroke::hole).findFirst().or(() -> passes.stream().map(MillPass::hole).findFirst());
		Optional<Double> drill = first.flatMap(h -> h.making().stream().filter(c -> c.order() < draft.firstOrder()).map(Cut::diameter)
				.flatMap(Optional::stream).map(Fact::value).max(Double::compare));
		WantedReader.Result result = wanted.read(draft, before, new AsCut(Implied.lead(draft), drill), surface(strokes, passes));
		int group = groups.computeIfAbsent(new Group(draft.tool.index(), result.governing()), g -> groups.size());
		if (draft.method.isEmpty()) {
			return new ThreadMilling(index, group, draft.tool, passes, result.wanted(), draft.lastOrder(), List.of());
		}
		List<TapStroke> strays = draft.strays.stream().map(s -> s.at(sorting.hole(s.place(), 0))).toList();
		return new Tapping(index, group, draft.method.get(), draft.tool, draft.block, draft.cycle, strokes, strays, draft.leftOn, result.wanted(),
				draft.firstOrder(), draft.lastOrder(), notEvaluated(draft));
	}

	private Fact<Double> surface(List<TapStroke> strokes, List<MillPass> passes) {
		Surfaces surfaces = new Surfaces();
		Hole before = null;
		for (TapStroke stroke : strokes) {
			surfaces.start(stroke.start());
			surfaces.thread(stroke.bottom());
			if (stroke.hole() != before) {
				before = stroke.hole();
				surfaces.add(levels.computeIfAbsent(before, hole -> Surfaces.of(hole, turning)));
			}
		}
		for (MillPass pass : passes) {
			surfaces.end(Math.min(pass.startLevel(), pass.endLevel()));
			if (pass.hole() != before) {
				before = pass.hole();
				surfaces.add(levels.computeIfAbsent(before, hole -> Surfaces.of(hole, turning)));
			}
		}
		boolean across = turning && strokes.stream().anyMatch(s -> s.place().plane() == Plane.YZ);
		return across ? surfaces.outside() : surfaces.assumed();
	}

	private static List<NotEvaluated> notEvaluated(Draft draft) {
		List<NotEvaluated> list = new ArrayList<>();
		for (Draft.Stroke stroke : draft.strokes) {
			note(list, stroke.step(), stroke.feed(), "the feed");
			note(list, stroke.step(), stroke.lead(), "the lead");
			note(list, stroke.step(), stroke.speed(), "the speed");
			if (Double.isNaN(stroke.bottom())) {
				list.add(new NotEvaluated(stroke.step().block(), Optional.empty(), "the depth of the thread is not known"));
			}
			if (!stroke.place().known()) {
				list.add(new NotEvaluated(stroke.step().block(), Optional.empty(), "the place of the thread is not known"));
			}
			if (list.size() > 20) {
				break;
			}
		}
		return list;
	}

	private static void note(List<NotEvaluated> list, Step step, Setting setting, String what) {
		if (setting.isSet() && !setting.known()) {
			list.add(new NotEvaluated(step.block(), setting.word(), what + " is not known: " + setting.why()));
		}
	}
}
