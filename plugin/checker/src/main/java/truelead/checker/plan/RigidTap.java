package truelead.checker.plan;

import java.util.Optional;
import java.util.stream.IntStream;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.Meaning;
import truelead.checker.machine.ProfileKey;

/**
 * The codes that a machine asks for around a tapping cycle.
 *
 * @param code  M code that turns rigid tapping on, where the machine asks for one
 * @param after M code that turns it off, where the end of the cycle does not
 */
record RigidTap(Optional<String> code, Optional<String> after) {
	private static final int CODES = 10_000;

	static RigidTap of(MachineProfile profile) {
		if (!profile.yes(ProfileKey.RIGID_TAP_REQUIRED)) {
			return new RigidTap(Optional.empty(), Optional.empty());
		}
		return new RigidTap(code(profile, Meaning.RIGID_TAP_ON),
				profile.yes(ProfileKey.RIGID_TAP_ENDS_WITH_CYCLE) ? Optional.empty() : code(profile, Meaning.RIGID_TAP_OFF));
	}

	/** The block before the cycle, with the speed in rev/min. */
	Optional<String> on(double speed) {
		return code.map(m -> m + " S" + Figure.plain(speed, 1));
	}

	/** The block behind the cycle. */
	Optional<String> off() {
		return after;
	}

	private static Optional<String> code(MachineProfile profile, Meaning meaning) {
		return IntStream.range(0, CODES).filter(m -> profile.mCode(m).contains(meaning)).mapToObj(m -> "M" + Figure.plain(m / 10.0, 1)).findFirst();
	}
}
