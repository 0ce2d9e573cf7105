package truelead.checker.run;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.hole.Place;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.tool.ToolLog;

/**
 * A run of moves along one axis at one place, in and out again: a plunge, a peck by hand, or a tap led by moves. Levels in mm.
 *
 * @param order number of the step that reaches the bottom
 * @param in    the step that reaches the bottom
 * @param out   the next step along the axis, that comes back; empty for a block that goes in and out by itself
 * @param top   level the first feed of the run starts from
 * @param steps all steps of the run, in order; at most 64
 */
public record AxisRun(int order, ToolLog tool, Place place, Step in, Optional<Step> out, double top, List<Step> steps) {

	/** How far off the spindle's axis in turning a motion is still along it, mm. */
	public static final double CENTRE_LINE = 0.05;

	public AxisRun {
		steps = List.copyOf(steps);
	}

	/** Whether another run is the same, but for the tool. */
	public boolean same(AxisRun other) {
		return new AxisRun(order, other.tool, place, in, out, top, steps).equals(other);
	}

	static Point from(Step step) {
		return step instanceof Step.Move move ? move.from() : ((Step.Synchronised) step).from();
	}

	static Point to(Step step) {
		return step instanceof Step.Move move ? move.to() : ((Step.Synchronised) step).to();
	}

	static boolean rapid(Step step) {
		return step instanceof Step.Move move && move.rapid();
	}

	/** Half of the last decimal written in a step of a run, mm. */
	public static double resolution(Step step) {
		return step instanceof Step.Move move ? move.resolution() : ((Step.Synchronised) step).resolution();
	}

	/** Level at the bottom, mm. */
	public double bottom() {
		return to(in).along(place.plane().axis());
	}

	/** Level the last step in starts from, mm. */
	public double start() {
		return from(in).along(place.plane().axis());
	}

	/** Whether the step in is synchronised with the spindle. */
	public boolean synchronised() {
		return in instanceof Step.Synchronised;
	}

	/** How often the tool is fed in: more than once is pecking, where it is a drill. */
	public long feedsIn() {
		return fedIn().count();
	}

	/** Whether the spindle turns one way all the way in, as for a tap; a long drill is led into its pilot hole backwards. */
	public boolean turnsOneWayIn() {
		return fedIn().allMatch(step -> step.modal().spindle() == in.modal().spindle());
	}

	private Stream<Step> fedIn() {
		int axis = place.plane().axis();
		double way = bottom() - top;
		return steps.stream().filter(step -> !rapid(step) && (to(step).along(axis) - from(step).along(axis)) * way > 0);
	}

	/** Whether the tool comes back in rapid. */
	public boolean rapidOut() {
		return out.filter(AxisRun::rapid).isPresent();
	}
}
