package truelead.audit.run;

import java.nio.file.Path;
import truelead.audit.source.Neighbours;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramBytes;
import truelead.audit.source.Reading;
import truelead.audit.terminal.Complaint;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.RuleSettings;
import truelead.checker.summary.ThreadNotes;

/**
 * A line of a program on disk, as {@code --from FILE:LINE} names it.
 *
 * @param line   from 0, in the program
 * @param result the program checked; it makes at least one thread
 */
public record ProgramLine(int line, CheckResult result) {

	/** Reads the place and checks the program; ends the command with a complaint where there is no such line or no thread. */
	public static ProgramLine of(String place, Job job, MachineProfile profile) {
		int colon = place.lastIndexOf(':');
		int line = colon < 1 ? 0 : number(place.substring(colon + 1));
		if (line < 1) {
			throw new Complaint("--from \"" + place + "\" is no FILE:LINE, as in part.nc:42");
		}
		String file = file(place);
		CheckResult result = check(file, job, profile);
		int lines = result.work().shop().program().text().lineCount();
		if (line > lines) {
			throw new Complaint("--from " + place + ": the program has " + lines + " lines");
		}
		if (ThreadNotes.threads(result.work()) == 0) {
			throw new Complaint("--from " + place + ": no thread is made in this program");
		}
		return new ProgramLine(line - 1, result);
	}

	/** The file that such a place names; what is no such place names itself. */
	public static String file(String place) {
		int colon = place.lastIndexOf(':');
		return colon < 1 ? place : place.substring(0, colon);
	}

	/** Checks a program on disk; a file that is none ends the command with a complaint. */
	public static CheckResult check(String file, Job job, MachineProfile profile) {
		Path path = Paths.of(file);
		Reading reading = ProgramBytes.read(path);
		if (reading instanceof Reading.Refused refused) {
			throw new Complaint(file + ": " + refused.reason());
		}
		return Checker.check(((Reading.Program) reading).file(), new Neighbours(path), job, profile, RuleSettings.DEFAULT);
	}

	private static int number(String text) {
		try {
			return Integer.parseInt(text);
		} catch (NumberFormatException none) {
			return 0;
		}
	}
}
