package truelead.checker.machine;

import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import truelead.checker.arithmetic.Conditions;
import truelead.checker.arithmetic.Evaluator;
import truelead.checker.arithmetic.Value;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * Tells of a jump back that the program will make it for ever. Three things tell it: the blocks from there to here were passed one after
 * the other and nothing among them, subprograms included, could have led elsewhere; a pass leaves everything as it was; for {@value #IDLE}
 * jumps no condition has come nearer to turning out otherwise.
 */
final class EndlessLoops {

	private static final int IDLE = 10_000;
	private static final int STOP_WITHIN = 2_000;

	/** The lines where jumps out stand. */
	private final Map<Source, TreeSet<Integer>> waysOut = new HashMap<>();
	private final Deque<CallFrame> frames;
	private final Conditions conditions;
	private final Standstill standstill = new Standstill();
	private int idle;
	private int depth;
	private int from;
	private int to;

	EndlessLoops(Deque<CallFrame> frames, Evaluator evaluator) {
		this.frames = frames;
		this.conditions = new Conditions(evaluator);
	}

	/** What a condition comes to; which way the program goes depends on it. */
	Value condition(Expression condition) {
		unsure();
		boolean nearer = conditions.nearer(condition);
		idle = nearer ? 0 : idle;
		return conditions.value();
	}

	/** Which way the program goes has been decided by something that may be otherwise next time. */
	void decided() {
		unsure();
		idle = 0;
	}

	private void unsure() {
		for (CallFrame frame : frames) {
			frame.straight = frame.line;
		}
	}

	/** Whether a call goes into blocks that have led straight to it. */
	boolean callsItself(Calls.Found found) {
		for (CallFrame frame : frames) {
			if (frame.source == found.source() && frame.straight <= found.start() && found.start() < frame.line
					&& frame.line <= found.end()) {
				return true;
			}
		}
		return false;
	}

	/** Why a jump back to a line will be made for ever, and from which line to which it leads; empty where it may have an end. */
	Optional<String> back(CallFrame frame, int line, int print, List<Supplier<Object>> state) {
		if (frame.straight <= line) {
			return Optional.of(lines(line, frame.line) + " has no end: nothing in it leads out");
		}
		widen(frame, line);
		if (standstill.again(31 * print + frame.line, state)) {
			return Optional.of(lines(to, from) + " has no end: a pass leaves everything as it was, so the next one is the same");
		}
		if (standstill.fresh()) {
			depth = Integer.MAX_VALUE;
		}
		if (++idle > IDLE) {
			return Optional.of(lines(line, frame.line) + " seems to have no end: in " + IDLE
					+ " passes what it asks for has not come nearer");
		}
		return Optional.empty();
	}

	/** Keeps the longest jump back of the outermost program since the state was last kept: the loop that all others are in. */
	private void widen(CallFrame frame, int line) {
		int here = frames.size();
		boolean outer = here < depth || here == depth && frame.line - line > from - to;
		if (outer) {
			depth = here;
			from = frame.line;
			to = line;
		}
	}

	private static String lines(int first, int last) {
		return "the loop from line " + (first + 1) + " to " + last;
	}

	/** A jump to an end of the program was left out, since its condition is not known: a loop about it has an end. */
	void wayOut(CallFrame frame) {
		waysOut.computeIfAbsent(frame.source, source -> new TreeSet<>()).add(frame.line - 1);
	}

	/** Whether such a jump stands between a line and the place where a program stands. */
	boolean leads(CallFrame frame, int line) {
		TreeSet<Integer> out = waysOut.get(frame.source);
		return out != null && line < frame.line && !out.subSet(line, frame.line).isEmpty();
	}

	/** Whether the machine stops for the operator between a line and the place where a program stands. */
	static boolean stops(CallFrame frame, int line, MachineProfile profile) {
		for (int i = Math.max(line, frame.line - STOP_WITHIN); i < frame.line; i++) {
			for (Element.Word word : frame.source.block(i).words()) {
				if (word.address() == 'M' && word.value() instanceof Expression.Number number
						&& profile.mCode(MachineProfile.tenfold(number.value())).contains(Meaning.STOP)) {
					return true;
				}
			}
		}
		return false;
	}
}
