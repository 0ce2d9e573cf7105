package truelead.checker.pass;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.hole.Place;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Setting;

/**
 * Numbers the shapes of thread mill passes: those of one shape have the same motions about their places, under states that differ in the
 * words that set them alone. Positions are told apart by a ten-millionth of a millimetre, which is less than anything that is written.
 */
final class PassShapes {

	private static final double FINEST = 1e-7;
	/** Most operations have few of what is numbered. */
	private static final int FEW = 4;

	private final Map<List<Object>, Integer> shapes = new HashMap<>();
	private final Map<Pass, Integer> known = new IdentityHashMap<>(FEW);
	private final Map<Modal, Integer> modals = new IdentityHashMap<>(FEW);
	private final Map<List<Object>, Integer> states = new HashMap<>();
	private final Map<List<Object>, Integer> offsets = new HashMap<>();
	private int alone;

	/** The shape of a pass. */
	int of(Pass pass) {
		return shapes.computeIfAbsent(shape(pass), shape -> shapes.size());
	}

	/** The same of one that is asked for again and again. */
	int ofTypical(Pass pass) {
		return known.computeIfAbsent(pass, this::of);
	}

	/** Lets go of what is remembered of passes and states by themselves, which hold the text of an edit. */
	void forget() {
		known.clear();
		modals.clear();
	}

	/** A number below 0, for a pass that is like itself alone. */
	int another() {
		return --alone;
	}

	/** A number for how far a hole lies from the place of a pass, mm. */
	int offset(double u, double v) {
		long beside = rounded(u);
		long behind = rounded(v);
		return beside == 0 && behind == 0 ? 0 : offsets.computeIfAbsent(List.of(beside, behind), fresh -> offsets.size() + 1);
	}

	private List<Object> shape(Pass pass) {
		List<Object> shape = new ArrayList<>();
		shape.add(pass.external());
		shape.add(rounded(pass.turns()));
		shape.add(rounded(pass.resolution()));
		shape.add(pass.place().plane());
		pass.rapidIn().ifPresent(move -> addRapid(move, pass, shape));
		for (List<? extends Step> steps : List.of(pass.entry(), pass.helix(), pass.exit())) {
			shape.add(steps.size());
			for (Step step : steps) {
				add(step, pass.place(), shape);
			}
		}
		return shape;
	}

	/** Of a move from another place its levels count, not how far it comes. */
	private void addRapid(Step.Move move, Pass pass, List<Object> shape) {
		int axis = pass.place().plane().axis();
		if (!pass.cameFrom(move)) {
			add(move, pass.place(), shape);
			return;
		}
		shape.add(move.modal().absolute() ? "across" : "across by increments");
		shape.add(rounded(move.from().along(axis)));
		shape.add(rounded(move.to().along(axis)));
	}

	private void add(Step step, Place place, List<Object> shape) {
		shape.add(modals.computeIfAbsent(step.modal(), modal -> states.computeIfAbsent(state(modal), fresh -> states.size())));
		if (step instanceof Step.Move move) {
			shape.add(move.rapid() ? "rapid" : "feed");
			add(move.from(), place, shape);
			add(move.to(), place, shape);
			shape.add(rounded(move.resolution()));
		} else if (step instanceof Step.Arc arc) {
			shape.add(arc.byRadius() ? "radius" : "centre");
			add(arc.from(), place, shape);
			add(arc.to(), place, shape);
			add(arc.centre(), place, shape);
			shape.add(rounded(arc.sweep()));
			shape.add(rounded(arc.startRadius()));
			shape.add(rounded(arc.endRadius()));
			shape.add(rounded(arc.rise()));
			shape.add(rounded(arc.resolution()));
		} else {
			// what makes it up is not compared: it is like itself alone
			shape.add(step);
		}
	}

	private static void add(Point point, Place place, List<Object> shape) {
		for (int axis = 0; axis < 3; axis++) {
			double from = axis == place.plane().first() ? place.u() : axis == place.plane().second() ? place.v() : 0;
			shape.add(rounded(point.along(axis) - from));
		}
	}

	/** All of a state that anything may be judged by. */
	private static List<Object> state(Modal modal) {
		return List.of(modal.unit(), modal.unitStated(), modal.plane(), modal.absolute(), modal.feedMode(), value(modal.feed()),
				value(modal.speed()), modal.constantSurface(), modal.spindle(), value(modal.tool()), value(modal.lengthOffset()),
				modal.compensation(), value(modal.compensationOffset()), modal.workOffset(), modal.coolant(), modal.returnToInitial(),
				modal.rigid().isPresent(), modal.feedModeStated().isPresent(), modal.mirrored(), modal.scaled(), modal.overridesLocked(),
				modal.frame(), modal.rotary());
	}

	private static List<Object> value(Setting setting) {
		return List.of(setting.isSet(), setting.value(), setting.rounding(), setting.word().isPresent(), setting.why());
	}

	private static long rounded(double value) {
		return Double.isNaN(value) ? Long.MIN_VALUE : Math.round(value / FINEST);
	}
}
