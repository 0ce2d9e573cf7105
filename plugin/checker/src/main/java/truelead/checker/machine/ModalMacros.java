package truelead.checker.machine;

import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.arithmetic.Value;

/**
 * The macros that run behind every motion, G66 until G67. Of several in force the one said last runs behind the motions of the program, the
 * one said before it behind the motions of that one, and so on; G67 ends the one said last (from memory). One that is said again takes the
 * place of itself, as where G67 was left out between two depths (common practice, no source).
 */
final class ModalMacros {

	/** A macro and what it is given. */
	record Macro(CalledPrograms.Callee program, Map<Integer, Value> arguments) {
	}

	private static final int DEEPEST = 16;

	private final Deque<CallFrame> frames;
	private final List<Macro> inForce = new ArrayList<>();
	/** The frames in which macros in force run, by their place among them. */
	private final Map<Integer, CallFrame> running = new HashMap<>();

	ModalMacros(Deque<CallFrame> frames) {
		this.frames = frames;
	}

	/** From now on a macro runs behind every motion. */
	void on(CalledPrograms.Callee program, Map<Integer, Value> arguments) {
		Macro macro = new Macro(program, arguments);
		for (int i = 0; i < inForce.size(); i++) {
			if (inForce.get(i).program.equals(program)) {
				inForce.set(i, macro);
				return;
			}
		}
		if (inForce.size() < DEEPEST) {
			inForce.add(macro);
		}
	}

	/** The one said last runs no longer. */
	void off() {
		if (!inForce.isEmpty()) {
			inForce.remove(inForce.size() - 1);
			running.remove(inForce.size());
		}
	}

	/** Whether any is in force. */
	boolean on() {
		return !inForce.isEmpty();
	}

	/** The macro that runs behind a motion here; empty where none does. */
	Optional<Macro> behindMotion() {
		int next = innermost() - 1;
		return next >= 0 ? Optional.of(inForce.get(next)) : Optional.empty();
	}

	/** The place of the one that runs innermost, how many there are where none runs. */
	private int innermost() {
		for (int i = 0; i < inForce.size(); i++) {
			if (running.containsKey(i) && frames.contains(running.get(i))) {
				return i;
			}
		}
		return inForce.size();
	}

	/** A macro runs in a frame. */
	void entered(Macro macro, CallFrame frame) {
		running.put(inForce.indexOf(macro), frame);
	}

	/** All that later blocks depend on. */
	Object memory() {
		return List.of(List.copyOf(inForce), innermost());
	}
}
