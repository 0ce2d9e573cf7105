package truelead.checker.machine;

import java.util.Deque;
import truelead.grammar.ProgramText;

/**
 * Tells whoever wants to know of the blocks from which on the program can be followed again: before tool changes, and one of the first of
 * each chunk.
 */
final class RestingPlaces {

	/** Lines of a chunk before one of which all has to be at rest, so that the tool's stay can be followed again from there. */
	private static final int WITHIN = 64;

	private final Restarts restarts;
	private final MachineState state;
	private final Output out;
	private final BlockExecutor executor;
	private final Refrains refrains;
	private final Calls calls;
	private final Deque<CallFrame> frames;
	/** The line from which on the next place is looked for where all is at rest. */
	private int next = Integer.MAX_VALUE;

	RestingPlaces(Restarts restarts, MachineState state, Output out, BlockExecutor executor, Refrains refrains, Calls calls,
			Deque<CallFrame> frames) {
		this.restarts = restarts;
		this.state = state;
		this.out = out;
		this.executor = executor;
		this.refrains = refrains;
		this.calls = calls;
		this.frames = frames;
	}

	/** The program is followed from a line on. */
	void from(int line) {
		next = restarts.watched() ? nextChunk(line) : Integer.MAX_VALUE;
	}

	/** Whether the run ends before the line at which the program stands, the first at rest in its chunk. */
	boolean endsAt(CallFrame frame) {
		return frame.line >= next && rests(frame);
	}

	private boolean rests(CallFrame frame) {
		ProgramText text = text();
		boolean still = frames.size() == 1 && restarts.resting() && executor.atRest() && refrains.atRest() && !calls.modal()
				&& state.place.oneFrame();
		if (still || frame.line >= text.firstLine(text.chunkOfLine(frame.line)) + WITHIN) {
			next = nextChunk(frame.line);
		}
		return still && restarts.rests(here(frame.line));
	}

	private int nextChunk(int line) {
		int chunk = text().chunkOfLine(line) + 1;
		return chunk < text().chunks().size() ? text().firstLine(chunk) : Integer.MAX_VALUE;
	}

	private ProgramText text() {
		return calls.main().file().text();
	}

	private Restart here(int line) {
		return new Restart(line, state, executor.cycle(), out.said());
	}

	/** Whether the run ends before a block that changes the tool. */
	boolean endsBefore(Words words) {
		return restarts.watched() && executor.changesTool(words, calls::toolWordChanges) && executor.atRest() && !executor.onCycle()
				&& state.place.oneFrame() && restarts.before(here(words.block().line()));
	}

	/** The program does not go straight on. */
	void winds() {
		restarts.winds();
	}
}
