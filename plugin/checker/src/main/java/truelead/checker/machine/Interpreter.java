package truelead.checker.machine;

/** Executes a program on a machine profile and hands out what the machine would do, step by step. */
public final class Interpreter {

	private Interpreter() {
	}

	/** Runs the program from its first block to its end. */
	public static void run(ProgramFile program, ProgramFolder folder, MachineProfile profile, StepSink sink) {
		throw new UnsupportedOperationException("lands with the machine room");
	}
}
