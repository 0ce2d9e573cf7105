package truelead.checker.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.pass.PassStretches;
import truelead.checker.program.Location;
import truelead.checker.program.Plane;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.stroke.Stroke;
import truelead.checker.stroke.Strokes;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.ToolLog;
import truelead.checker.wanted.AsCut;
import truelead.checker.wanted.WantedReader;

/** Makes the operations of the work out of the drafts: with their holes, what is wanted, groups, and what could not be evaluated. */
final class Operations {

	/**
	 * How much wider than a cutter the wall of its thread at least is: cutters are up to 0.84 of the diameter (common practice, no source).
	 */
	private static final double WALL = 1.15;
	/** Part of the hole's depth that a seat goes down at most (common practice, no source). */
	private static final double SEAT = 0.5;

	/** @param stay number of the tool's stay in the spindle */
	private record Group(int stay, Optional<Location> governing) {
	}

	private final Sorting sorting;
	private final WantedReader wanted;
	private final boolean turning;
	private final Map<Group, Integer> groups;
	/** The levels of each hole's cuts, worked out once: thousands of operations may come back to one hole. */
	private final Map<Place, Surfaces> levels = new HashMap<>();

	Operations(Sorting sorting, WantedReader wanted, boolean turning) {
		this(sorting, wanted, turning, new HashMap<>());
	}

	private Operations(Sorting sorting, WantedReader wanted, boolean turning, Map<Group, Integer> groups) {
		this.groups = groups;
		this.sorting = sorting;
		this.wanted = wanted;
		this.turning = turning;
	}

	/** The same groups, for operations whose holes have changed. */
	Operations again() {
		return new Operations(sorting, wanted, turning, new HashMap<>(groups));
	}

	List<ThreadingOperation> all() {
		List<ThreadingOperation> operations = new ArrayList<>();
		Map<ToolLog, Draft> before = new HashMap<>();
		for (Draft draft : sorting.drafts()) {
			operations.add(operation(operations.size(), groups.size(), draft, Optional.ofNullable(before.put(draft.log, draft))));
		}
		return operations;
	}

	/**
	 * The operations that take the place of some of an earlier text, with their numbers and groups; empty where they are others, by other
	 * tools, or grouped otherwise.
	 */
	Optional<List<ThreadingOperation>> insteadOf(List<ThreadingOperation> known) {
		List<Draft> drafts = sorting.drafts();
		boolean same = drafts.size() == known.size();
		List<ThreadingOperation> operations = new ArrayList<>();
		Map<ToolLog, Draft> before = new HashMap<>();
		Set<Integer> grouped = new HashSet<>();
		for (int i = 0; same && i < drafts.size(); i++) {
			ThreadingOperation old = known.get(i);
			Draft draft = drafts.get(i);
			same = old.tool().index() == draft.tool.index() && draft.method.equals(old instanceof Tapping tapping
					? Optional.of(tapping.method()) : Optional.empty());
			if (same) {
				operations.add(operation(old.index(), old.group(), draft, Optional.ofNullable(before.put(draft.log, draft))));
				same = operations.get(i).group() == old.group();
				grouped.add(old.group());
			}
		}
		return same && grouped.size() == groups.size() ? Optional.of(operations) : Optional.empty();
	}

	private ThreadingOperation operation(int index, int freshGroup, Draft draft, Optional<Draft> before) {
		return operation(index, freshGroup, draft, before, sorting.strokes(draft.strokes), sorting.passes(draft.passes));
	}

	/** The operation of a draft whose strokes and passes have their holes. */
	ThreadingOperation operation(int index, int freshGroup, Draft draft, Optional<Draft> before, Strokes strokes, PassStretches stretches) {
		MillPasses passes = stretches.all();
		Optional<Hole> first = !strokes.isEmpty() ? Optional.of(strokes.typical().get(0).hole()) : passes.isEmpty() ? Optional.empty()
				: Optional.of(passes.typical().get(0).hole());
		Fact<Double> surface = surface(strokes, passes);
		Optional<Double> drill = first.flatMap(hole -> widest(hole.makingBefore(draft.firstOrder()), surface.value()));
		Optional<Cut> deepest = first.flatMap(h -> h.deepestBefore(draft.firstOrder()));
		double full = deepest.map(c -> c.direction() * (c.shoulder() - surface.value())).orElse(Double.NaN);
		double tip = deepest.map(c -> c.direction() * (c.tip() - surface.value())).orElse(Double.NaN);
		double tapped = strokes.isEmpty() ? Double.NaN : strokes.typical().get(0).direction() * (strokes.typical().get(0).bottom()
				- surface.value());
		WantedReader.Result result = wanted.read(draft.whereabouts(), before.map(Draft::lastBlock),
				new AsCut(draft.advance(), drill, deepest.map(Cut::tool), milled(passes),
						widest(passes).map(pass -> 2 * pass.radius()), full, tip, tapped), surface);
		int group = groups.computeIfAbsent(new Group(draft.tool.index(), result.governing()), g -> freshGroup);
		if (draft.method.isEmpty()) {
			return new ThreadMilling(index, group, draft.tool, stretches, result.wanted(), draft.lastOrder(), List.of());
		}
		Strokes strays = sorting.strokes(draft.strays);
		return new Tapping(index, group, draft.method.get(), draft.tool, draft.block, draft.cycle, strokes, strays, draft.leftOn,
				result.wanted(), draft.firstOrder(), draft.lastOrder(), notEvaluated(draft));
	}

