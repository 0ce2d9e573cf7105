package truelead.audit.run;

import truelead.checker.machine.MachineProfile;

/** Finds the machine profile that {@code --machine} names. */
final class Machines {

	private Machines() {
	}

	/** The profile of a file, or of that name among those that come with Truelead; the generic one for an empty text. */
	static MachineProfile find(String written) {
		return written.isEmpty() ? MachineProfile.generic() : MachineProfile.named(written);
	}
}
