package truelead.checker.work;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.hole.DrillEnd;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.ToolFacts;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.run.ArcRun;
import truelead.checker.run.AxisRun;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;

/** Makes cuts from cycles, plunges and circles. */
final class Cuts {

	/** How much of the radius a place is beside a circle that is not on it. */
	private static final double ASIDE = 0.02;
	/**
	 * A countersink goes no deeper than so many mm more than it is wide, the way from R included; or than so many where nobody says how
	 * wide it is.
	 */
	private static final double DEEPER_THAN_WIDE = 10;
	private static final double DEEPEST_EDGE = 25;

	private Cuts() {
	}

	/** A drilling or boring cycle at a place. */
	static Cut of(int order, Step.Stroke stroke, ToolUse tool, Place place) {
		Cut.Kind kind = kind(tool.facts(), switch (stroke.cycle().kind()) {
			case PECK_DRILL -> Cut.Kind.PECK;
			case BORE, BORE_FEED_OUT -> Cut.Kind.BORE;
			default -> Cut.Kind.DRILL;
		});
		boolean misnamed = misnamed(tool.facts(), stroke.rLevel() - stroke.bottom());
		return axial(order, misnamed ? Cut.Kind.DRILL : kind, stroke, tool, place, stroke.rLevel(), stroke.bottom(), stroke.resolution());
	}

	/** A plunge by moves; a drill's is drilling, as by a cycle. */
	static Cut of(AxisRun run, ToolUse tool) {
		boolean drill = tool.facts().kind().filter(k -> k.value() == ToolKind.DRILL).isPresent();
		Cut.Kind kind = kind(tool.facts(), !drill ? Cut.Kind.PLUNGE : run.feedsIn() > 1 ? Cut.Kind.PECK : Cut.Kind.DRILL);
		boolean misnamed = misnamed(tool.facts(), run.top() - run.bottom());
		return axial(run.order(), misnamed ? Cut.Kind.PLUNGE : kind, run.in(), tool, run.place(), run.top(), run.bottom(),
				AxisRun.resolution(run.in()));
	}

	/** A circle or helix on the inside of a hole; empty where the cutter comes from outside, as round a boss. */
	static Optional<Cut> of(ArcRun run, ToolUse tool, Place place) {
		if (external(run)) {
			return Optional.empty();
		}
		boolean onContour = run.arcs().get(0).modal().compensation() != Compensation.OFF;
		double across = 2 * run.radius();
		Optional<Fact<Double>> diameter = onContour
				? Optional.of(Fact.of(across, FactSource.IMPLIED, "2 R of the circle, compensation on"))
				: tool.facts().diameter().map(d -> new Fact<>(across + d.value(), d.source(), d.at(), d.said()));
		double tip = run.deepest(-1);
		return Optional.of(new Cut(run.order(), kind(tool.facts(), Cut.Kind.MILL) == Cut.Kind.GROOVE ? Cut.Kind.GROOVE : Cut.Kind.MILL,
				run.arcs().get(run.arcs().size() - 1), tool, place, Math.max(run.from(), run.to()), tip, tip, diameter, run.resolution()));
	}

	/** Whether the cutter comes to the circle from outside, or leaves it outwards where it does not come from anywhere. */
	static boolean external(ArcRun run) {
		Side from = side(run, true);
		return (from == Side.ON ? side(run, false) : from) == Side.OUTSIDE;
	}

	private enum Side {
		INSIDE, ON, OUTSIDE
	}

	/**
	 * The side that the lead-in comes from, or the lead-out goes to, at depth: inside where any of its places is, since nothing goes round
	 * a boss from there.
	 */
	private static Side side(ArcRun run, boolean in) {
		List<Step> steps = in ? run.before() : run.after();
		Side side = Side.ON;
		for (int i = 0; i < steps.size(); i++) {
			Step step = steps.get(in ? steps.size() - 1 - i : i);
			Point end;
			if (step instanceof Step.Move move && !move.rapid() && move.from().distanceInPlane(move.to(), run.plane()) > 1e-6) {
				end = in ? move.from() : move.to();
			} else if (step instanceof Step.Arc arc && arc.modal().plane() == run.plane()) {
				end = in ? arc.from() : arc.to();
			} else {
				break;
			}
			double beyond = run.centre().distanceInPlane(end, run.plane()) - run.radius();
			if (beyond < -ASIDE * run.radius() - 0.01) {
				return Side.INSIDE;
			}
			side = beyond > ASIDE * run.radius() + 0.01 ? Side.OUTSIDE : side;
		}
		return side;
	}

	/** Whether a tool that is called a countersink goes so deep that the comment cannot be about it (common practice, no source). */
	private static boolean misnamed(ToolFacts facts, double way) {
		boolean sinks = facts.kind().filter(kind -> kind.value() == ToolKind.COUNTERSINK).isPresent();
		return sinks && Math.abs(way) > facts.diameter().map(diameter -> diameter.value() + DEEPER_THAN_WIDE).orElse(DEEPEST_EDGE);
	}

	private static Cut.Kind kind(ToolFacts facts, Cut.Kind byMotion) {
		if (facts.kind().isEmpty()) {
			return byMotion;
		}
		return switch (facts.kind().get().value()) {
			case SPOT_DRILL, CENTRE_DRILL -> Cut.Kind.SPOT;
			case COUNTERSINK -> Cut.Kind.COUNTERSINK;
			case REAMER -> Cut.Kind.REAM;
			case BORING -> Cut.Kind.BORE;
			case GROOVE_CUTTER -> Cut.Kind.GROOVE;
			default -> byMotion;
		};
	}

	private static Cut axial(int order, Cut.Kind kind, Step step, ToolUse tool, Place place, double start, double tip, double resolution) {
		int direction = tip > start ? 1 : -1;
		boolean misnamed = misnamed(tool.facts(), start - tip);
		Optional<Fact<Double>> diameter = misnamed ? Optional.empty() : tool.facts().diameter();
		if (kind.atEdge()) {
			return new Cut(order, kind, step, tool, place, start, tip, Double.NaN, Cut.cone(tool.facts(), start, tip, 0), resolution);
		}
		double shoulder = misnamed ? Double.NaN : !pointed(tool.facts()) ? tip
				: tip - direction * DrillEnd.point(tool.facts(), step.modal());
		return new Cut(order, kind, step, tool, place, start, tip, shoulder, diameter, resolution);
	}

	/** Whether the end is a drill's point: a drill, or a tool without a name in a drilling cycle. */
	private static boolean pointed(ToolFacts facts) {
		return facts.kind().isEmpty() || facts.kind().get().value() == ToolKind.DRILL;
	}
}
