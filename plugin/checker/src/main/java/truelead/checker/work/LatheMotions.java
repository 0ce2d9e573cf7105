package truelead.checker.work;

import truelead.checker.machine.Step;
import truelead.checker.tool.ToolLog;

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

	void changed() {
		threads.changed();
	}
}
