package truelead.audit.run;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramBytes;
import truelead.audit.source.Reading;
import truelead.audit.terminal.Complaint;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileReading;
import truelead.checker.program.ProgramFile;

/** Finds the machine profile that {@code --machine} names. */
public final class Machines {

	/** So many lines of a profile that cannot be used are named; a file that is no profile at all would fill the screen. */
	private static final int MOST_PROBLEMS = 10;

	private Machines() {
	}

	/**
	 * The profile of that name among those that come with Truelead, or of a file; the generic one where the option is not given. A file
	 * that holds anything that cannot be used ends the command with a complaint: a profile half understood would check against the wrong
	 * machine.
	 */
	public static MachineProfile find(Optional<String> option) {
		if (option.isEmpty()) {
			return MachineProfile.generic();
		}
		String written = option.get();
		if (written.isBlank()) {
			throw new Complaint("--machine is empty; there are " + String.join(", ", MachineProfile.shipped()));
		}
		Path path = Paths.of(written);
		if (!Files.exists(path)) {
			if (MachineProfile.shipped().contains(written)) {
				return MachineProfile.named(written);
			}
			throw new Complaint("--machine " + written + ": no such file, and no profile of that name; there are "
					+ String.join(", ", MachineProfile.shipped()));
		}
		Reading bytes = ProgramBytes.read(path);
		if (bytes instanceof Reading.Refused refused) {
			throw new Complaint("--machine " + written + ": " + refused.reason());
		}
		ProgramFile text = ((Reading.Program) bytes).file();
		ProfileReading reading = MachineProfile.read(text.text().toString(), text.name());
		if (!reading.problems().isEmpty()) {
			int more = reading.problems().size() - MOST_PROBLEMS;
			throw new Complaint(reading.problems().stream().limit(MOST_PROBLEMS).map(one -> written + ":" + (one.line() + 1) + ": "
					+ one.message()).collect(Collectors.joining("; ")) + (more > 0 ? "; and " + more + " more" : ""));
		}
		return reading.profile();
	}
}
