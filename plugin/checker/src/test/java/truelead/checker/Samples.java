package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

/** Programs in a test: blocks in, findings or work out. */
public final class Samples {

	private Samples() {
	}

	/** A program of these blocks. */
	public static ProgramFile program(String... blocks) {
		return new ProgramFile("SAMPLE.NC", ProgramText.of(String.join("\n", blocks) + "\n"));
	}

	/** What is found in a program on the generic milling profile. */
	public static List<Finding> findings(String... blocks) {
		return findings(MachineProfile.generic(), blocks);
	}

	/** What is found in a program on a machine. */
	public static List<Finding> findings(MachineProfile profile, String... blocks) {
		return check(profile, Job.EMPTY, blocks).findings();
	}

	/** What is found in a program above information, on the generic milling profile. */
	public static List<Finding> loud(String program) {
		return loud(MachineProfile.generic(), program);
	}

	private static List<Finding> loud(MachineProfile profile, String program) {
		return findings(profile, program.lines().toArray(String[]::new)).stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION).toList();
	}

	/** The same, each finding as its rule and its message. */
	public static List<String> heard(String program) {
		return heard(MachineProfile.generic(), program);
	}

	/** The same on a machine. */
	public static List<String> heard(MachineProfile profile, String program) {
		return loud(profile, program).stream().map(finding -> finding.rule() + " " + finding.message()).toList();
	}

	/** Holds a program to one finding above information: the rule, and what its message says among other things. */
	public static void one(String program, String rule, String message) {
		assertThat(heard(program)).as(program).singleElement().asString().startsWith(rule + " ").contains(message);
	}

	/** A whole check. */
	public static CheckResult check(MachineProfile profile, Job job, String... blocks) {
		return Checker.check(program(blocks), ProgramFolder.EMPTY, job, profile, RuleSettings.DEFAULT);
	}

	/** The work of a program on the generic milling profile. */
	public static Work work(String... blocks) {
		return work(MachineProfile.generic(), Job.EMPTY, blocks);
	}

	/** The work of a program on a machine, with a job. */
	public static Work work(MachineProfile profile, Job job, String... blocks) {
		return WorkReader.read(program(blocks), ProgramFolder.EMPTY, job, profile);
	}

	/** The only tapping operation of a program. */
	public static Tapping tapping(String... blocks) {
		return work(blocks).tappings().get(0);
	}

	/** The only thread milling operation of a program. */
	public static ThreadMilling milling(String... blocks) {
		return work(blocks).threadMillings().get(0);
	}
}
