package truelead.checker.plan;

import java.util.Optional;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.Limits;
import truelead.checker.thread.Origin;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/**
 * The hole for one method, depths in mm below the surface.
 *
 * @param drill    a drill that can be bought, or one on hand
 * @param source   why that drill
 * @param toolTip  the end of tap or thread mill
 * @param full     the drill's full diameter
 * @param drillTip the drill's tip, with a 118 degree point
 */
public record HolePlan(DrillSizes.Drill drill, String source, double toolTip, double full, double drillTip) {
	/** Pitches below the end of a cutting tap (common practice, no source). */
	private static final double ROOM_CUT = 2;
	/** Pitches below the end of a forming tap (the same). */
	private static final double ROOM_FORM = 1;
	/** Pitches below the end of a thread mill (the same). */
	private static final double ROOM_MILL = 0.5;
	/**
	 * How far below the full thread the cutter starts, in leads: half a pitch and the climb of the lead-in (geometry of the helix that is
	 * written).
	 */
	private static final double MILL_PAST = 0.75;
	/** How far tools pass the far face of a wall: half a pitch, a drill at least half a millimetre (common practice, no source). */
	private static final double PAST_WALL = 0.5;
	/**
	 * A drill on hand is taken for forming where it gives 60 to 70 percent of thread (Machinery's Handbook: 60 the least, 65 recommended).
	 */
	private static final double LEAST_FORMED = 60;
	/** The most (common practice, no source). */
	private static final double MOST_FORMED = 70;
	/** Depths are rounded up to this, mm (a choice of ours). */
	private static final double STEP = 0.01;

	/** The hole for a method and depth; empty where no drill is known, or for a taper thread no depth. */
	public static Optional<HolePlan> of(Method method, Request request) {
		if (request.thread().system().taper() && (method.forming() || TaperTap.of(request.thread()).isEmpty())) {
			return Optional.empty();
		}
		return drill(method, request).map(d -> of(method, request, d));
	}

	private static HolePlan of(Method method, Request request, TapDrill drill) {
		double pitch = request.thread().pitch();
		double tip = up(TaperTap.of(request.thread()).map(TaperTap::tip).orElse(request.depth() + past(method, request)));
		double full = request.through() ? up(request.wall() + Math.max(PAST_WALL, PAST_WALL * pitch) + STEP)
				: up(tip + room(method) * pitch + STEP);
		double cone = DrillPoint.length(drill.diameter(), DrillPoint.ORDINARY);
		return new HolePlan(new DrillSizes.Drill(drill.name(), drill.diameter(), drill.unit()), drill.source(), tip, full, up(full + cone));
	}

	/** The deepest full thread in mm that a method makes above a bottom; 0 or less where none. */
	public static double deepest(Method method, Request request, HolePlan plan, double bottom) {
		return TaperTap.of(request.thread()).isPresent() ? 0 : request.depth() - (plan.drillTip() - bottom);
	}

	private static double past(Method method, Request request) {
		double pitch = request.thread().pitch();
		if (!method.tap()) {
			return MILL_PAST * request.thread().lead();
		}
		double lead = method.lead() * pitch;
		// a tap that comes out of the wall goes through it: a lead that stays in the far face leaves half a thread there
		boolean comesOut = request.through() && request.depth() + lead > request.wall() - 1e-6;
		return comesOut ? request.wall() - request.depth() + lead + PAST_WALL * pitch : lead;
	}

	private static double room(Method method) {
		return method.forming() ? ROOM_FORM : method.tap() ? ROOM_CUT : ROOM_MILL;
	}

	private static Optional<TapDrill> drill(Method method, Request request) {
		ThreadSpec spec = request.thread();
		Optional<TapDrill> bought = method.forming()
				? FormHole.drill(spec).map(d -> new TapDrill(d.name(), d.diameter(), d.unit(), Origin.FROM_MEMORY,
						"forming: D - 0.0068 x 65 % x P (Machinery's Handbook) or practice")) : TapDrill.cutting(spec);
		if (bought.isEmpty() || request.rack().drill(bought.get().diameter()).isPresent()) {
			return bought;
		}
		return onHand(method, request, bought.get()).or(() -> bought);
	}

	/** A drill of the tool list that does as well: within the limits of the minor diameter, or of the percentage for forming. */
	private static Optional<TapDrill> onHand(Method method, Request request, TapDrill bought) {
		ThreadSpec spec = request.thread();
		Optional<Limits> limits = ThreadTable.standard().limits(spec);
		double least = method.forming() ? FormHole.diameter(spec, MOST_FORMED)
				: limits.map(l -> l.minorMinMm().orElse(Double.NaN)).orElse(Double.NaN);
		double most = method.forming() ? FormHole.diameter(spec, LEAST_FORMED)
				: limits.map(l -> l.minorMaxMm().orElse(Double.NaN)).orElse(Double.NaN);
		return request.rack().drill(bought.diameter(), least, most)
				.map(slot -> new TapDrill(Figure.plain(Rack.diameter(slot) / spec.unit().mm(), 4), Rack.diameter(slot), spec.unit(),
						Origin.COMPUTED, "on hand, T" + slot.pocket() + ": within " + (method.forming() ? "60 to 70 % of formed thread"
								: "the limits of the minor diameter")));
	}

	private static double up(double length) {
		return Math.ceil(length / STEP - 1e-9) * STEP;
	}
}
