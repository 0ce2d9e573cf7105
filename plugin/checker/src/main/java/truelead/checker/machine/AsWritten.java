package truelead.checker.machine;

import java.util.List;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Plane;

/** Tells whether the words of a plain motion mean what they say: by the profile once, by the state each time. */
final class AsWritten {

	private final MachineState state;
	private final boolean straight;
	private final boolean turning;
	private final boolean arcs;

	AsWritten(MachineState state) {
		this.state = state;
		boolean codes = means(0, Meaning.RAPID) && means(1, Meaning.LINEAR);
		this.straight = state.asWritten() && codes;
		this.turning = state.profile.isLathe() && state.profile.is(ProfileKey.NUMBERS_WITHOUT_POINT, "as-written") && codes;
		this.arcs = straight && means(2, Meaning.ARC_CLOCKWISE) && means(3, Meaning.ARC_COUNTERCLOCKWISE);
	}

	private boolean means(int code, Meaning meaning) {
		return state.profile.gCode(10 * code).equals(List.of(meaning));
	}

	/** Whether G0, G1 and axis words are as written, by the profile. */
	boolean straight() {
		return straight;
	}

	/** Whether they are so on a machine that turns, but that X may be a diameter: words of other letters are increments there. */
	boolean turning() {
		return turning;
	}

	/** Whether axis words are places in a frame like that of the part, now. */
	boolean inFrame() {
		return state.absolute && !state.place.counts(0) && !state.place.counts(1) && state.place.frame().same();
	}

	/** Whether X and Y are as written, and G2 and G3 are arcs with centres counted from where they start, now. */
	boolean arcs() {
		return arcs && !state.arcCentreAbsolute;
	}

	/** Whether axis words are places in the plane XY of a frame like that of the part, now. */
	boolean places() {
		return state.plane == Plane.XY && inFrame();
	}
}
