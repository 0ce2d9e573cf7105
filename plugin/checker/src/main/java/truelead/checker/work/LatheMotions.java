package truelead.checker.work;

import java.util.List;
import truelead.checker.comment.Commentary;
import truelead.checker.hole.Holes;
import truelead.checker.machine.Step;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/** What a lathe's tools do beside the axis: bore, chase threads, turn the outside. Other machines make nothing of the kind. */
final class LatheMotions {

	final TurnedBores bores = new TurnedBores();
	final SinglePoints threads = new SinglePoints();
	final TurnedOutside outside = new TurnedOutside();
	private final boolean lathe;

	LatheMotions(boolean lathe) {
		this.lathe = lathe;
	}

	void move(Step.Move move, ToolLog tool, int order) {
		if (lathe) {
			bores.motion(move, tool, order);
			threads.motion(move);
			outside.motion(move, tool, order);
		}
	}

	void arc(Step.Arc arc, ToolLog tool, int order) {
		if (lathe) {
			outside.arc(arc, tool, order);
		}
	}

	void synchronised(Step.Synchronised move, ToolLog tool, int order) {
		if (lathe) {
			threads.motion(move, tool, order);
		}
	}

	/** The threads cut by a single point, with what they are cut in or on. */
	List<SinglePoint> named(List<ToolUse> uses, Commentary commentary, Stays stays, ToolBook book, Holes holes, List<TimedEvent> events) {
		return threads.named(uses, commentary, stays, book, new Found(holes, bores, outside, new AnotherPart(lathe, events)));
	}

	/** What threads are cut in or on, and where another end of the part is. */
	record Found(Holes holes, TurnedBores bores, TurnedOutside outside, AnotherPart parts) {
	}

	void changed() {
		threads.changed();
	}
}
