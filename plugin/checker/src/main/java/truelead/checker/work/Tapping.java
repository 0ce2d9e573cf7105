package truelead.checker.work;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Hole;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Cycle;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Plane;
import truelead.checker.stroke.Strokes;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Wanted;

/**
 * Tapping, one cycle's places or one run of moves in and out. Strokes made by the same block under the same tool, by a loop or several
 * calls, are one operation.
 *
 * @param cycle   the canned cycle; empty for moves. Where later blocks change its words, each stroke's own step has the cycle in force
 * @param strokes in the order of execution; empty only for a cycle that is defined (L0, or no place known) and never runs
 * @param strays  strokes of the same cycle left on: run again after another tool change
 * @param leftOn  what happened while the cycle was still on, see {@link LeftOn}
 */
public record Tapping(int index, int group, Method method, ToolUse tool, BlockRef block, Optional<Cycle> cycle, Strokes strokes,
		Strokes strays, List<LeftOn> leftOn, Wanted wanted, int firstOrder, int lastOrder, List<NotEvaluated> notEvaluated)
		implements ThreadingOperation {

	/** How the tap is led. */
	public enum Method {
		/** A tapping cycle: G84, G74; or G85, which feeds in and out, with a self-reversing head. */
		CYCLE,
		/** A synchronised move in, spindle reversal, a synchronised move out: G33 and G33, G32 and G32, G331 and G332. */
		SYNCHRONISED,
		/** One block in and out: G33.1, G63. */
		SYNCHRONISED_BLOCK,
		/** G1 in, spindle reversal, G1 out, by a tool that is called a tap. */
		FEED,
		/** A tool that is called a tap in a drilling or boring cycle, or fed in and pulled out in rapid. */
		DRILLING_CYCLE,
		/** A tool that is called a drill, a reamer or a mill in a tapping cycle. */
		WRONG_TOOL;

		/** Whether the tap is led by the pitch in the ordinary way: neither torn out nor no tap at all. */
		public boolean taps() {
			return this != DRILLING_CYCLE && this != WRONG_TOOL;
		}

		/** Whether the feed comes from K or F of a synchronised move as against F and S. */
		public boolean synchronised() {
			return this == SYNCHRONISED || this == SYNCHRONISED_BLOCK;
		}
	}

	/** What happened while a tapping cycle was on. */
	public enum Met {
		TOOL_CHANGE, SPINDLE_STOP, PROGRAM_END
	}

	/** Something met with the cycle still on, and where. */
	public record LeftOn(Met met, BlockRef block, int order) {
	}

	public Tapping {
		leftOn = List.copyOf(leftOn);
		notEvaluated = List.copyOf(notEvaluated);
	}

	/**
	 * The level of the top of a stroke's hole, mm: as said, or of its own where the strokes start at several levels and the R plane of one
	 * would be taken for all.
	 */
	public Fact<Double> surface(TapStroke stroke) {
		boolean guessed = wanted.surface().source() == FactSource.IMPLIED && stroke.place().plane() == Plane.XY;
		return guessed && strokes.typical().stream().anyMatch(other -> Double.compare(other.start(), stroke.start()) != 0)
				? Surfaces.of(stroke) : wanted.surface();
	}

	/** What the tap is led along its axis in a turn at the first stroke, mm; NaN where it is not known. */
	public double advance() {
		return strokes.isEmpty() ? Double.NaN : strokes.get(0).advance();
	}

	@Override
	public List<Hole> holes() {
		return strokes.holes();
	}
}
