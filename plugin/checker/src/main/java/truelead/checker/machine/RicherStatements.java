package truelead.checker.machine;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Element;
import truelead.grammar.Span;

/**
 * Statements of richer control languages. Frames are followed as frames of their own; a name that a neighbouring file has is a call; those
 * that move nothing are passed over; a branch or loop is passed once, and a thread inside it is said not to be followed; the others are
 * reported once a program.
 */
final class RicherStatements {

	private static final Set<String> SILENT = Set.of("MSG", "DEF", "PROC", "STOPRE", "SUPA", "CFTCP", "CFIN", "CFC", "SOFT", "BRISK", "FFWON", "FFWOF",
			"WORKPIECE", "EXTERN", "RET", "FNORM", "TRAFOOF", "TRAORI", "COMPOF", "COMPCAD", "SETMS", "CYCLE832", "RTLION", "RTLIOF", "UPATH", "SPATH", "ORIAXES",
			"ORIWKS", "EXTCALL", "GROUP_BEGIN", "GROUP_END", "DIAMON", "DIAMOF", "LIMS", "STOPATEND");
	private static final Set<String> FRAMES = Set.of("TRANS", "ROT", "SCALE", "MIRROR", "ROTS", "CYCLE800");
	private static final Set<String> ADDED_FRAMES = Set.of("ATRANS", "AROT", "ASCALE", "AMIRROR", "AROTS");
	private static final Set<String> OPENING = Set.of("IF", "FOR", "WHILE", "LOOP", "REPEAT", "CASE");
	private static final Set<String> CLOSING = Set.of("ENDIF", "ENDFOR", "ENDWHILE", "ENDLOOP", "UNTIL");
	private static final Set<String> BETWEEN = Set.of("ELSE");

	private final Flow flow;
	private final Calls calls;
	private final MachineState state;
	private final Set<String> threading;

	RicherStatements(Flow flow, Calls calls, MachineState state) {
		this.flow = flow;
		this.calls = calls;
		this.state = state;
		this.threading = Set.copyOf(List.of(state.profile.text(ProfileKey.THREADING_STATEMENTS.key()).orElse("").toUpperCase(Locale.ROOT).split("[ ,]+")));
	}

	/** Does what can be done for one element; text is the block's. */
	void follow(Element element, String text) {
		if (element instanceof Element.Statement statement) {
			follow(statement.name(), statement.span(), text);
		} else if (element instanceof Element.Opaque opaque) {
			follow(opaque.name(), opaque.span(), text);
		}
	}

	/** Whether the words behind the statement are machine coordinates. */
	static boolean machineCoordinates(Element element) {
		return element instanceof Element.Opaque opaque && (opaque.name().equals("SUPA") || opaque.name().equals("G153"));
	}

	private void follow(String name, Span span, String text) {
		String written = text.substring(span.start(), span.end());
		if (FRAMES.contains(name)) {
			boolean off = written.chars().noneMatch(c -> c >= '1' && c <= '9');
			state.place.tilt(off ? List.of() : List.of(written));
		} else if (ADDED_FRAMES.contains(name)) {
			state.place.tiltFurther(written);
		} else if (OPENING.contains(name)) {
			state.open(name + " in line " + (flow.block().line() + 1));
		} else if (CLOSING.contains(name)) {
			state.close();
		} else if (threads(name, written)) {
			flow.out().notFollowed(flow.block(), written + " makes threads in a way that is not followed: check them by hand", Optional.empty());
		} else if (!SILENT.contains(name) && !BETWEEN.contains(name) && !calls.statementCall(name)) {
			flow.out().remark(flow.block(), "statement",
					name + " is a statement of a richer control language: such statements are not followed, what they move or change is not checked", Optional.empty());
		}
	}

	private boolean threads(String name, String written) {
		if (threading.contains(name)) {
			return true;
		}
		String rest = written.toUpperCase(Locale.ROOT);
		return name.equals("MCALL") && threading.stream().anyMatch(cycle -> !cycle.isEmpty() && rest.contains(cycle + "("));
	}
}
