package truelead.checker.rule.program;

import java.util.List;
import java.util.function.Consumer;
import truelead.checker.machine.BlockRef;
import truelead.checker.machine.Location;
import truelead.checker.machine.Plane;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.work.Cut;
import truelead.checker.work.Hole;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The thread runs along another axis than the holes of the program: the plane was left over from something else. */
public final class PlaneWrong implements Rule {

	@Override
	public String name() {
		return "plane-wrong";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadingOperation operation : work.operations()) {
			List<Hole> holes = operation.holes();
			if (!holes.isEmpty() && !sideCycle(operation, work) && holes.stream().noneMatch(Hole::made) && !work.cutsAtUnknownPlaces()) {
				Plane plane = holes.get(0).place().plane();
				List<Hole> made = work.holes().stream().filter(Hole::made).filter(h -> h.making().get(0).order() < operation.firstOrder()).toList();
				boolean other = !made.isEmpty() && made.stream().allMatch(h -> h.place().plane() != plane);
				if (other && made.stream().map(h -> h.place().plane()).distinct().count() == 1) {
					found.accept(draft(operation, plane, made.get(0).making().get(0)));
				}
			}
		}
	}

	/** Whether its cycle works along X by itself, as those for the outside of a turned part do: no plane word turns it. */
	private static boolean sideCycle(ThreadingOperation operation, Work work) {
		return operation instanceof Tapping tapping && tapping.cycle().filter(c -> work.shop().profile().sideCycle(c.gWord())).isPresent();
	}

	private Finding draft(ThreadingOperation operation, Plane plane, Cut hole) {
		Plane right = hole.place().plane();
		BlockRef block = operation.block();
		String message = code(plane) + " is in force: " + operation.tool().name() + " threads along " + axis(plane) + ", the holes of the program are made along "
				+ axis(right) + "; " + code(right) + " before this block";
		return Draft.of(this, Severity.ERROR, Location.of(block), message).from("plane", code(plane), "in force").related(hole.block(), "a block that makes a hole")
				.fix(new Fix("Put " + code(right) + " before this block", false, "see that nothing behind it needs " + code(plane),
						List.of(BlockText.before(block, code(right)))))
				.on(operation).finding();
	}

	private static String code(Plane plane) {
		return plane == Plane.XY ? "G17" : plane == Plane.ZX ? "G18" : "G19";
	}

	private static char axis(Plane plane) {
		return "XYZ".charAt(plane.axis());
	}
}
