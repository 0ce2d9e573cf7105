package truelead.forms;

import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/** Checks programs as one checks them that lie alone in a folder. */
public final class Checked {

	private Checked() {
	}

	/** What is found in a text on a machine. */
	public static CheckResult text(String text, MachineProfile machine) {
		return Checker.check(new ProgramFile("SAMPLE.NC", ProgramText.of(text)), ProgramFolder.EMPTY, Job.EMPTY, machine,
				RuleSettings.DEFAULT);
	}
}
