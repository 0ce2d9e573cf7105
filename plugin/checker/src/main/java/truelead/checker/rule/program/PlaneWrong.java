package truelead.checker.rule.program;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.Plane;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** The thread runs along another axis than the holes of the program: the plane was left over from something else. */
public final class PlaneWrong implements Rule {

	/** How far above a thread the word that sets its plane is looked for, lines: within the blocks of its tool. */
	private static final int ABOVE = 60;
	/** How near to a hole a place is beside it, mm. */
	private static final double BESIDE = 3;

	@Override
	public String name() {
		return "plane-wrong";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.OTHER_AXIS, Slip.OTHER_PLANE);
	}

	@Override
	public boolean isOfAStay() {
		return true;
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		arcs(work, found);
		Map<Integer, MadeHoles> made = new HashMap<>();
		for (ThreadingOperation operation : work.operations()) {
			List<Hole> holes = operation.holes();
			if (!holes.isEmpty() && holes.stream().noneMatch(Hole::made) && !work.cutsAtUnknownPlaces()) {
				Plane plane = holes.get(0).place().plane();
				boolean side = sideCycle(operation, work);
				if ((plane == Plane.XY || side) && work.allAcross(plane)) {
					continue;
				}
				work.dependsOnAll();
				// each channel of the machine has planes of its own
				int part = holes.get(0).place().part();
				Optional<Hole> before = made.computeIfAbsent(part, number -> new MadeHoles(work.holes(), number))
						.allInOnePlaneBefore(operation.firstOrder());
				before.filter(first -> first.place().plane() != plane && (!side || leftOver(first, work)))
						.ifPresent(first -> found.accept(draft(operation, plane, first.making().get(0), work)));
				if (before.isEmpty() && !side && operation instanceof Tapping tapping) {
					OtherPlane.meant(tapping, work).ifPresent(hole -> found.accept(draft(operation, plane, hole.making().get(0), work)));
				}
				before.filter(first -> first.place().plane() == plane && !side).filter(first -> plane != Plane.XY
						&& WrittenForXy.is(operation, work.holes()) && !besideHoles(operation, work))
						.ifPresent(first -> found.accept(cycle(operation, plane, first.making().get(0))));
			}
		}
	}

	private static String words(Plane plane) {
		return plane == Plane.XY ? "X, Y, I and J" : plane == Plane.ZX ? "X, Z, I and K" : "Y, Z, J and K";
	}

	/** One finding a tool: all its arcs were written for another plane. */
	private void arcs(Work work, Consumer<Finding> found) {
		Set<Optional<BlockRef>> said = new HashSet<>();
		for (Step.Arc arc : work.trouble().openArcs()) {
			if (SidewaysArc.is(arc, work) && said.add(arc.modal().toolChange())) {
				Plane plane = arc.modal().plane();
				Plane right = SidewaysArc.written(arc);
				String message = code(plane) + " is in force, the arc is written for " + words(right)
						+ ": the control takes it for an arc about " + axis(plane) + ", stops or cuts sideways; " + code(right)
						+ " before the tool goes in";
				Draft draft = Draft.of(this, Severity.ERROR, Location.of(arc.block()), message).from("plane", code(plane), "in force");
				work.dependsOnAll();
				boolean alone = work.holes().stream().noneMatch(hole -> hole.made() && hole.place().plane() == plane);
				Optional<Location> set = arc.modal().toolChange().flatMap(change -> planeWord(arc.block(), plane)
						.filter(at -> at.file().equals(change.file()) && at.line() >= change.line()));
				set.ifPresent(at -> draft.fix(new Fix("Change " + code(plane) + " in line " + (at.line() + 1) + " to " + code(right), false,
						"see that nothing behind it needs " + code(plane), List.of(new Edit(at, code(right))))));
				arc.modal().toolChange().filter(change -> set.isEmpty() && (alone || right == Plane.XY))
						.ifPresent(change -> draft.fix(new Fix("Put " + code(right) + " behind the tool change", false,
								"see that nothing behind it needs " + code(plane), List.of(BlockText.after(change, code(right))))));
				work.threadMillings().stream().filter(m -> m.tool().change().equals(arc.modal().toolChange())).findFirst()
						.ifPresent(draft::on);
				found.accept(draft.finding());
			}
		}
	}

	/** Whether a hole is made in the plane right beside each place: the cycle means what it says, and its places are off. */
	private static boolean besideHoles(ThreadingOperation operation, Work work) {
		return operation.holes().stream().allMatch(hole -> work.holesNear(hole.place(), BESIDE).stream()
				.anyMatch(near -> near.made() && near.place().distance(hole.place()) < BESIDE));
	}

	/** The holes of one program of the file in the order in which they are made. */
	private static final class MadeHoles {

		private record Made(int order, int number, Hole hole) {
		}

		private final List<Made> made = new ArrayList<>();
		/** Of the holes up to one, which is the first one reached. */
		private final List<Made> firstReached = new ArrayList<>();
		/** How many holes are made until one lies in another plane than those before. */
		private int inOnePlane;

		MadeHoles(Collection<Hole> holes, int part) {
			int number = 0;
			for (Hole hole : holes) {
				if (hole.made() && hole.place().part() == part) {
					made.add(new Made(hole.making().get(0).order(), number++, hole));
				}
			}
			made.sort(Comparator.comparingInt(Made::order));
			for (Made one : made) {
				Made before = firstReached.isEmpty() ? one : firstReached.get(firstReached.size() - 1);
				firstReached.add(one.number() < before.number() ? one : before);
				inOnePlane += inOnePlane == firstReached.size() - 1 && one.hole().place().plane() == made.get(0).hole().place().plane() ? 1
						: 0;
			}
		}

		/** The first hole reached of those that are made before a step; empty where there is none, or they lie in several planes. */
		Optional<Hole> allInOnePlaneBefore(int order) {
			int low = 0;
			int high = made.size();
			while (low < high) {
				int middle = (low + high) / 2;
				if (made.get(middle).order() < order) {
					low = middle + 1;
				} else {
					high = middle;
				}
			}
			return low == 0 || low > inOnePlane ? Optional.empty() : Optional.of(firstReached.get(low - 1).hole());
		}
	}

	/** Whether its cycle works along X by itself, as those for the outside of a turned part do: no plane word turns it. */
	private static boolean sideCycle(ThreadingOperation operation, Work work) {
		return operation instanceof Tapping tapping && tapping.cycle().filter(c -> work.shop().profile().sideCycle(c.gWord())).isPresent();
	}

	/** Whether a hole along Z is made and never threaded: where all are, a cycle along X means the holes of another setting. */
	private static boolean leftOver(Hole hole, Work work) {
		return hole.place().plane() == Plane.XY && work.unthreaded().stream().anyMatch(one -> one.place().equals(hole.place()));
	}

	private Finding draft(ThreadingOperation operation, Plane plane, Cut hole, Work work) {
		Optional<Finding> side = SideTap.of(this, operation, hole, work);
		if (side.isPresent()) {
			return side.get();
		}
		Plane right = hole.place().plane();
		BlockRef block = operation.block();
		String message = code(plane) + " is in force: " + operation.tool().name() + " threads along " + axis(plane)
				+ ", the holes of the program are made along " + axis(right) + "; " + code(right) + " before this block";
		return Draft.of(this, Severity.ERROR, Location.of(block), message).from("plane", code(plane), "in force")
				.related(hole.block(), "a block that makes a hole")
				.fix(planeWord(block, plane)
						.map(at -> new Fix("Change " + code(plane) + " in line " + (at.line() + 1) + " to " + code(right), false,
								"see that nothing behind it needs " + code(plane), List.of(new Edit(at, code(right)))))
						.orElseGet(() -> new Fix("Put " + code(right) + " before this block", false, "see that nothing behind it needs "
								+ code(plane), List.of(BlockText.before(block, code(right)))))).on(operation).finding();
	}

	/** Holes and threads are all in the plane, and the cycle makes sense in XY alone. */
	private Finding cycle(ThreadingOperation operation, Plane plane, Cut hole) {
		String message =
				code(plane) + " is in force, the cycle is written for X, Y and a depth along Z: the control takes Y or X for the depth; "
				+ "G17 before the holes are made";
		return Draft.of(this, Severity.ERROR, Location.of(operation.block()), message).from("plane", code(plane), "in force")
				.related(hole.block(), "a block that makes a hole")
				.fix(planeWord(hole.block(), plane).map(at -> new Fix("Change " + code(plane) + " in line " + (at.line() + 1) + " to G17",
						false, "see that nothing behind it needs " + code(plane), List.of(new Edit(at, "G17"))))
						.orElseGet(() -> new Fix("Put G17 before the holes are made", false, "see that nothing behind it needs "
								+ code(plane), List.of(BlockText.before(hole.block(), "G17"))))).on(operation).finding();
	}

	/** The word above a block that sets the plane: what is in force since, a length offset among it, is wrong along with the thread. */
	private static Optional<Location> planeWord(BlockRef block, Plane plane) {
		double number = Double.parseDouble(code(plane).substring(1));
		for (int line = block.line(); line >= Math.max(0, block.line() - ABOVE); line--) {
			for (Element element : block.file().text().block(line).elements()) {
				if (element instanceof Element.Word word && word.address() == 'G' && word.value() instanceof Expression.Number set
						&& set.value() == number) {
					return Optional.of(new Location(block.file(), line, word.span()));
				}
			}
		}
		return Optional.empty();
	}

	private static String code(Plane plane) {
		return plane == Plane.XY ? "G17" : plane == Plane.ZX ? "G18" : "G19";
	}

	private static char axis(Plane plane) {
		return "XYZ".charAt(plane.axis());
	}
}
