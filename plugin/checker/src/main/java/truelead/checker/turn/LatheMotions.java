package truelead.checker.turn;

import java.util.List;
import java.util.function.IntUnaryOperator;
import truelead.checker.comment.Commentary;
import truelead.checker.hole.Holes;
import truelead.checker.machine.Step;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolBook;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/** What a lathe's tools do beside the axis: bore, chase threads, turn the outside. Other machines make nothing of the kind. */
public final class LatheMotions {

	private final TurnedBores bores = new TurnedBores();
	private final SinglePoints threads = new SinglePoints();
	private final TurnedOutside outside = new TurnedOutside();
	private final boolean lathe;

	/** @param lathe whether the machine turns; for others all is left out */
	public LatheMotions(boolean lathe) {
		this.lathe = lathe;
	}

	/** A straight motion, of which {@code order} is the number. */
	public void move(Step.Move move, ToolLog tool, int order) {
		if (lathe) {
			bores.motion(move, tool, order);
			threads.motion(move);
			outside.motion(move, tool, order);
		}
	}

	/** An arc. */
	public void arc(Step.Arc arc, ToolLog tool, int order) {
		if (lathe) {
			outside.arc(arc, tool, order);
		}
	}

	/** A motion in step with the spindle. */
	public void synchronised(Step.Synchronised move, ToolLog tool, int order) {
		if (lathe) {
			threads.motion(move, tool, order);
		}
	}

	/**
	 * The threads cut by a single point, with what they are cut in or on.
	 *
	 * @param turned the number of the last stop before a step at which the part may be turned; -1 for none
	 */
	public List<SinglePoint> named(List<ToolUse> uses, Commentary commentary, Stays stays, ToolBook book, Holes holes,
			IntUnaryOperator turned) {
		return threads.named(uses, commentary, stays, book, new Found(holes, bores, outside, turned));
	}

	/** Passes that bore holes in the middle, in the order of execution. */
	public List<BorePass> bored() {
		return bores.passes();
	}

	/** Whether the tool of a stay cuts a thread. */
	public boolean threadsWith(int stay) {
		return threads.cutBy(stay);
	}

	/** Where tools cut across to the middle, or to the hole there. */
	public List<Parting> partings() {
		return outside.partings();
	}

	/** What threads are cut in or on, and where another end of the part is. */
	record Found(Holes holes, TurnedBores bores, TurnedOutside outside, IntUnaryOperator turned) {
	}

	/** Another tool comes. */
	public void changed() {
		threads.changed();
		outside.changed();
	}
}
