package truelead.checker.pass;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.hole.Resorting;
import truelead.checker.machine.Step;
import truelead.checker.program.InOrder;

/**
 * All passes of a thread milling operation in stretches, none of which is at a hole of another, so that an edit has those near it gathered
 * anew alone.
 */
public final class PassStretches {

	private final List<PassStretch> stretches;
	private final Holes holes;
	private final PassShapes shapes;
	private final MillPasses all;
	/** How many passes and how many holes come before each stretch. */
	private final int[] before;
	private final int[] starts;
	private final int holeCount;
	private Map<List<Integer>, List<Alike>> byFinishing;

	/** A hole of a stretch, from 0. */
	private record At(PassStretch stretch, int hole) {
	}

	/** Holes of a stretch at which the finishing passes are of the same kinds. */
	private record Alike(PassStretch stretch, List<Integer> holes) {
	}

	PassStretches(List<PassStretch> stretches, Holes holes, PassShapes shapes) {
		this.stretches = stretches;
		this.holes = holes;
		this.shapes = shapes;
		this.all = new MillPasses(stretches.stream().map(PassStretch::all).toList());
		this.starts = new int[stretches.size()];
		this.before = new int[stretches.size()];
		int passes = 0;
		int count = 0;
		for (int at = 0; at < starts.length; at++) {
			before[at] = passes;
			passes += stretches.get(at).table().size();
			starts[at] = count;
			count += stretches.get(at).places().count();
		}
		this.holeCount = count;
	}

	/** @param within how far a hole may be from a place written to a resolution, mm */
	public static PassStretches of(List<PassRow> rows, Holes holes, DoubleUnaryOperator within) {
		int count = 0;
		for (PassRow row : rows) {
			count += row.count();
		}
		int[] holeOf = new int[count];
		int at = 0;
		for (PassRow row : rows) {
			for (int i = 0; i < row.count(); i++) {
				holeOf[at++] = holes.at(row.place(i), within.applyAsDouble(row.resolution(i)));
			}
		}
		PassShapes shapes = new PassShapes();
		return new PassStretches(PassStretch.of(rows, holeOf, holes, shapes), holes, shapes);
	}

	/** No passes. */
	public static PassStretches none(Holes holes) {
		return new PassStretches(List.of(), holes, new PassShapes());
	}

	/** The first of the rows that the passes are made in; there has to be one. */
	public PassRow first() {
		return stretches.get(0).table().rows().get(0);
	}

	/** The last of the rows. */
	public PassRow last() {
		List<PassRow> rows = stretches.get(stretches.size() - 1).table().rows();
		return rows.get(rows.size() - 1);
	}

	/** Whether each pass is at a place that is known. */
	public boolean placed() {
		return stretches.stream().allMatch(stretch -> stretch.places().placed());
	}

	/** Half of the coarsest last decimal in the blocks of any of the passes, mm. */
	public double coarsest() {
		return stretches.stream().mapToDouble(stretch -> stretch.table().coarsest()).max().orElse(0);
	}

	/** All stretches, in order. */
	List<PassStretch> stretches() {
		return stretches;
	}

	/** The shapes of the passes. */
	PassShapes shapes() {
		return shapes;
	}

	/** All passes. */
	public MillPasses all() {
		return all;
	}

	/** The first pass at each hole. */
	public MillPasses firstPasses() {
		return selected(PassStretch::firstPasses);
	}

	/** All finishing passes. */
	public MillPasses allFinishing() {
		return selected(PassStretch::allFinishing);
	}

	private MillPasses selected(Function<PassStretch, PassPart> selection) {
		List<PassPart> parts = new ArrayList<>(stretches.size());
		boolean every = true;
		for (PassStretch stretch : stretches) {
			parts.add(selection.apply(stretch));
			every &= parts.get(parts.size() - 1) == stretch.all();
		}
		return every ? all : new MillPasses(parts);
	}

	/** The passes that stand by themselves which an arc is of, or leads to or away from. */
	public List<MillPass> around(Step.Arc arc) {
		return stretches.stream().flatMap(stretch -> stretch.table().around(arc).stream()).toList();
	}

	/** The passes before and behind the one whose first arc has a number in the order of execution. */
	public List<MillPass> beside(int order) {
		int at = at(order);
		int index = at < 0 ? -1 : before[at] + stretches.get(at).table().at(order);
		return IntStream.of(index - 1, index + 1).filter(beside -> index >= 0 && beside >= 0 && beside < all.size())
				.mapToObj(all::get).toList();
	}

