package truelead.checker.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.hole.Places;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;
import truelead.checker.tool.ToolLog;

/**
 * Finds runs of moves in and out along one axis among the steps as they come. A run starts with a feed or a synchronised move along the
 * plane's axis or Z, and counts when the tool has come back to where it started or above, or by half the way in rapid, before it moves
 * aside; a plunge that goes on sideways at depth is none.
 */
public final class AxisRuns {

	private static final int MOST_STEPS = 64;
	private static final double SAME = 1e-6;

	private final Consumer<AxisRun> found;
	/** Whether tools drill along X too while the plane is the one that is turned in. */
	private final boolean lathe;
	private ToolLog tool;
	private Modal modal;
	private int axis;
	private int direction;
	private double top;
	private double deepest;
	private double level;
	private Step in;
	private int inOrder;
	private Optional<Step> out = Optional.empty();
	private final List<Step> steps = new ArrayList<>();
	private boolean beforeWasRapid = true;

	/**
	 * @param found gets each run when it has ended
	 * @param lathe whether the machine turns
	 */
	public AxisRuns(Consumer<AxisRun> found, boolean lathe) {
		this.found = found;
		this.lathe = lathe;
	}

	/** A straight or synchronised motion. */
	public void motion(Step step, ToolLog inSpindle, int order) {
		int along = axisOf(step);
		if (along < 0 || !steps.isEmpty() && (along != axis || !sameFrame(step.modal()))) {
			close();
		}
		if (along >= 0) {
			if (steps.isEmpty()) {
				begin(step, along, inSpindle, order);
			} else {
				extend(step, inSpindle, order);
			}
		}
		beforeWasRapid = AxisRun.rapid(step);
	}

	/** Moves aside: the run is over. */
	public void contour(boolean rapid) {
		close();
		beforeWasRapid = rapid;
	}

	/** Something else moves, or the tool changes: the run is over. */
	public void interrupt() {
		close();
		beforeWasRapid = true;
	}

	/** Whether no run has begun. */
	public boolean idle() {
		return steps.isEmpty();
	}

	/** Whether the last motion was a rapid one. */
	public boolean beforeWasRapid() {
		return beforeWasRapid;
	}

	/** Goes on idle behind such a motion. */
	public void resume(boolean rapid) {
		beforeWasRapid = rapid;
	}

	private void begin(Step step, int along, ToolLog inSpindle, int order) {
		double from = AxisRun.from(step).along(along);
		double to = AxisRun.to(step).along(along);
		int way = to > from ? 1 : -1;
		if (AxisRun.rapid(step) || way > 0 && !beforeWasRapid) {
			return;
		}
		tool = inSpindle;
		modal = step.modal();
		axis = along;
		direction = way;
		top = from;
		deepest = to;
		level = to;
		in = step;
		inOrder = order;
		out = Optional.empty();
		steps.add(step);
		if (step instanceof Step.Synchronised synchronised && synchronised.returns()) {
			level = top;
			close();
		}
	}

	private void extend(Step step, ToolLog inSpindle, int order) {
		double to = AxisRun.to(step).along(axis);
		boolean inwards = (to - level) * direction > 0;
		boolean feedIn = inwards && !AxisRun.rapid(step);
		if (inwards && !feedIn && out.isPresent() && cameBack() && (to - deepest) * direction > SAME) {
			// below all that is cut in rapid: the sign of a retract is lost, and the hole is made all the same
			close();
			return;
		}
		if (feedIn && out.isPresent() && cameBack() && !((to - deepest) * direction > SAME)) {
			close();
			begin(step, axis, inSpindle, order);
			return;
		}
		if (!inwards && out.isEmpty() && !AxisRun.rapid(step) && (to - top) * direction < -SAME && direction > 0) {
			steps.clear();
			begin(step, axis, inSpindle, order);
			return;
		}
		if (feedIn && ((to - deepest) * direction > SAME || Double.isNaN(deepest))) {
			deepest = to;
			in = step;
			inOrder = order;
			out = Optional.empty();
		} else if (!inwards && out.isEmpty()) {
			out = Optional.of(step);
		}
		level = to;
		if (steps.size() < MOST_STEPS) {
			steps.add(step);
		}
	}

	private boolean cameBack() {
		return !((level - top) * direction > SAME);
	}

	/** Pulled out in rapid by half the way at least: the first plunge of a row often starts higher than the others. */
	private boolean pulledOut() {
		return AxisRun.rapid(out.get()) && (deepest - level) * direction >= 0.5 * (deepest - top) * direction;
	}

	private void close() {
		if (steps.isEmpty()) {
			return;
		}
		boolean returns = in instanceof Step.Synchronised synchronised && synchronised.returns();
		// a tap that is turned back only part of the way is one all the same
		boolean driven = in instanceof Step.Synchronised goes && goes.drivesTap() && out.filter(Step.Synchronised.class::isInstance)
				.isPresent();
		if (returns || out.isPresent() && (cameBack() || pulledOut() || driven)) {
			found.accept(new AxisRun(inOrder, tool, Places.of(tool.part(), modal, Places.across(axis), AxisRun.to(in)), in,
					out, top, steps));
		}
		steps.clear();
	}

	private boolean sameFrame(Modal now) {
		return now == modal
				|| now.workOffset() == modal.workOffset() && now.frame() == modal.frame() && now.rotary().equals(modal.rotary());
	}

	private int axisOf(Step step) {
		Point from = AxisRun.from(step);
		Point to = AxisRun.to(step);
		boolean x = Double.compare(from.x(), to.x()) != 0;
		boolean y = Double.compare(from.y(), to.y()) != 0;
		boolean z = Double.compare(from.z(), to.z()) != 0;
		if (z && !x && !y) {
			return 2;
		}
		Plane plane = step.modal().plane();
		return x && !y && !z && (plane.axis() == 0 || lathe && plane == Plane.ZX) ? 0 : y && !x && !z && plane.axis() == 1 ? 1 : -1;
	}
}
