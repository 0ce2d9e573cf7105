package truelead.checker.machine;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import truelead.checker.program.Plane;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/**
 * Drilling and tapping cycles that are called by name with arguments in their order, once or behind every motion, and rows and circles of
 * places for them. The order is that of the controls' open programming documents (from memory): return plane, reference plane, room, depth,
 * depth from the reference plane, then what the cycle wants of its own. In the plane that a lathe turns in they work along Z. One whose
 * planes, depth or pitch are left out or not known is not followed.
 */
final class NamedCycles {

	private static final Map<String, Cycle.Kind> KINDS = Map.of("CYCLE81", Cycle.Kind.DRILL, "CYCLE82", Cycle.Kind.DRILL, "CYCLE83",
			Cycle.Kind.PECK_DRILL, "CYCLE84", Cycle.Kind.TAP, "CYCLE840", Cycle.Kind.TAP, "CYCLE85", Cycle.Kind.BORE_FEED_OUT, "CYCLE86",
			Cycle.Kind.BORE, "CYCLE87", Cycle.Kind.BORE, "CYCLE88", Cycle.Kind.BORE, "CYCLE89", Cycle.Kind.BORE_FEED_OUT);
	private static final int MOST_PLACES = 10_000;

	/** A call whose arguments are known; levels in programmed coordinates, mm. */
	private record Call(Cycle cycle, double back, double level, double bottom, Optional<NamedLead> lead) {
	}

	private final Flow flow;
	private final MachineState state;
	private final NamedThreads threads;
	private Optional<Call> modal = Optional.empty();

	NamedCycles(Flow flow, MachineState state) {
		this.threads = new NamedThreads(flow, state);
		this.flow = flow;
		this.state = state;
	}

	/** Whether every motion makes a hole. */
	boolean modal() {
		return modal.isPresent();
	}

	/** What later blocks depend on. */
	Object memory() {
		return modal;
	}

	/** Makes the hole, or the places under the cycle in force; false where the name is none of these or something is not known. */
	boolean follow(String name, List<Expression> arguments, Span span, String text) {
		if (modal.isPresent() && NamedPlaces.of(name)) {
			NamedArguments given = new NamedArguments(flow, name, arguments, text);
			List<Point> places = NamedPlaces.places(given, state.unit.mm(), state.place.programmed());
			places.stream().limit(MOST_PLACES).forEach(place -> stroke(modal.get(), place, false));
			return !places.isEmpty() && places.size() <= MOST_PLACES;
		}
		if (threads.follow(name, arguments, text)) {
			return true;
		}
		Optional<Call> call = call(name, arguments, span, text);
		call.ifPresent(known -> {
			stroke(known, state.place.programmed(), true);
			flow.out().event(flow.block(), Step.EventKind.CYCLE_CANCELLED, Optional.empty(), Setting.NONE);
		});
		return call.isPresent();
	}

	/** From now on every motion makes a hole; false where that is not known. */
	boolean modal(String name, List<Expression> arguments, Span span, String text) {
		off();
		modal = call(name, arguments, span, text);
		return modal.isPresent();
	}

	/** No motion makes a hole any more. */
	void off() {
		if (modal.isPresent()) {
			flow.out().event(flow.block(), Step.EventKind.CYCLE_CANCELLED, Optional.empty(), Setting.NONE);
		}
		modal = Optional.empty();
	}

	/** A block has moved. */
	void moved() {
		modal.ifPresent(call -> stroke(call, state.place.programmed(), false));
	}

	private Optional<Call> call(String name, List<Expression> arguments, Span span, String text) {
		if (!KINDS.containsKey(name) || state.plane != Plane.XY && !turnedIn()) {
			return Optional.empty();
		}
		NamedArguments given = new NamedArguments(flow, name, arguments, text);
		double mm = state.unit.mm();
		double back = given.number(0) * mm;
		double reference = given.number(1) * mm;
		double level = reference + Math.abs(given.number(2)) * mm;
		double bottom = given.said(4) ? reference - Math.abs(given.number(4)) * mm : given.number(3) * mm;
		Cycle.Kind kind = KINDS.get(name);
		// a depth above the reference plane makes no hole; of a thread that is said
		boolean sure = back >= level && (bottom < reference || kind.taps() && !Double.isNaN(bottom));
		Optional<NamedLead> lead = kind.taps() ? NamedLead.of(given, state) : Optional.empty();
		if (!sure || kind.taps() && lead.isEmpty()) {
			return Optional.empty();
		}
		// behind MCALL
		int start = Math.max(span.start(), text.toUpperCase(Locale.ROOT).indexOf(name, span.start()));
		WordRef word = new WordRef(flow.block(), 'C', new Span(start, start + name.length()), 0, false, name);
		int code = 10 * Integer.parseInt(name.substring(5, 7));
		boolean left = lead.map(NamedLead::left).orElse(false);
		return Optional.of(new Call(new Cycle(left ? Cycle.Kind.TAP_LEFT : kind, code, flow.block(), word, Map.of()), back, level,
				bottom, lead));
	}

	/** Whether the plane is the one that a lathe turns in, where these cycles work along Z on its centre line. */
	private boolean turnedIn() {
		return state.plane == Plane.ZX && state.profile.isLathe();
	}

	/** The plane that a stroke along Z is across to. */
	private void alongZ(Plane plane) {
		if (state.plane != plane) {
			state.plane = plane;
			state.changed();
		}
	}

	private void stroke(Call call, Point programmed, boolean positioned) {
		Frame frame = state.place.frame();
		Point at = frame.apply(programmed.with(2, call.level));
		double bottom = frame.apply(programmed.with(2, call.bottom)).z();
		double back = frame.apply(programmed.with(2, call.back)).z();
		if (call.cycle.kind().taps() && (Double.isNaN(at.x()) || Double.isNaN(at.y()))) {
			flow.out().notFollowed(flow.block(), "the place of the thread is not known", Optional.empty());
		}
		state.unfollowed().filter(statement -> call.cycle.kind().taps())
				.ifPresent(statement -> flow.out().notFollowed(flow.block(), "whether this thread is made, and how often, depends on "
						+ statement + ", which is not followed", Optional.of(call.cycle.gWord())));
		Plane plane = state.plane;
		alongZ(Plane.XY);
		Modal in = call.lead.map(lead -> lead.in(state)).orElse(state.modal());
		alongZ(plane);
		flow.out().step(new Step.Stroke(flow.block(), in, call.cycle, at, back, at.z(), bottom, positioned, 1, 0));
		state.place.moveTo(at.with(2, back));
		call.lead.ifPresent(lead -> lead.behind(state));
	}
}
