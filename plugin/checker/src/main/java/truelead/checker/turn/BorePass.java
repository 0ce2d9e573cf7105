package truelead.checker.turn;

import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Place;
import truelead.checker.hole.Places;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/**
 * A pass of a lathe's tool along Z beside the axis, which may bore.
 *
 * @param order  number of its step
 * @param radius mm
 * @param inward whether the tool left the wall towards the axis
 * @param relief whether it goes on behind a narrower one, and wider
 */
public record BorePass(int order, ToolLog tool, Step.Move step, double radius, boolean inward, boolean relief) {

	/** The same, left towards the axis or not. */
	BorePass left(boolean towardsAxis) {
		return towardsAxis == inward ? this : new BorePass(order, tool, step, radius, towardsAxis, relief);
	}

	/** The same, wider than the bore before it. */
	BorePass widening() {
		return relief ? this : new BorePass(order, tool, step, radius, inward, true);
	}

	/** Whether it bores the hole in the middle, by what is known of its tool. */
	public boolean bores(ToolUse use) {
		return use.facts().kind().map(kind -> kind.value() == ToolKind.BORING).orElse(inward);
	}

	/** The way along Z that it goes, +1 or -1. */
	public int way() {
		return step.to().z() > step.from().z() ? 1 : -1;
	}

	/** Whether it begins before the face, which is taken for Z0, and goes farther behind it than it comes from. */
	public boolean fromBeforeTheFace() {
		double from = step.from().z();
		double to = step.to().z();
		return from * to <= 0 && Math.abs(to) > Math.abs(from);
	}

	/** The hole in the middle that it leaves. */
	public Cut cut(ToolUse use) {
		Place middle = Places.of(tool.part(), step.modal(), Places.across(2), new Point(0, 0, step.to().z()));
		return new Cut(order, relief ? Cut.Kind.GROOVE : Cut.Kind.BORE, step, use, middle, step.from().z(), step.to().z(), step.to().z(),
				Optional.of(Fact.of(2 * radius, FactSource.PROGRAMMED, "")), 2 * step.resolution());
	}
}
