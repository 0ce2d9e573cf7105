package truelead.checker.hole;

import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/** Makes places from steps. */
public final class Places {

	private Places() {
	}

	/**
	 * The place of a position in a program of the file, as a hole across a plane; in turning, where Y is never programmed, an unknown Y is
	 * 0.
	 */
	public static Place of(int part, Modal modal, Plane plane, Point at) {
		double u = at.along(plane.first());
		double v = at.along(plane.second());
		if (modal.plane() == Plane.ZX && plane == Plane.XY && Double.isNaN(v)) {
			v = 0;
		}
		if (modal.plane() == Plane.ZX && plane == Plane.YZ && Double.isNaN(u)) {
			u = 0;
		}
		return new Place(part * Place.FRAMES + modal.frame(), modal.workOffset(), modal.rotary().turned(), plane, u, v);
	}

	/** The plane across an axis: 0 X, 1 Y, 2 Z. */
	public static Plane across(int axis) {
		return axis == 0 ? Plane.YZ : axis == 1 ? Plane.ZX : Plane.XY;
	}

	/** The place of a cycle. */
	public static Place of(int part, Step.Stroke stroke) {
		return of(part, stroke.modal(), stroke.modal().plane(), stroke.place());
	}
}
