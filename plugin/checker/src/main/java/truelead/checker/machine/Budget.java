package truelead.checker.machine;

import java.util.function.BooleanSupplier;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileKey;

/**
 * How long a run may take.
 *
 * @param blocks    executed blocks, those of loops and calls counted each time
 * @param cancelled asked now and then; true ends the run
 */
public record Budget(long blocks, BooleanSupplier cancelled) {

	/** What the profile allows a check. */
	public static Budget of(MachineProfile profile) {
		return new Budget((long) profile.number(ProfileKey.BUDGET).orElse(10_000_000), () -> false);
	}

	/** What the profile allows while a program is being edited. */
	public static Budget forEditing(MachineProfile profile, BooleanSupplier cancelled) {
		return new Budget((long) profile.number(ProfileKey.EDITOR_BUDGET).orElse(2_000_000), cancelled);
	}
}
