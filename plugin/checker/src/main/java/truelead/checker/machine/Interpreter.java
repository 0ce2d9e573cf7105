package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.chunk.ChunkFacts;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;

/** Executes a program on a machine profile and hands out what the machine would do, step by step. */
public final class Interpreter {

	private Interpreter() {
	}

	/**
	 * Runs the program from its first block to its end, within the profile's budget; further programs of the file after it, each for
	 * itself.
	 */
	public static void run(ProgramFile program, ProgramFolder folder, MachineProfile profile, StepSink sink) {
		run(program, folder, profile, Budget.of(profile), sink);
	}

	/** The same within a budget. Each program of the file ends with an event that {@linkplain Step.Event#ends() ends} it. */
	public static void run(ProgramFile program, ProgramFolder folder, MachineProfile profile, Budget budget, StepSink sink) {
		run(program, folder, profile, budget, sink, Restarts.UNWATCHED);
	}

	/** The same, and says how it goes on from tool change to tool change. */
	public static void run(ProgramFile program, ProgramFolder folder, MachineProfile profile, Budget budget, StepSink sink,
			Restarts restarts) {
		ChunkFacts.readAll(program.text());
		Source source = new Source(program);
		Set<List<Object>> said = Output.memory();
		Meter meter = new Meter(budget, source.lines());
		Optional<String> foreign = ForeignLanguage.complaint(program.text());
		if (foreign.isPresent()) {
			restarts.winds();
			new Output(sink, new MachineState(profile, true), said).stopped(source.ref(0, Optional.empty(), false), foreign.get(),
					Optional.empty());
			return;
		}
		List<MainPrograms.Part> parts = MainPrograms.of(source);
		if (!straight(parts, source)) {
			restarts.winds();
		}
		Optional<LengthUnit> unit = Optional.empty();
		for (MainPrograms.Part part : parts) {
			MachineState state = new MachineState(profile, part.alone());
			if (part.alone()) {
				// what nothing calls any more was written for the programs beside it
				unit.ifPresent(state::unitSaidBefore);
			}
			new Flow(source, folder, state, new Output(sink, state, said), meter, restarts).run(part.from(), part.to());
			unit = state.unitStated ? Optional.of(state.unit) : unit;
			if (meter.spent()) {
				return;
			}
		}
	}

	/**
	 * Runs a program that {@linkplain #isOne is one} and straight, as {@link Restarts#winds} does not say otherwise, from a restart that
	 * was met in it or in an earlier text of it with the same blocks before.
	 */
	public static void resume(ProgramFile program, ProgramFolder folder, Restart from, Budget budget, StepSink sink, Restarts restarts) {
		Source source = new Source(program);
		MachineState state = from.state();
		Flow flow = new Flow(source, folder, state, new Output(sink, state, from.said()), new Meter(budget, source.lines()), restarts);
		flow.resume(from, source.lines());
	}

	/** Whether a text is one program from its first line to its last, in a language that is followed. */
	public static boolean isOne(ProgramFile program) {
		Source source = new Source(program);
		return straight(MainPrograms.of(source), source) && ForeignLanguage.complaint(program.text()).isEmpty();
	}

	private static boolean straight(List<MainPrograms.Part> parts, Source source) {
		return parts.size() == 1 && parts.get(0).from() == 0 && parts.get(0).to() == source.lines() && !parts.get(0).alone();
	}
}
