package truelead.checker.plan;

import java.util.Optional;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;

/**
 * The hole for one method, depths in mm below the surface.
 *
 * @param drill    a drill that can be bought
 * @param source   why that drill
 * @param toolTip  the end of tap or thread mill
 * @param full     the drill's full diameter
 * @param drillTip the drill's tip, with a 118 degree point
 */
public record HolePlan(DrillSizes.Drill drill, String source, double toolTip, double full, double drillTip) {
	/** Pitches below the end of the tool (common practice, no source). */
	private static final double ROOM_CUT = 2;
	private static final double ROOM_FORM = 1;
	private static final double ROOM_MILL = 0.5;
	/** The cutter starts half a pitch and the climb of the lead-in below the full thread. */
	private static final double MILL_PAST = 0.75;
	private static final double STEP = 0.01;

	/** The hole for a method and depth; empty where no drill is known. */
	public static Optional<HolePlan> of(Method method, Request request) {
		return drill(method, request.thread()).map(d -> of(method, request, d));
	}

	private static HolePlan of(Method method, Request request, TapDrill drill) {
		double pitch = request.thread().pitch();
		double past = past(method, request);
		double tip = up(request.depth() + past);
		double room = request.through() ? 0.5 : room(method);
		double full = up(tip + room * pitch + STEP);
		double cone = DrillPoint.length(drill.diameter(), DrillPoint.ORDINARY);
		return new HolePlan(new DrillSizes.Drill(drill.name(), drill.diameter(), drill.unit()), drill.source(), tip, full, up(full + cone));
	}

	/** The deepest full thread in mm that a method makes above a bottom; 0 or less where none. */
	public static double deepest(Method method, Request request, HolePlan plan, double bottom) {
		return request.depth() - (plan.drillTip() - bottom);
	}

	private static double past(Method method, Request request) {
		double pitch = request.thread().pitch();
		return method.tap() ? (method.lead() + (request.through() ? 0.5 : 0)) * pitch : MILL_PAST * request.thread().lead();
	}

	private static double room(Method method) {
		return method.forming() ? ROOM_FORM : method.tap() ? ROOM_CUT : ROOM_MILL;
	}

	private static Optional<TapDrill> drill(Method method, ThreadSpec spec) {
		return method.forming()
				? FormHole.drill(spec).map(d -> new TapDrill(d.name(), d.diameter(), d.unit(), truelead.checker.thread.Origin.FROM_MEMORY,
						"forming: D - 0.0068 x 65 % x P (Machinery's Handbook) or practice"))
				: TapDrill.cutting(spec);
	}

	private static double up(double length) {
		return Math.ceil(length / STEP - 1e-9) * STEP;
	}
}
