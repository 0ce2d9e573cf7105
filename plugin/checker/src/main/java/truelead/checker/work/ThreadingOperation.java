package truelead.checker.work;

import java.util.List;
import truelead.checker.hole.Hole;
import truelead.checker.program.BlockRef;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Wanted;

/** One threading operation: a tool that makes, or tries to make, one kind of thread at one or more places. */
public sealed interface ThreadingOperation permits Tapping, ThreadMilling {

	/** Number of the operation in the program, from 0, in the order of execution. */
	int index();

	/** The tool in the spindle. */
	ToolUse tool();

	/** The block that starts it: the cycle's, the first stroke's, or the first helix arc's. */
	BlockRef block();

	/** What is wanted, and who says so. */
	Wanted wanted();

	/**
	 * Number shared by the operations of one tool stay that one callout covers: several G84 blocks under {@code (4X M6)} are one group. See
	 * {@link Work#group(ThreadingOperation)}.
	 */
	int group();

	/** The holes threaded, each once, in the order first reached. */
	List<Hole> holes();

	/** Number of its first step in the order of execution. */
	int firstOrder();

	/** Number of its last step in the order of execution. */
	int lastOrder();

	/** Why some of it could not be evaluated, one sentence each; empty where all of it is known. */
	List<NotEvaluated> notEvaluated();
}
