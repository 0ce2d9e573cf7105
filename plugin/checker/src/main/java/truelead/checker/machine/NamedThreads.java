package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import truelead.checker.program.Setting;
import truelead.grammar.Expression;

/**
 * Threads that a lathe cuts by a single point in a cycle called by name with arguments in their order, CYCLE97, CYCLE99 and the chain of
 * CYCLE98: how far along Z, on what diameters, how deep and in how many passes, at what leads, with how many starts. The order is that of
 * the controls' open programming documents (from memory). What of it is left out or not known is not followed.
 */
final class NamedThreads {

	/** How far the tool is from the wall before it goes in, mm: some way that shows whether the thread is inside. */
	private static final double OFF = 1;
	/** Of more passes and starts than this only so many are made. */
	private static final int MOST_PASSES = 50;
	private static final int MOST_STARTS = 20;
	private static final double FULL_TURN = 360;
	/** From this kind on passes take less and less, below it one as much as the other. */
	private static final int DEGRESSIVE = 3;

	/** The place of an argument that no call has. */
	private static final int NOWHERE = Integer.MAX_VALUE;

	/**
	 * Where each argument stands; what a cycle does not have is {@link #NOWHERE}.
	 *
	 * @param levels    along Z, from the start of the thread to its end
	 * @param diameters at these levels
	 * @param leads     between them
	 * @param size      whose standard pitch is the lead
	 */
	private record Order(int[] levels, int[] diameters, int[] leads, int size, int in, int out, int depth, int finish, int angle,
			int passes, int kind, int starts) {
	}

	private static final Map<String, Order> ORDERS = Map.of(
			"CYCLE97", new Order(new int[] { 2, 3 }, new int[] { 4, 5 }, new int[] { 0 }, 1, 6, 7, 8, 9, 11, 12, 14, 15),
			"CYCLE99", new Order(new int[] { 0, 2 }, new int[] { 1, 3 }, new int[] { 12 }, NOWHERE, 4, 5, 6, 7, 9, 10, 13, 14),
			"CYCLE98", new Order(new int[] { 0, 2, 4, 6 }, new int[] { 1, 3, 5, 7 }, new int[] { 16, 17, 18 }, NOWHERE, 8, 9, 10, 11,
					13, 14, 19, 20));

	private final MachineState state;
	private final Flow flow;

	NamedThreads(Flow flow, MachineState state) {
		this.flow = flow;
		this.state = state;
	}

	/** Cuts the thread; false where the name is none of these, something is not known, or the machine does not turn. */
	boolean follow(String name, List<Expression> arguments, String text) {
		Order order = ORDERS.get(name);
		if (order == null || !state.profile.isLathe()) {
			return false;
		}
		NamedArguments given = new NamedArguments(flow, name, arguments, text);
		double kind = given.number(order.kind);
		List<Setting> leads = leads(given, order);
		List<Point> corners = corners(given, order);
		double depth = Math.abs(given.number(order.depth)) * state.unit.mm();
		double starts = given.number(order.starts, 1);
		boolean sure = !Double.isNaN(kind + depth + starts) && leads.size() == order.leads.length && corners.size() == order.levels.length;
		if (!sure) {
			return false;
		}
		boolean inside = kind % 2 == 0;
		double turned = given.number(order.angle, 0) / FULL_TURN;
		int grooves = (int) Math.max(1, Math.min(starts, MOST_STARTS));
		for (int start = 0; start < grooves; start++) {
			for (double down : depths(given, order, depth, kind % 10 >= DEGRESSIVE)) {
				cut(corners, leads, inside ? down : -down, turned + (double) start / grooves);
			}
		}
		return true;
	}

	/** The leads of all parts; fewer where one is not known. */
	private List<Setting> leads(NamedArguments given, Order order) {
		List<Setting> leads = new ArrayList<>();
		for (int at : order.leads) {
			double lead = given.number(at);
			double bySize = StandardPitch.of(Math.abs(given.number(order.size))) / state.unit.mm();
			if (lead > 0 || bySize > 0) {
				leads.add(lead > 0 ? given.setting(at, order.leads.length > 1 ? "PP" : "PIT", lead)
						: given.setting(order.size, "MPIT", bySize));
			}
		}
		return leads;
	}

	/** The crests at the ends of all parts, the ways in and out included; fewer where one is not known. */
	private List<Point> corners(NamedArguments given, Order order) {
		List<Point> corners = new ArrayList<>();
		double mm = state.unit.mm();
		int last = order.levels.length - 1;
		double way = Math.signum(given.number(order.levels[last]) - given.number(order.levels[0]));
		double before = Double.NaN;
		for (int i = 0; i <= last; i++) {
			double on = i == 0 ? -Math.abs(given.number(order.in, 0)) : i == last ? Math.abs(given.number(order.out, 0)) : 0;
			double diameter = given.number(order.diameters[i], before);
			Point corner = new Point(diameter * mm / 2, 0, (given.number(order.levels[i]) + way * on) * mm);
			if (!Double.isNaN(corner.x() + corner.z()) && way != 0) {
				corners.add(corner);
			}
			before = diameter;
		}
		return corners;
	}

	/**
	 * How deep each pass goes: so many to the finishing allowance, then one to the whole depth; where their number is not said only that.
	 */
	private static List<Double> depths(NamedArguments given, Order order, double depth, boolean degressive) {
		List<Double> depths = new ArrayList<>();
		double rough = depth - Math.abs(given.number(order.finish, 0));
		double count = Math.min(given.number(order.passes, 0), MOST_PASSES);
		for (int i = 1; i <= count; i++) {
			double share = i / count;
			depths.add(rough * (degressive ? Math.sqrt(share) : share));
		}
		if (depths.isEmpty() || rough < depth) {
			depths.add(depth);
		}
		return depths;
	}

	private void cut(List<Point> corners, List<Setting> leads, double depth, double turned) {
		Frame frame = state.place.frame();
		Point before = state.place.here();
		double off = depth > 0 ? -OFF : OFF;
		List<Point> path = corners.stream().map(corner -> frame.apply(corner.with(0, corner.x() + depth))).toList();
		Point first = path.get(0);
		Point last = path.get(path.size() - 1);
		Point in = first.with(0, first.x() + off - depth);
		Point out = last.with(0, last.x() + off - depth);
		Modal modal = state.modal();
		Output steps = flow.out();
		steps.step(new Step.Move(flow.block(), modal, true, before, in, 0));
		steps.step(new Step.Move(flow.block(), modal, true, in, first, 0));
		for (int i = 0; i < leads.size(); i++) {
			if (!path.get(i).equals(path.get(i + 1))) {
				steps.step(new Step.Synchronised(flow.block(), modal, 0, path.get(i), path.get(i + 1), leads.get(i), false, 0, turned,
						Map.of()));
			}
		}
		steps.step(new Step.Move(flow.block(), modal, true, last, out, 0));
		steps.step(new Step.Move(flow.block(), modal, true, out, before, 0));
	}
}
