package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.arithmetic.Value;
import truelead.checker.program.Reason;
import truelead.grammar.ChannelHeader;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/**
 * Statements of richer control languages. Frames are followed as frames of their own; a name that a neighbouring file has is a call; those
 * that move nothing are passed over; the others are reported once a program; drilling and tapping cycles make their holes.
 */
final class RicherStatements {

	/** Characters of a name that are shown. */
	private static final int LONGEST_NAME = 40;

	private static final Set<String> SILENT = Set.of("MSG", "DEF", "PROC", "SAVE", "DISPLOF", "STOPRE", "SUPA", "CFTCP", "CFIN", "CFC", "SOFT", "BRISK", "FFWON", "FFWOF",
			"WORKPIECE", "EXTERN", "FNORM", "TRAFOOF", "TRAORI", "COMPOF", "COMPCAD", "SETMS", "CYCLE832", "RTLION", "RTLIOF", "UPATH", "SPATH", "ORIAXES",
			"ORIWKS", "EXTCALL", "GROUP_BEGIN", "GROUP_END", "DIAMON", "DIAMOF", "LIMS", "STOPATEND");
	private static final Set<String> FRAMES = Set.of("TRANS", "ROT", "SCALE", "MIRROR", "ROTS", "CYCLE800");
	private static final Set<String> ADDED_FRAMES = Set.of("ATRANS", "AROT", "ASCALE", "AMIRROR", "AROTS");
	/** Cycles of lathes that cut to a contour of which they say the name first (from memory). */
	private static final Set<String> CONTOURS = Set.of("CYCLE95", "CYCLE62");
	private static final Set<String> RETURNS = Set.of("RET");

	private final Flow flow;
	private final Calls calls;
	private final MachineState state;

	RicherStatements(Flow flow, Calls calls, MachineState state) {
		this.flow = flow;
		this.calls = calls;
		this.state = state;
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
		if (FRAMES.contains(name)) {
			List<Object> frame = name.equals("CYCLE800") ? written.chars().noneMatch(c -> c >= '1' && c <= '9') ? List.of() : List.of(written) : frame(name, written);
			boolean off = !name.equals("MIRROR") && frame.stream().allMatch(part -> part.equals(0.0) || part instanceof Character);
			state.place.tilt(off || frame.isEmpty() ? List.of() : List.of(name, frame));
		} else if (ADDED_FRAMES.contains(name)) {
			state.place.tiltFurther(name + frame(name, written));
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

	/** What is written behind the name of a frame: addresses and their values, for they tell one frame from another where the words do not, TRANS X=R1*50, ROT RPL=R1*60. */
	private List<Object> frame(String name, String written) {
		List<Object> parts = new ArrayList<>();
		for (Element element : ProgramText.of(written.substring(Math.min(name.length(), written.length()))).block(0).elements()) {
			Value value = element instanceof Element.Word word ? flow.evaluator().value(word.value())
					: element instanceof Element.Assignment named ? flow.evaluator().value(named.value()) : Value.unknown("");
			if (element instanceof Element.Word word && value.known()) {
				parts.add(word.address());
				parts.add(value.number());
			} else if (value.known()) {
				parts.add(value.number());
			} else {
				parts.add(written);
			}
		}
		return parts;
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
				.orElse(Reason.of("the holes of " + written + " are placed in a way that is not followed: check them by hand")), Optional.empty());
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
		String why = shown + " is a statement of a richer control language: such statements are not followed, what they move or change is not checked";
		if (arguments) {
			flow.out().mayCall(flow.block(), name, why);
		} else {
			flow.out().remark(flow.block(), "statement", why, Optional.empty());
		}
	}
}
