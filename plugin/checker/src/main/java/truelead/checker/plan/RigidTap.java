package truelead.checker.plan;

import java.util.Optional;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;

/**
 * The codes that a machine asks for around a tapping cycle.
 *
 * @param code  M code that turns rigid tapping on, where the machine asks for one
 * @param after M code that turns it off, where the end of the cycle does not
 */
record RigidTap(Optional<String> code, Optional<String> after) {
	/** The M code on where the profile has several: M29 (common practice, no source). */
	private static final double USUAL = 29;
	/** And off: M28 (common practice, no source). */
	private static final double USUAL_OFF = 28;

	static RigidTap of(MachineProfile profile) {
		if (!profile.yes(ProfileKey.RIGID_TAP_REQUIRED)) {
			return new RigidTap(Optional.empty(), Optional.empty());
		}
		Dialect dialect = new Dialect(profile);
		return new RigidTap(dialect.m(Meaning.RIGID_TAP_ON, USUAL),
				profile.yes(ProfileKey.RIGID_TAP_ENDS_WITH_CYCLE) ? Optional.empty() : dialect.m(Meaning.RIGID_TAP_OFF, USUAL_OFF));
	}

	/** The block before the cycle, with the speed in rev/min. */
	Optional<String> on(double speed) {
		return code.map(m -> m + " S" + Figure.plain(speed, 1));
	}

	/** The block behind the cycle. */
	Optional<String> off() {
		return after;
	}
}
