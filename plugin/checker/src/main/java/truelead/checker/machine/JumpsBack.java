package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import truelead.checker.arithmetic.Variables;
import truelead.checker.program.BlockRef;
import truelead.checker.program.WordRef;

/** Jumps to a line, and what becomes of one that leads back for ever: the program ends there, where it may go on with a word about it. */
final class JumpsBack {

	private final Flow flow;
	private final MachineState state;
	private final Variables variables;
	private final EndlessLoops endless;
	/** All that later blocks depend on. */
	private final List<Supplier<Object>> memory;
	private Optional<BlockRef> last = Optional.empty();

	JumpsBack(Flow flow, MachineState state, Variables variables, EndlessLoops endless, List<Supplier<Object>> memory) {
		this.flow = flow;
		this.state = state;
		this.variables = variables;
		this.endless = endless;
		this.memory = memory;
	}

	/** The block that jumped back last. */
	Optional<BlockRef> last() {
		return last;
	}

	/** Goes on at a line of the same program, which ends where it would do so for ever. */
	void goTo(CallFrame frame, int line) {
		flow.winds();
		Optional<String> why = forEver(frame, line);
		if (why.isPresent() && EndlessLoops.stops(frame, line, state.profile)) {
			flow.out().remark(flow.block(), "endless", why.get() + " but by the operator, for whom it stops", Optional.empty());
			flow.end(Optional.empty());
		} else if (why.isPresent() && endless.leads(frame, line)) {
			flow.out().remark(flow.block(), "endless", why.get() + " but by a condition that is not known", Optional.empty());
			flow.end(Optional.empty());
		} else if (why.isPresent()) {
			flow.out().stopped(flow.block(), why.get(), Optional.empty());
			flow.stop();
		}
		frame.line = line;
	}

	/** The end of a main program that begins again at a line, part after part; a counted one goes on there. */
	void beginAgain(CallFrame frame, int line, WordRef word) {
		flow.winds();
		if (forEver(frame, line).isPresent()) {
			flow.endProgram(word);
		}
		frame.line = line;
	}

	private Optional<String> forEver(CallFrame frame, int line) {
		if (line >= frame.line) {
			return Optional.empty();
		}
		last = Optional.of(flow.block());
		int print = 31 * (31 * variables.print() + state.place.here().hashCode()) + frame.passesLeft();
		return flow.doubts().statement().isPresent() ? Optional.empty() : endless.back(frame, line, print, memory);
	}
}
