package truelead.checker.profile;

import java.util.List;

/** A profile as read from a file, and what in the file could not be used. */
public record ProfileReading(MachineProfile profile, List<ProfileProblem> problems) {

	public ProfileReading {
		problems = List.copyOf(problems);
	}
}
