package truelead.checker.sheet;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;

/**
 * A threading operation in numbers. Lengths in mm; NaN where not known.
 *
 * @param operation the operation itself
 * @param method    how the thread is made, in words of the trade: {@code tapping cycle G84}
 * @param thread    the thread, and who says so
 * @param limits    the limits of the class called out, or of the usual class; empty for a thread outside
 * @param unit      the program's unit there
 * @param speed     spindle speed, rev/min
 * @param turning   direction of the spindle, in words
 * @param feed      the feed as programmed with its mode, or the lead of a synchronised move
 * @param advance   what feed and speed advance in a turn; of a helix its rise in a turn
 * @param lead      what the thread needs in a turn: pitch times starts
 * @param turns     turns in the material, from the top of the hole to the tool's end; of a helix all of it
 * @param depth     depth of thread called out, in words with its origin; empty where nobody says
 * @param called    the same, mm
 * @param wall      thickness of the wall, mm
 * @param through   whether the hole goes through; empty where not known
 * @param leadLength length of the tool's lead that forms no full thread
 * @param cutDiameter diameter a thread mill's edge reaches; NaN for taps
 * @param holes     the holes, in the order first reached
 */
public record OperationSheet(ThreadingOperation operation, String method, Optional<Fact<ThreadSpec>> thread, Optional<Limits> limits,
		LengthUnit unit, double speed, String turning, String feed, double advance, double lead, double turns, String depth, double called,
		double wall, Optional<Boolean> through, double leadLength, double cutDiameter, List<HoleSheet> holes) implements ThreadSheet {

	public OperationSheet {
		holes = List.copyOf(holes);
	}

	@Override
	public int index() {
		return operation.index();
	}

	@Override
	public ToolUse tool() {
		return operation.tool();
	}

	@Override
	public BlockRef block() {
		return operation.block();
	}

	@Override
	public boolean outside() {
		return isOutside(operation);
	}

	/** Whether an operation mills the thread of a boss. */
	static boolean isOutside(ThreadingOperation operation) {
		return operation instanceof ThreadMilling milling && milling.passes().get(0).external();
	}

	/** Whether the length of the tool's lead, and so the end of the full thread, is only what is usual for such a tool. */
	public boolean leadAssumed() {
		return leadLength > 0 && tool().facts().leadTurns().filter(Fact::stated).isEmpty();
	}

	/** What is not known, one sentence each. */
	public List<String> notKnown() {
		return operation.notEvaluated().stream().map(one -> "line " + (one.block().line() + 1) + ": " + one.why().words())
				.distinct().toList();
	}
}
