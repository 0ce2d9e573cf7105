package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.program.Setting;
import truelead.grammar.Expression;

/**
 * Threads that a lathe cuts by a single point in a cycle called by name with arguments in their order, CYCLE97 and CYCLE99: how far along Z, on what diameter, how
 * deep, at what pitch. The order is that of the controls' open programming documents (from memory). What of it is left out or not known, and several
 * starts, are not followed.
 */
final class NamedThreads {

	/** Where each argument stands: pitch, size, level of start and end, diameter at both, way in and out, depth, kind, starts. */
	private record Order(int pitch, int size, int start, int end, int from, int to, int in, int out, int depth, int kind, int starts) {
	}

	private static final Order EARLIER = new Order(0, 1, 2, 3, 4, 5, 6, 7, 8, 14, 15);
	/** The size is never said. */
	private static final Order LATER = new Order(12, 99, 0, 2, 1, 3, 4, 5, 6, 13, 14);
	/** How far the tool is from the wall before it goes in, mm: some way that shows whether the thread is inside. */
	private static final double OFF = 1;

	private final MachineState state;
	private final Flow flow;

	NamedThreads(Flow flow, MachineState state) {
		this.flow = flow;
		this.state = state;
	}

	/** Cuts the thread by its last pass; false where the name is none of these, something is not known, or the machine does not turn. */
	boolean follow(String name, List<Expression> arguments, String text) {
		boolean earlier = name.equals("CYCLE97");
		if (!earlier && !name.equals("CYCLE99") || !state.profile.isLathe()) {
			return false;
		}
		Order order = earlier ? EARLIER : LATER;
		NamedArguments given = new NamedArguments(flow, name, arguments, text);
		double mm = state.unit.mm();
		double kind = given.number(order.kind, Double.NaN);
		boolean inside = kind % 2 == 0;
		double depth = Math.abs(given.number(order.depth)) * mm * (inside ? 1 : -1);
		double start = given.number(order.start) * mm;
		double end = given.number(order.end) * mm;
		double way = Math.signum(end - start);
		Point in = new Point(given.number(order.from) * mm / 2 + depth, 0, start - way * Math.abs(given.number(order.in, 0)) * mm);
		Point to = new Point(given.number(order.to, given.number(order.from)) * mm / 2 + depth, 0, end + way * Math.abs(given.number(order.out, 0)) * mm);
		Optional<Setting> lead = lead(given, order);
		boolean sure = !Double.isNaN(in.x() + in.z() + to.x() + to.z() + kind) && way != 0 && given.number(order.starts, 0) <= 1;
		if (!sure || lead.isEmpty()) {
			return false;
		}
		cut(in, to, lead.get(), inside);
		return true;
	}

	private Optional<Setting> lead(NamedArguments given, Order order) {
		double pitch = given.number(order.pitch);
		if (pitch > 0) {
			return Optional.of(given.setting(order.pitch, "PIT", pitch));
		}
		double lead = StandardPitch.of(Math.abs(given.number(order.size))) / state.unit.mm();
		return lead > 0 ? Optional.of(given.setting(order.size, "MPIT", lead)) : Optional.empty();
	}

	private void cut(Point in, Point to, Setting lead, boolean inside) {
		Frame frame = state.place.frame();
		Point before = state.place.here();
		Point first = frame.apply(in);
		Point last = frame.apply(to);
		double off = inside ? -OFF : OFF;
		Point off1 = first.with(0, first.x() + off);
		Point off2 = last.with(0, last.x() + off);
		Modal modal = state.modal();
		Output out = flow.out();
		out.step(new Step.Move(flow.block(), modal, true, before, off1, 0));
		out.step(new Step.Move(flow.block(), modal, true, off1, first, 0));
		out.step(new Step.Synchronised(flow.block(), modal, 0, first, last, lead, false, 0));
		out.step(new Step.Move(flow.block(), modal, true, last, off2, 0));
		out.step(new Step.Move(flow.block(), modal, true, off2, before, 0));
	}
}
