package truelead.checker.machine;

import java.util.List;
import truelead.checker.profile.Meaning;
import truelead.checker.program.Plane;

/** Tells whether the words of a plain motion mean what they say: by the profile once, by the state each time. */
final class AsWritten {

	private final MachineState state;
	private final boolean straight;
	private final boolean arcs;

	AsWritten(MachineState state) {
		this.state = state;
		this.straight = state.asWritten() && means(0, Meaning.RAPID) && means(1, Meaning.LINEAR);
		this.arcs = means(2, Meaning.ARC_CLOCKWISE) && means(3, Meaning.ARC_COUNTERCLOCKWISE);
	}

	private boolean means(int code, Meaning meaning) {
		return state.profile.gCode(10 * code).equals(List.of(meaning));
	}

	/** Whether G0, G1 and axis words are as written, by the profile. */
	boolean straight() {
		return straight;
	}

	/** Whether G2 and G3 are arcs with centres counted from where they start, now. */
	boolean arcs() {
		return arcs && !state.arcCentreAbsolute;
	}

	/** Whether axis words are places in the plane XY of a frame like that of the part, now. */
	boolean places() {
		return state.absolute && state.plane == Plane.XY && !state.place.counts(0) && !state.place.counts(1) && state.place.frame().same();
	}
}
