package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.thread.ThreadSpec;

/**
 * Cutter, speeds and radial passes of a thread mill; lengths in mm. Edge and centre feed differ by (D - dc) / D (geometry).
 *
 * @param cutter diameter: at most 0.65 D, and well inside the hole
 * @param teeth  flutes
 * @param speed  rev/min
 * @param edge   feed at the teeth, mm/min
 * @param centre feed of the cutter's centre, as programmed, mm/min
 * @param radii  of the centre's path, roughing first
 */
public record MillCut(double cutter, int teeth, double speed, double edge, double centre, List<Double> radii) {
	/** The largest cutter, a share of D, so that the helix does not overcut the profile (common practice, no source). */
	private static final double OF_THREAD = 0.65;
	/** The largest cutter, a share of the hole, so that it finds its way in (common practice, no source). */
	private static final double OF_HOLE = 0.85;
	/** Feed a tooth, a share of the cutter's diameter (common practice, no source). */
	private static final double FEED_A_TOOTH = 0.004;
	/** Teeth of a cutter that no tool list names (common practice, no source). */
	private static final int TEETH = 3;
	/** The fastest spindle that is planned for, rev/min (a choice of ours: most mills have it). */
	private static final double FASTEST = 8000;
	/** From this hardness on in two passes, HRC (common practice, no source). */
	private static final double HARD = 40;
	/** From this hardness on in three passes, HRC (common practice, no source). */
	private static final double HARDEST = 50;
	/** Above this pitch in two passes, mm (common practice, no source). */
	private static final double COARSE = 1.5;
	/** Above this pitch in three passes, mm (common practice, no source). */
	private static final double COARSEST = 3;

	public MillCut {
		radii = List.copyOf(radii);
	}

	static MillCut of(Method method, Request request, HolePlan hole) {
		ThreadSpec thread = request.thread();
		Figure figure = new Figure(request.unit());
		double most = Math.min(OF_THREAD * thread.diameter(), OF_HOLE * hole.drill().diameter());
		double step = request.unit().mm() == 1 ? 0.1 : 0.005 * request.unit().mm();
		Optional<Rack.Slot> held = request.rack().mill(thread, method == Method.COMB_MILL, most);
		double cutter = held.map(Rack::diameter).orElse(Math.floor(most / step) * step);
		int teeth = held.flatMap(s -> s.tool().teeth()).map(Fact::value).orElse(TEETH);
		double wanted = SpeedBand.speed(SpeedBand.of(method, request).start(), cutter);
		double speed = Math.max(50, Math.min(FASTEST, Math.floor(wanted / 10) * 10));
		double edge = FEED_A_TOOTH * cutter * teeth * speed;
		double centre = Math.max(1, edge * (thread.diameter() - cutter) / thread.diameter());
		double radius = figure.even((thread.diameter() - cutter) / 2);
		int passes = passes(request);
		double depth = thread.system().profileOverPitch() * thread.pitch();
		List<Double> radii = new ArrayList<>();
		for (int pass = 1; pass < passes; pass++) {
			// passes of equal area: the depth of a V grows with the root of what is taken
			radii.add(figure.even(radius - depth * (1 - Math.sqrt(pass / (double) passes))));
		}
		radii.add(radius);
		return new MillCut(cutter, teeth, speed, edge, centre, radii);
	}

	/** The radius of the entry arc that ends in the last pass, mm. */
	public double entry() {
		return radii.get(radii.size() - 1) / 2;
	}

	/** The radial steps after the first pass, mm. */
	public List<Double> steps() {
		List<Double> steps = new ArrayList<>();
		for (int pass = 1; pass < radii.size(); pass++) {
			steps.add(radii.get(pass) - radii.get(pass - 1));
		}
		return steps;
	}

	/** The cut of a way that mills; empty for taps. */
	public static Optional<MillCut> in(Weighing weighing, Request request) {
		return weighing.method().tap() ? Optional.empty() : weighing.hole().map(hole -> of(weighing.method(), request, hole));
	}

	/** The pocket of the cutter on hand that is meant. */
	static Optional<Integer> pocket(Method method, Request request, HolePlan hole) {
		double most = Math.min(OF_THREAD * request.thread().diameter(), OF_HOLE * hole.drill().diameter());
		return request.rack().mill(request.thread(), method == Method.COMB_MILL, most).map(Rack.Slot::pocket);
	}

	private static int passes(Request request) {
		double pitch = request.thread().pitch();
		return request.hardness() >= HARDEST || pitch > COARSEST ? 3 : request.hardness() >= HARD || pitch > COARSE ? 2 : 1;
	}

	/** Feed a tooth, mm. */
	public double toothFeed() {
		return FEED_A_TOOTH * cutter;
	}
}