	/** Whether a step is the first arc of one of them, by its number in the order of execution. */
	public boolean has(int order) {
		return at(order) >= 0;
	}

	/**
	 * What the pass does at its hole whose first arc has a number in the order of execution; there has to be one.
	 *
	 * @param within how far a hole may be from a place written to a resolution, mm
	 */
	public Resorting.Doing doing(int order, DoubleUnaryOperator within) {
		PassTable table = stretches.get(at(order)).table();
		int pass = table.at(order);
		return new Resorting.Doing(order, table.place(pass), within.applyAsDouble(table.resolution(pass)), Optional.empty());
	}

	/** Takes the hole of each pass, below 0 for one at no known place, and the number of its first arc in the order of execution. */
	public interface Visit {

		void take(int hole, int order);
	}

	/** Hands out each pass in order. */
	public void visits(Visit visit) {
		stretches.forEach(stretch -> stretch.table().visits(visit));
	}

	/** The stretch that has the pass whose first arc has a number in the order of execution; below 0 for none. */
	int at(int order) {
		int found = InOrder.before(stretches, PassStretch::firstOrder, order + 1) - 1;
		return found >= 0 && stretches.get(found).table().at(order) >= 0 ? found : -1;
	}

	/** The holes in the order first reached. */
	public List<Hole> holes() {
		return new AbstractList<>() {

			@Override
			public Hole get(int index) {
				int at = InOrder.row(starts, index);
				return stretches.get(at).places().hole(index - starts[at]);
			}

			@Override
			public int size() {
				return holeCount;
			}
		};
	}

	/** The passes at a hole, in order. */
	public Optional<MillPasses> at(Hole hole) {
		return find(hole).map(at -> new MillPasses(List.of(at.stretch().places().at(at.hole()))));
	}

	/** The finishing passes at a hole. */
	public Optional<MillPasses> finishing(Hole hole) {
		return find(hole).map(PassStretches::finishing);
	}

	private static MillPasses finishing(At at) {
		return new MillPasses(List.of(at.stretch().places().finishing(at.hole())));
	}

	private Optional<At> find(Hole hole) {
		Place place = hole.place();
		int number = holes.at(place, 0);
		for (PassStretch stretch : stretches) {
			int found = stretch.places().find(number, place);
			if (found >= 0) {
				return Optional.of(new At(stretch, found));
			}
		}
		return Optional.empty();
	}

	/** The finishing passes at each of the holes whose kind is as asked; each list is made where it is asked for, its passes once. */
	public List<List<MillPass>> finishingWhere(Predicate<List<MillPass>> asked) {
		if (holeCount == 1) {
			MillPasses only = all.size() == 1 ? all : finishing(new At(stretches.get(0), 0));
			return asked.test(only) ? List.of(only) : List.of();
		}
		List<At> found = new ArrayList<>();
		for (List<Alike> kind : byFinishing()) {
			if (asked.test(finishing(new At(kind.get(0).stretch(), kind.get(0).holes().get(0))))) {
				kind.forEach(alike -> alike.holes().forEach(hole -> found.add(new At(alike.stretch(), hole))));
			}
		}
		return new AbstractList<>() {

			@Override
			public List<MillPass> get(int index) {
				return List.copyOf(finishing(found.get(index)));
			}

			@Override
			public int size() {
				return found.size();
			}
		};
	}

	private synchronized Iterable<List<Alike>> byFinishing() {
		if (byFinishing == null) {
			byFinishing = new LinkedHashMap<>();
			for (PassStretch stretch : stretches) {
				stretch.places().byFinishing().forEach((kind, holes) -> byFinishing.computeIfAbsent(kind, fresh -> new ArrayList<>())
						.add(new Alike(stretch, holes)));
			}
		}
		return byFinishing.values();
	}

	/** The finishing passes at the first hole that has no others. */
	public Optional<MillPasses> cutAtOnce() {
		for (PassStretch stretch : stretches) {
			Optional<Integer> hole = stretch.places().cutAtOnce();
			if (hole.isPresent()) {
				return Optional.of(finishing(new At(stretch, hole.get())));
			}
		}
		return Optional.empty();
	}

	/** Hands out the number of each hole; below 0 for one at no known place. */
	public void numbers(IntConsumer numbers) {
		stretches.forEach(stretch -> stretch.places().numbers(numbers));
	}
}
