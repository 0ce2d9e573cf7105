package truelead.checker.sheet;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/** The numbers that every thread has, however it is made. Lengths in mm; NaN where not known. */
public interface ThreadSheet {

	/** The block that starts it. */
	BlockRef block();

	/** The tool in the spindle, or in the turret. */
	ToolUse tool();

	/** How the thread is made, in words of the trade. */
	String method();

	/** The thread, and who says so. */
	Optional<Fact<ThreadSpec>> thread();

	/** Spindle speed, rev/min. */
	double speed();

	/** Direction of the spindle, in words. */
	String turning();

	/** The feed as programmed with its mode, or the lead of a synchronised move. */
	String feed();

	/** What feed and speed advance in a turn. */
	double advance();

	/** What the thread needs in a turn: pitch times starts. */
	double lead();

	/** The pitch of the thread; NaN where nothing names one. */
	default double pitch() {
		return thread().map(fact -> fact.value().pitch()).orElse(Double.NaN);
	}
}
