package truelead.checker.machine;

import truelead.checker.chunk.ChunkFacts;
import truelead.checker.chunk.PlaceRun;
import truelead.checker.program.BlockRef;

/** Goes over the rows of places under a canned cycle in one step each, where the state lets their words mean what they say. */
final class Rows {

	private final MachineState state;
	private final CannedCycles cycles;
	private final Meter meter;
	private final boolean possible;
	private final Stretches<PlaceRun> runs = new Stretches<>((text, chunk) -> ChunkFacts.of(text.chunks().get(chunk)).places(),
			PlaceRun::from);

	Rows(MachineState state, CannedCycles cycles, Meter meter) {
		this.state = state;
		this.cycles = cycles;
		this.meter = meter;
		this.possible = state.asWritten() && !state.alone;
	}

	/** Goes over the row that begins where a program stands; false where none does, or something forbids it, and nothing is done. */
	boolean follow(CallFrame frame, boolean skippable) {
		if (!possible || !cycles.on() || !state.motion.cycle() || !runs.beginsAt(frame)) {
			return false;
		}
		PlaceRun run = runs.here();
		BlockRef block = frame.source.ref(frame.line, frame.caller, skippable);
		int behind = frame.line + run.count();
		boolean plain = state.absolute && state.place.frame().same() && behind <= frame.end;
		if (!plain || !cycles.takesRows() || run.says() && !cycles.saidAgainBefore(block) || !known(run) || !meter.next(run.count())) {
			return false;
		}
		cycles.row(block, run);
		frame.passedTo(behind);
		return true;
	}

	/** Whether the first place is known, and with it all. */
	private boolean known(PlaceRun run) {
		Point here = state.place.here();
		return (!Double.isNaN(run.x(0)) || !Double.isNaN(here.x())) && (!Double.isNaN(run.y(0)) || !Double.isNaN(here.y()));
	}
}