	/**
	 * The largest of the known diameters of cuts that go down half as far as the deepest, mm: less is a seat or an edge that a mill breaks.
	 */
	private static Optional<Double> widest(List<Cut> cuts, double surface) {
		Optional<Double> widest = Optional.empty();
		double deepest = cuts.stream().mapToDouble(cut -> Math.abs(cut.tip() - surface)).max().orElse(0);
		for (Cut cut : cuts) {
			if (cut.diameter().isPresent() && !(Math.abs(cut.tip() - surface) < SEAT * deepest)
					&& (widest.isEmpty() || Double.compare(cut.diameter().get().value(), widest.get()) > 0)) {
				widest = Optional.of(cut.diameter().get().value());
			}
		}
		return widest;
	}

	/**
	 * The diameter that the edge reaches in the widest pass, mm: the path's own where the control puts the cutter beside it; empty where
	 * the cutter's is not known.
	 */
	private static Optional<Double> milled(MillPasses passes) {
		Optional<MillPass> widest = widest(passes);
		if (widest.isEmpty()) {
			return Optional.empty();
		}
		double path = 2 * widest.get().radius();
		Optional<Double> edge = widest.get().tool().facts().diameter().map(cutter -> path + cutter.value());
		// a path hardly wider than the cutter is that of its centre, and compensation takes its wear up alone
		boolean centre = edge.filter(reach -> path < WALL * (reach - path)).isPresent();
		return widest.get().compensation() != Compensation.OFF && !centre ? Optional.of(path) : edge;
	}

	private static Optional<MillPass> widest(MillPasses passes) {
		MillPass widest = null;
		for (MillPass pass : passes.typical()) {
			widest = widest == null || pass.radius() > widest.radius() ? pass : widest;
		}
		return Optional.ofNullable(widest);
	}

	private Fact<Double> surface(Strokes strokes, MillPasses passes) {
		Surfaces surfaces = new Surfaces();
		for (TapStroke stroke : strokes.typical()) {
			surfaces.start(stroke.start());
			surfaces.thread(stroke.bottom());
			surfaces.add(levels(stroke.hole()));
		}
		Place before = null;
		for (MillPass pass : passes.typical()) {
			surfaces.end(Math.min(pass.startLevel(), pass.endLevel()));
			if (!pass.place().equals(before)) {
				before = pass.place();
				surfaces.add(levels(pass.hole()));
			}
		}
		boolean across = turning && strokes.typical().stream().anyMatch(s -> s.place().plane() == Plane.YZ);
		return across ? surfaces.outside() : surfaces.assumed();
	}

	private Surfaces levels(Hole hole) {
		return levels.computeIfAbsent(hole.place(), place -> Surfaces.of(hole, turning));
	}

	private static List<NotEvaluated> notEvaluated(Draft draft) {
		List<NotEvaluated> list = new ArrayList<>();
		for (Stroke stroke : draft.strokes) {
			int before = -1;
			for (int i = 0; i < stroke.count() && list.size() <= 20 && list.size() != before; i++) {
				before = list.size();
				note(list, stroke, i);
			}
			if (list.size() > 20) {
				break;
			}
		}
		return list;
	}

	private static void note(List<NotEvaluated> list, Stroke stroke, int index) {
		Step step = stroke.step(index);
		note(list, step, stroke.feed(), "the feed");
		note(list, step, stroke.lead(), "the lead");
		note(list, step, stroke.speed(), "the speed");
		if (Double.isNaN(stroke.bottom())) {
			list.add(new NotEvaluated(step.block(), Optional.empty(), Reason.of("the depth of the thread is not known"),
					step.modal().ofCaller()));
		}
		if (!stroke.place().known()) {
			list.add(new NotEvaluated(step.block(), Optional.empty(), Reason.of("the place of the thread is not known"),
					step.modal().ofCaller()));
		}
	}

	private static void note(List<NotEvaluated> list, Step step, Setting setting, String what) {
		if (setting.isSet() && !setting.known()) {
			list.add(new NotEvaluated(step.block(), setting.word(), setting.why().behind(what + " is not known"), step.modal().ofCaller()));
		}
	}
}
