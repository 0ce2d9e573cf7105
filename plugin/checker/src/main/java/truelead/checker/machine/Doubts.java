package truelead.checker.machine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;

/**
 * Branches and loops that are passed once, as it is not known whether and how often the machine passes them. What they change is not known
 * behind them.
 */
final class Doubts {

	/** Variables that are remembered; more than any good program sets in a branch. */
	private static final int MOST = 10_000;

	private record Doubt(CallFrame frame, int depth, Structures.Structure structure, String statement, Point here, int workOffset,
			int frameNumber, Setting feed, Setting speed, Setting tool, SpindleTurn spindle, Map<Object, Consumer<String>> forget) {
	}

	/** Where a branch or loop begins. */
	private record Begun(CallFrame frame, int line) {
	}

	private final MachineState state;
	private final Deque<Doubt> open = new ArrayDeque<>();
	/** The same, by where they begin. */
	private final Set<Begun> begun = new HashSet<>();

	Doubts(MachineState state) {
		this.state = state;
	}

	/** A branch or loop begins that is passed once; {@code depth} is that of the local variables. */
	void open(CallFrame frame, Structures.Structure structure, int depth) {
		if (!begun.add(new Begun(frame, structure.open()))) {
			return; // a jump back inside it
		}
		String statement = structure.keyword() + " in line " + (structure.open() + 1);
		open.push(new Doubt(frame, depth, structure, statement, state.place.here(), state.place.workOffset(), state.place.frameNumber(),
				state.feed, state.speed, state.tool, state.spindle, new LinkedHashMap<>()));
		state.unfollowed(Optional.of(statement));
	}

	/** Whether the branch or loop is one of them. */
	boolean holds(CallFrame frame, Structures.Structure structure) {
		return !open.isEmpty() && open.peek().frame == frame && open.peek().structure.open() == structure.open();
	}

	/** The statement of the innermost one that a jump to a line of the same program would leave. */
	Optional<String> leaving(CallFrame frame, int line) {
		return open.stream().filter(doubt -> doubt.frame == frame && !doubt.structure.holds(line)).map(Doubt::statement).findFirst();
	}

	/** The innermost statement in that program itself. */
	Optional<String> inside(CallFrame frame) {
		return open.stream().filter(doubt -> doubt.frame == frame).map(Doubt::statement).findFirst();
	}

	/** The innermost statement in a program or any of its callers; empty where all is sure. */
	Optional<String> statement() {
		return Optional.ofNullable(open.peek()).map(Doubt::statement);
	}

	/** A variable is set; how to forget it again, and why. Local ones of a program called from inside are gone with it. */
	void set(Object variable, boolean local, int depth, Consumer<String> forget) {
		if (!open.isEmpty() && (!local || depth == open.peek().depth) && open.peek().forget.size() < MOST) {
			open.peek().forget.put(variable, forget);
		}
	}

	/** The innermost one ends: what it has changed is not known any more. */
	void settle() {
		Doubt doubt = open.pop();
		begun.remove(new Begun(doubt.frame, doubt.structure.open()));
		String why = "it depends on " + doubt.statement + ", which is not followed";
		boolean elsewhere = doubt.workOffset != state.place.workOffset() || doubt.frameNumber != state.place.frameNumber();
		for (int axis = 0; axis < 3; axis++) {
			if (elsewhere || Double.compare(doubt.here.along(axis), state.place.here().along(axis)) != 0) {
				state.place.lose(axis);
			}
		}
		state.feed = same(doubt.feed, state.feed, why);
		state.speed = same(doubt.speed, state.speed, why);
		state.tool = same(doubt.tool, state.tool, why);
		state.spindle = doubt.spindle == state.spindle ? state.spindle : SpindleTurn.UNKNOWN;
		state.changed();
		doubt.forget.values().forEach(forget -> forget.accept(why));
		doubt.forget.forEach((variable, forget) -> set(variable, false, 0, forget));
		state.unfollowed(statement());
	}

	private static Setting same(Setting before, Setting now, String why) {
		return Double.compare(before.value(), now.value()) == 0 ? now : new Setting(Double.NaN, now.word(), Reason.of(why));
	}

	/** The end of a program: what it has left open ends too. */
	void leave(CallFrame frame) {
		while (!open.isEmpty() && open.peek().frame == frame) {
			settle();
		}
	}
}
