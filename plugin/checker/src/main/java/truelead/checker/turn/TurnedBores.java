package truelead.checker.turn;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Step;
import truelead.checker.run.AxisRun;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/**
 * Finds what a lathe bores: passes along Z beside the spindle's axis, made from the inside. The tool of such a pass is named a boring tool,
 * or nothing is said of it and it leaves the wall towards the axis; one that turns the outside leaves it the other way, at once or behind a
 * neck.
 */
final class TurnedBores {

	private static final int MOST = 10_000;
	/** Passes at most that lie before one neck. */
	private static final int BEFORE_NECK = 16;
	/** Passes at most that are looked back at for what is narrower than a relief. */
	private static final int LOOKED_BACK = 200;
	/** Slope of a cone for a taper thread at most, on the radius: four times that of 1 in 16 on the diameter. */
	private static final double CONE = 1.0 / 8;

	/**
	 * A feed aslant by little, which may bore or turn a cone.
	 *
	 * @param order number of its step
	 */
	record Cone(int order, ToolLog tool, Step.Move step) {

		private double narrowest() {
			return Math.min(Math.abs(step.from().x()), Math.abs(step.to().x()));
		}

		/** Its distance from the axis at the face, which is taken for Z0, mm. */
		private double mouth() {
			return Math.abs(step.from().x()) + slope() * -step.from().z();
		}

		private double slope() {
			return (Math.abs(step.to().x()) - Math.abs(step.from().x())) / (step.to().z() - step.from().z());
		}

		/** Whether it is that of a hole: it is wider at the face than in the depth, and reaches from there to here. */
		private boolean inside() {
			return slope() > 0 && Math.max(step.from().z(), step.to().z()) >= 0 && Math.min(step.from().z(), step.to().z()) < 0;
		}

		/** The hole in the middle that it leaves, with its diameter at the face. */
		Cut cut(ToolUse use) {
			return new BorePass(order, tool, step, mouth(), true, false).cut(use);
		}
	}

	/** Whether the last motion fed the tool straight away from the axis. */
	private boolean plunged;
	private final List<Cone> cones = new ArrayList<>();
	private final List<BorePass> passes = new ArrayList<>();
	private final List<BorePass> open = new ArrayList<>();
	/** Where in the passes those stand that the tool left towards the axis, and has not come back from along the work. */
	private final Deque<Integer> left = new ArrayDeque<>();
	/** Where those stand that the tool left outwards by a feed, and has not come back from: a bore may go on there as a relief. */
	private final Deque<Integer> widened = new ArrayDeque<>();

	/** All passes, in the order of execution. */
	List<BorePass> passes() {
		close(false);
		return passes;
	}

	/** Whether a tool of the part has turned a slender cone that is no wider than a distance from the axis, mm. */
	boolean cone(int part, double radius) {
		return cones.stream().anyMatch(cone -> cone.tool().part() == part && cone.narrowest() <= radius);
	}

	/**
	 * The widest slender cone that is bored in a part before a step, no wider at the face than a distance from the axis, mm; empty where
	 * there is none.
	 */
	Optional<Cone> bored(int part, int before, double radius) {
		return cones.stream().filter(cone -> cone.tool().part() == part && cone.order() < before && cone.inside() && cone.mouth() <= radius)
				.max(Comparator.comparingDouble(Cone::mouth));
	}

	/** A straight motion. */
	void motion(Step.Move move, ToolLog tool, int order) {
		double from = Math.abs(move.from().x());
		double to = Math.abs(move.to().x());
		boolean lost = Double.isNaN(from - to) || !open.isEmpty() && open.get(0).tool() != tool;
		if (lost) {
			// gone home or changed: nobody sees which way it left the wall
			close(false);
			left.clear();
			widened.clear();
		}
		outBehindNeck(move, tool);
		if (Math.abs(from - to) > 1e-6) {
			if (!move.rapid() && cones.size() < MOST && Math.abs(from - to) < CONE * Math.abs(move.to().z() - move.from().z())) {
				cones.add(new Cone(order, tool, move));
			}
			close(to < from);
			relief(move, tool);
			plunged = !move.rapid() && to > from && move.from().z() == move.to().z();
		} else if (!move.rapid() && to > AxisRun.CENTRE_LINE && move.to().z() != move.from().z() && !upToTheFace(move)
				&& passes.size() + open.size() < MOST) {
			BorePass pass = new BorePass(order, tool, move, to, false, false);
			open.add(plunged && belowTheFace(pass) && narrowBefore(pass) ? pass.widening() : pass);
			plunged = false;
		}
	}

	private static boolean belowTheFace(BorePass pass) {
		return pass.step().from().z() * pass.way() > 0;
	}

	/** Whether the bore is narrower where a pass begins that the tool was fed out to: what is wider behind it is a relief. */
	private boolean narrowBefore(BorePass wide) {
		double level = wide.step().from().z();
		boolean narrow = false;
		for (BorePass pass : passes.subList(Math.max(0, passes.size() - LOOKED_BACK), passes.size())) {
			double low = Math.min(pass.step().from().z(), pass.step().to().z());
			double high = Math.max(pass.step().from().z(), pass.step().to().z());
			if (pass.tool().part() == wide.tool().part() && pass.inward() && pass.way() == wide.way() && low < level && high > level) {
				if (pass.radius() > wide.radius() - 1e-6) {
					return false;
				}
				narrow = true;
			}
		}
		return narrow;
	}

	/** Feeding up to the face, as before a chamfer, cuts nothing. */
	private static boolean upToTheFace(Step.Move move) {
		return move.from().z() != 0 && Math.abs(move.to().z()) < 1e-6;
	}

	/** A tool that goes away from the axis farther than a pass before it has come back along the work is no tool inside. */
	private void outBehindNeck(Step.Move move, ToolLog tool) {
		left.removeIf(index -> {
			BorePass pass = passes.get(index);
			boolean back = pass.tool() != tool || (move.to().z() - move.from().z()) * pass.way() < 0;
			boolean out = !back && Math.abs(move.to().x()) > pass.radius() + 1e-6;
			if (out) {
				passes.set(index, pass.left(false));
			}
			return back || out;
		});
	}

	/**
	 * A tool that goes farther in than a pass that it has left outwards, and has not come back along the work, is one inside: the pass
	 * bores, and the wider one behind it is a relief.
	 */
	private void relief(Step.Move move, ToolLog tool) {
		double to = Math.abs(move.to().x());
		boolean inward = to < Math.abs(move.from().x());
		int last = passes.size() - 1;
		widened.removeIf(index -> {
			BorePass pass = passes.get(index);
			boolean gone = pass.tool() != tool || (move.to().z() - move.from().z()) * pass.way() < -1e-6 || !inward && move.rapid();
			boolean inside = !gone && inward && to < pass.radius() - 1e-6;
			if (inside) {
				passes.set(index, pass.left(true));
				left.add(index);
				for (int i = index + 1; i <= last; i++) {
					passes.set(i, passes.get(i).radius() > pass.radius() ? passes.get(i).widening() : passes.get(i));
				}
			}
			return gone || inside;
		});
	}

	private void close(boolean inward) {
		for (BorePass pass : open) {
			passes.add(pass.left(inward));
			(inward ? left : widened).add(passes.size() - 1);
		}
		while (left.size() > BEFORE_NECK) {
			left.remove();
		}
		while (widened.size() > BEFORE_NECK) {
			widened.remove();
		}
		open.clear();
	}
}
