package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** Says what is not known of a thread that the machine makes: one that could not be evaluated is never passed over in silence. */
final class UnsureThread {

	private final MachineState state;
	private final Output out;

	UnsureThread(MachineState state, Output out) {
		this.state = state;
		this.out = out;
	}

	/** Whether a number is known, or none is needed. */
	static boolean sure(Setting setting) {
		return !setting.isSet() || setting.known();
	}

	/**
	 * A tapping cycle that ends without a place, as one with K0 whose places are lost, threads nothing, or at places that are not
	 * understood.
	 */
	void nowhere(Cycle cycle) {
		out.notFollowed(cycle.start(), "no place that is understood follows this tapping cycle before it ends: nothing is threaded by it",
				Optional.of(cycle.gWord()));
	}

	/**
	 * A stroke of a tap.
	 *
	 * @param deep whether any block of the cycle says a depth
	 * @param at   where it starts, mm
	 * @param end  level to which it goes, mm; NaN where that is not known
	 * @param feed what leads it
	 */
	void stroke(Words words, Cycle cycle, boolean deep, Point at, double end, Setting feed) {
		if (!deep) {
			out.notFollowed(words.block(), "the tapping cycle has no depth: no block since its G code says one",
					Optional.of(cycle.gWord()));
		} else if (Double.isNaN(end)) {
			out.notFollowed(words.block(), "the depth of the thread is not known", Optional.of(cycle.gWord()));
		} else if (Double.isNaN(at.distanceInPlane(at, state.cycleModal(cycle.code()).plane()))) {
			out.notFollowed(words.block(), "the place of the thread is not known", Optional.of(cycle.gWord()));
		}
		made(words.block(), Optional.of(cycle.gWord()));
		unknown(words, cycle, feed, "the feed of the thread is not known");
		unknown(words, cycle, state.speed, "the speed of the spindle is not known");
	}

	/**
	 * A stroke of a drill, whose cycle may have no depth: what the machine makes of that, and of the thread in such a hole, nobody can
	 * tell.
	 */
	void drilled(Words words, Cycle cycle, boolean deep) {
		boolean drills = cycle.kind() == Cycle.Kind.DRILL || cycle.kind() == Cycle.Kind.PECK_DRILL;
		if (!deep && drills && state.profile.is(ProfileKey.KIND, "milling")) {
			out.notFollowedCall(words.block(), "the drilling cycle has no depth: no block since its G code says one; type it",
					Optional.of(cycle.gWord()));
		}
	}

	/** Any thread; whether it is made may depend on a branch or loop that is not followed. */
	void made(BlockRef block, Optional<WordRef> at) {
		state.unfollowed().ifPresent(statement -> out.notFollowed(block, "whether this thread is made, and how often, depends on "
				+ statement + ", which is not followed", at));
	}

	private void unknown(Words words, Cycle cycle, Setting setting, String what) {
		if (!sure(setting)) {
			out.notFollowed(words.block(), setting.why().behind(what), setting.word().or(() -> Optional.of(cycle.gWord())));
		}
	}
}
