package truelead.checker.work;

import java.util.List;
import truelead.checker.job.Fact;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.ProgramFile;

/**
 * What the work was done with.
 *
 * @param unit        the unit of the program at its first motion; NOTE where the program says it, PROFILE where the profile's was assumed
 * @param blocks      lines with code in the program
 * @param assumptions what had to be assumed, one sentence each
 */
public record Shop(ProgramFile program, Job job, MachineProfile profile, Fact<LengthUnit> unit, int blocks, List<String> assumptions) {

	public Shop {
		assumptions = List.copyOf(assumptions);
	}

	/** The same with another text of the program. */
	Shop by(ProgramFile text) {
		return new Shop(text, job, profile, unit, blocks, assumptions);
	}
}
