package truelead.checker.machine;

/** All that is in force before a block that changes the tool, so that a program can be followed from there on as at the machine. Immutable. */
public final class Restart {

	private final int line;
	private final MachineState state;
	private final boolean rigidByCycle;

	Restart(int line, MachineState state, boolean rigidByCycle) {
		this.line = line;
		this.state = new MachineState(state);
		this.rigidByCycle = rigidByCycle;
	}

	/** The line of the block. */
	public int line() {
		return line;
	}

	/** Whether whatever follows is the same from here as from there, their texts being the same. */
	public boolean same(Restart other) {
		return line == other.line && rigidByCycle == other.rigidByCycle && state.memory().equals(other.state.memory());
	}

	/** Whether the end of the next cycle ends rigid tapping. */
	boolean rigidByCycle() {
		return rigidByCycle;
	}

	/** A state to go on with. */
	MachineState state() {
		return new MachineState(state);
	}
}
