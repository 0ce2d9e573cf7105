package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Plane;

/** Keeps the arcs that start and end at different distances from their centre. */
final class OpenArcs {

	/** As many are kept. */
	static final int MOST = 1_000;
	/** What rounding leaves of any arc, mm. */
	private static final double ROUNDED = 0.001;

	private final MachineProfile profile;
	private final List<Step.Arc> arcs = new ArrayList<>();

	OpenArcs(MachineProfile profile) {
		this.profile = profile;
	}

	/** Keeps an arc that is one. */
	void add(Step.Arc arc) {
		if (arcs.size() < MOST && is(arc)) {
			arcs.add(arc);
		}
	}

	/**
	 * In another plane than XY an arc that hardly closes tells that the plane is the wrong one; in XY only what the control refuses is of
	 * interest.
	 */
	boolean is(Step.Arc arc) {
		Modal modal = arc.modal();
		double most = modal.plane() == Plane.XY ? Math.max(ROUNDED, profile.arcTolerance(modal.unit())) : ROUNDED;
		return Math.abs(arc.startRadius() - arc.endRadius()) > most;
	}

	/** Those that are kept, in the order of execution. */
	List<Step.Arc> all() {
		return arcs;
	}
}
