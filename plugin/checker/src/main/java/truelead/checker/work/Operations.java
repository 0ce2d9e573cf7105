package truelead.checker.work;

import java.util.ArrayList;
import java.util.HashMap;
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

	private record Group(ToolUse tool, Optional<Location> governing) {
	}

	private final Sorting sorting;
	private final WantedReader wanted;
	private final boolean turning;
	private final Map<Group, Integer> groups = new HashMap<>();

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
		int group = groups.computeIfAbsent(new Group(draft.tool, result.governing()), g -> groups.size());
		if (draft.method.isEmpty()) {
			return new ThreadMilling(index, group, draft.tool, passes, result.wanted(), draft.lastOrder(), List.of());
		}
		List<TapStroke> strays = draft.strays.stream().map(s -> s.at(sorting.hole(s.place(), 0))).toList();
		return new Tapping(index, group, draft.method.get(), draft.tool, draft.block, draft.cycle, strokes, strays, draft.leftOn, result.wanted(),
				draft.firstOrder(), draft.lastOrder(), notEvaluated(draft));
	}

	private Fact<Double> surface(List<TapStroke> strokes, List<MillPass> passes) {
		List<Double> starts = new ArrayList<>();
		List<Double> ends = new ArrayList<>();
		List<Hole> holes = new ArrayList<>();
		strokes.forEach(s -> {
			starts.add(s.start());
			ends.add(s.bottom());
			holes.add(s.hole());
		});
		passes.forEach(p -> {
			ends.add(Math.min(p.startLevel(), p.endLevel()));
			holes.add(p.hole());
		});
		// a pass of a boring bar starts below a chamfer or a step
		holes.stream().flatMap(h -> h.cuts().stream()).filter(c -> c.kind() != Cut.Kind.MILL && !(turning && c.kind() == Cut.Kind.BORE)).forEach(c -> {
			starts.add(c.start());
			ends.add(c.tip());
		});
		boolean across = turning && strokes.stream().anyMatch(s -> s.place().plane() == Plane.YZ);
		return across ? Surfaces.outside(starts) : Surfaces.assumed(starts, ends);
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
