package truelead.audit.lesson;

import java.io.IOException;
import java.nio.file.Path;
import truelead.audit.report.WholeFile;
import truelead.audit.run.JobOptions;
import truelead.audit.run.ProgramLine;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.lesson.Exercise;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/** Programs that lessons are about, checked. */
final class Programs {

	private Programs() {
	}

	/** A program of a person's, with what the options know of job and machine; a file that is none ends the command with a complaint. */
	static CheckResult of(String file, JobOptions options) {
		return ProgramLine.check(file, options.job(), options.profile());
	}

	/** The program of an exercise as it is given. */
	static CheckResult of(Exercise exercise) {
		return Checker.check(new ProgramFile(exercise.file(), ProgramText.of(exercise.program())), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.generic(), RuleSettings.DEFAULT);
	}

	/** Writes a file whole or not at all; what hinders that ends the command with a complaint. */
	static void write(Path path, String content) {
		try (WholeFile file = WholeFile.at(path)) {
			file.writer().write(content);
			file.finish();
		} catch (IOException failed) {
			throw WholeFile.complaint(path.toString(), failed);
		}
	}
}
