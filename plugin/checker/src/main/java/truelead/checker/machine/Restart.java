package truelead.checker.machine;

import java.util.List;
import java.util.Set;

/** All that is in force before a block, so that a program can be followed from there on as at the machine. Immutable. */
public final class Restart {

	private final int line;
	private final MachineState state;
	private final CannedCycles.Kept cycle;
	private final Set<List<Object>> said;
	private final int saidBefore;

	/** @param said what the run has said so far; it may say more */
	Restart(int line, MachineState state, CannedCycles.Kept cycle, Set<List<Object>> said) {
		this.said = said;
		this.saidBefore = said.size();
		this.line = line;
		this.state = new MachineState(state);
		this.cycle = cycle;
	}

	/** The line of the block. */
	public int line() {
		return line;
	}

	/** Whether whatever follows is the same from here as from there, their texts being the same. */
	public boolean same(Restart other) {
		return line == other.line && cycle.equals(other.cycle) && state.memory().equals(other.state.memory());
	}

	/** The cycle in force. */
	CannedCycles.Kept cycle() {
		return cycle;
	}

	/** What a run up to here has said. */
	Set<List<Object>> said() {
		Set<List<Object>> before = Output.memory();
		said.stream().limit(saidBefore).forEach(before::add);
		return before;
	}

	/** A state to go on with. */
	MachineState state() {
		return new MachineState(state);
	}
}
