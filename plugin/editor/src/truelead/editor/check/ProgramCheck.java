package truelead.editor.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPathEditorInput;
import org.eclipse.ui.IURIEditorInput;
import truelead.audit.source.Neighbours;
import truelead.audit.standing.AcceptFile;
import truelead.checker.CheckResult;
import truelead.checker.EditedProgram;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.rulebook.Rules;
import truelead.checker.work.Work;
import truelead.checker.work.WorkReader;
import truelead.editor.settings.CheckSettings;
import truelead.editor.settings.ProjectJob;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/**
 * A check as it is set up for one file: its name, its neighbours for called programs, machine, job and severities.
 *
 * @param shown    the name in reports, with project and folders
 * @param accepted what the project accepts outside its programs
 */
public record ProgramCheck(String name, String shown, ProgramFolder folder, Job job, MachineProfile machine, RuleSettings settings,
		Optional<AcceptFile> accepted) {

	/** As set up for a file of the workspace. */
	public static ProgramCheck of(IFile file) {
		ProgramFolder folder = file.getLocation() == null ? ProgramFolder.EMPTY : new Neighbours(file.getLocation().toFile().toPath());
		return of(file.getName(), file.getFullPath().makeRelative().toString(), folder, Optional.of(file.getProject()));
	}

	/** As set up for what an editor shows, in a project or not. */
	static ProgramCheck of(IEditorInput input) {
		IFile file = Adapters.adapt(input, IFile.class);
		if (file != null) {
			return of(file);
		}
		ProgramFolder folder = ProgramFolder.EMPTY;
		if (input instanceof IPathEditorInput onDisk && onDisk.getPath() != null) {
			folder = new Neighbours(onDisk.getPath().toFile().toPath());
		} else if (input instanceof IURIEditorInput uri && "file".equals(uri.getURI().getScheme())) {
			folder = new Neighbours(Path.of(uri.getURI()));
		}
		return of(input.getName(), input.getName(), folder, Optional.empty());
	}

	private static ProgramCheck of(String name, String shown, ProgramFolder folder, Optional<IProject> project) {
		return new ProgramCheck(name, shown, folder, ProjectJob.of(project), CheckSettings.machine(), CheckSettings.rules(project),
				project.flatMap(ProjectAcceptFile::read));
	}

	private Work nothing() {
		return WorkReader.read(new ProgramFile(name, ProgramText.of("")), ProgramFolder.EMPTY, job, machine);
	}

	/** Checks a text as the command does. A failure of ours is logged and is a finding; the editor goes on. */
	public CheckedText run(String text, long stamp) {
		return run(ProgramText.of(text), stamp, Budget.of(machine), new EditedProgram());
	}

	/** Checks the text of an open program as far as a budget goes; it costs what has changed since the last time. */
	CheckedText run(ProgramText text, long stamp, Budget budget, EditedProgram open) {
		ProgramFile program = new ProgramFile(name, text);
		try {
			CheckResult result = open.check(program, folder, job, machine, settings, budget);
			result.findings().stream().filter(Rules::failed).forEach(this::log);
			return new CheckedText(this, program, judged(program, result), stamp);
		} catch (RuntimeException | StackOverflowError failure) {
			ILog.of(ProgramCheck.class).error("The check of " + name + " failed", failure);
			return new CheckedText(this, program, new CheckResult(List.of(failed(program, failure)), nothing(), program.text().lineCount(),
					0, 0, List.of()), stamp);
		}
	}

	private void log(Finding failed) {
		ILog.of(ProgramCheck.class).warn(name + ": " + failed.rule() + ": " + failed.message() + ", " + failed.evidence());
	}

	/** Silence would look like a program without faults. */
	private static Finding failed(ProgramFile program, Throwable failure) {
		return new Finding("not-followed", Severity.WARNING, "the check failed on this program (" + failure.getClass().getSimpleName()
				+ "): a fault of the checker, not of the program; nothing in it is checked",
				new Location(program, 0, new Span(0, program.text().line(0).length())), List.of(), List.of(), List.of(), -1);
	}

	private CheckResult judged(ProgramFile program, CheckResult result) {
		return accepted.map(file -> new CheckResult(file.accept(program, shown, result.findings()), result.work(), result.blocks(),
				result.operations(), result.notFollowed(), result.assumptions())).orElse(result);
	}
}
