package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Executes a program on a machine profile and hands out what the machine would do, step by step. */
public final class Interpreter {

	private Interpreter() {
	}

	/** Runs the program from its first block to its end, within the profile's budget; further programs of the file after it, each for itself. */
	public static void run(ProgramFile program, ProgramFolder folder, MachineProfile profile, StepSink sink) {
		run(program, folder, profile, Budget.of(profile), sink);
	}

	/** The same within a budget. Each program of the file ends with a {@link Step.EventKind#PROGRAM_END}. */
	public static void run(ProgramFile program, ProgramFolder folder, MachineProfile profile, Budget budget, StepSink sink) {
		Source source = new Source(program);
		Set<List<Object>> said = Output.memory();
		Meter meter = new Meter(budget, source.lines());
		Optional<String> foreign = ForeignLanguage.complaint(program.text());
		if (foreign.isPresent()) {
			new Output(sink, new MachineState(profile, true), said).stopped(source.ref(0, Optional.empty(), false), foreign.get(), Optional.empty());
			return;
		}
		for (MainPrograms.Part part : MainPrograms.of(source)) {
			MachineState state = new MachineState(profile, part.alone());
			new Flow(source, folder, state, new Output(sink, state, said), meter).run(part.from(), part.to());
			if (meter.spent()) {
				return;
			}
		}
	}
}
