package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.arithmetic.Value;
import truelead.checker.program.Reason;
import truelead.grammar.ChannelHeader;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/**
 * Statements of richer control languages. Shifts are followed as G52 is, other frames as frames of their own; a name that a neighbouring
 * file has is a call; those that move nothing are passed over; the others are reported once a program; drilling and tapping cycles make
 * their holes.
 */
final class RicherStatements {

	/** Characters of a name that are shown. */
	private static final int LONGEST_NAME = 40;

	private static final Set<String> SILENT = Set.of("MSG", "DEF", "PROC", "SAVE", "DISPLOF", "STOPRE", "SUPA", "CFTCP", "CFIN", "CFC",
			"SOFT", "BRISK", "FFWON", "FFWOF", "WORKPIECE", "EXTERN", "FNORM", "TRAFOOF", "TRAORI", "COMPOF", "COMPCAD", "SETMS",
			"CYCLE832", "RTLION", "RTLIOF", "UPATH", "SPATH", "ORIAXES", "ORIWKS", "EXTCALL", "GROUP_BEGIN", "GROUP_END", "DIAMON",
			"DIAMOF", "LIMS", "STOPATEND");
	/** Cycles of lathes that cut to a contour of which they say the name first (from memory). */
	private static final Set<String> CONTOURS = Set.of("CYCLE95", "CYCLE62");
	/** Cycles that face, engrave and mill the outsides of spigots and polygons: no hole for a thread comes of them (from memory). */
	private static final Set<String> OUTSIDE = Set.of("CYCLE60", "CYCLE61", "CYCLE71", "CYCLE76", "CYCLE77", "CYCLE79");
	private static final Set<String> RETURNS = Set.of("RET");

	private final Flow flow;
	private final Calls calls;
	private final MachineState state;
	private final NamedFrames frames;

	RicherStatements(Flow flow, Calls calls, MachineState state) {
		this.flow = flow;
		this.calls = calls;
		this.state = state;
		this.frames = new NamedFrames(flow, state);
	}

	/** Does what can be done for one element; text is the block's. */
	void follow(CallFrame frame, Element element, String text) {
		if (element instanceof Element.Statement statement) {
			follow(statement.name(), statement.arguments(), statement.repeats(), statement.span(), text);
		} else if (element instanceof Element.Opaque opaque && !ChannelHeader.names(opaque.name()) && !ChannelHeader.waits(opaque.name())) {
			follow(opaque.name(), List.of(), Optional.empty(), opaque.span(), text);
		} else if (element instanceof Element.ModalCall call) {
			modal(call, text);
		} else if (element instanceof Element.Repetition again) {
			calls.richer().repeat(frame, again);
		} else if (element instanceof Element.Definition definition) {
			calls.richer().define(definition);
		} else if (element instanceof Element.Procedure procedure) {
			calls.richer().head(frame, procedure);
		} else if (element instanceof Element.Control control) {
			flow.out().notFollowed(flow.block(), control.keyword() + " has no statement here that it belongs to", Optional.empty());
		}
	}

	/** Whether the words behind the statement are machine coordinates. */
	static boolean machineCoordinates(Element element) {
		return element instanceof Element.Opaque opaque && (opaque.name().equals("SUPA") || opaque.name().equals("G153"));
	}

	private void follow(String name, List<Expression> arguments, Optional<Expression> repeats, Span span, String text) {
		String written = text.substring(span.start(), span.end());
		if (frames.follow(name, written)) {
			return;
		} else if (RETURNS.contains(name)) {
			calls.returns().returned();
		} else if (calls.named().follow(name, arguments, span, text)) {
			return;
		} else if (CONTOURS.contains(name) && state.profile.isLathe() && calls.richer().contour(arguments)) {
			return;
		} else if (state.profile.threads(name)) {
			threads(written, arguments);
		} else if (!SILENT.contains(name) && !calls.richer().call(name, arguments, repeats)) {
			if (calls.named().modal() && (NamedPlaces.of(name) || name.startsWith("CYCLE") && !arguments.isEmpty())) {
				places(written, arguments);
			} else {
				notFollowed(name, !arguments.isEmpty());
			}
		}
	}

	private void modal(Element.ModalCall call, String text) {
		calls.named().off();
		if (calls.named().modal(call.name(), call.arguments(), call.span(), text)) {
			return;
		}
		if (state.profile.threads(call.name())) {
			threads(text.substring(call.span().start(), call.span().end()), call.arguments());
		} else if (!calls.richer().modal(call)) {
			notFollowed(call.name(), true);
		}
	}

	private void threads(String written, List<Expression> arguments) {
		flow.out().notFollowed(flow.block(), unknown(arguments).map(why -> why.behind(written + " makes threads and cannot be followed"))
				.orElse(Reason.of(written + " makes threads in a way that is not followed: check them by hand")), Optional.empty());
	}

	/** A pattern under a cycle in force. */
	private void places(String written, List<Expression> arguments) {
		flow.out().notFollowed(flow.block(), unknown(arguments).map(why -> why.behind("the holes of " + written + " cannot be followed"))
				.orElse(Reason.of("the holes of " + written + " are placed in a way that is not followed: check them by hand")),
				Optional.empty());
	}

	/** Why the first argument is not known that is not; empty where all are. */
	private Optional<Reason> unknown(List<Expression> arguments) {
		for (Expression argument : arguments) {
			boolean number = !(argument instanceof Expression.Missing) && !(argument instanceof Expression.Text);
			Value value = number ? flow.evaluator().value(argument).inArithmetic() : Value.ZERO;
			if (!value.known()) {
				return Optional.of(value.why());
			}
		}
		return Optional.empty();
	}

	/** Once a program, and those with arguments, which may be calls, once a tool and name besides. */
	private void notFollowed(String name, boolean arguments) {
		String shown = name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) + "..." : name;
		String why =
				shown + " is a statement of a richer control language: such statements are not followed, what they move or change is "
				+ "not checked";
		if (arguments && !OUTSIDE.contains(name)) {
			flow.out().mayCall(flow.block(), name, why);
		} else {
			flow.out().remark(flow.block(), "statement", why, Optional.empty());
		}
	}
}
