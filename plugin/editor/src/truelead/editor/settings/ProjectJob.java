package truelead.editor.settings;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import truelead.audit.source.ProgramBytes;
import truelead.audit.source.Reading;
import truelead.checker.job.Job;
import truelead.checker.program.ProgramFile;

/** What a project says of its job from outside the programs: the shop's tool list and the stock. */
public final class ProjectJob {

	private ProjectJob() {
	}

	/** The job of a project, or of a program in none. */
	public static Job of(Optional<IProject> project) {
		if (project.filter(IProject::isAccessible).isEmpty()) {
			return Job.EMPTY;
		}
		CheckSettings settings = CheckSettings.of(project.get());
		Job job = toolList(project.get(), settings.tools()).filter(Reading.Program.class::isInstance)
				.map(read -> Job.EMPTY.withToolList(((Reading.Program) read).file())).orElse(Job.EMPTY);
		return settings.stock().isEmpty() ? job : job.withStock(settings.stock());
	}

	/** Reads a tool list; empty where no file is named. Its name keeps its folder, so that nobody takes it for a file beside a program. */
	public static Optional<Reading> toolList(IProject project, String way) {
		return file(project, way).map(file -> {
			Reading reading = ProgramBytes.read(file);
			return reading instanceof Reading.Program list
					? new Reading.Program(new ProgramFile(way.contains("/") ? way : "./" + way, list.file().text())) : reading;
		});
	}

	/** The file that a way leads to from the project's folder; empty where none is named or no file can be called that. */
	public static Optional<Path> file(IProject project, String way) {
		if (way.isBlank() || project.getLocation() == null) {
			return Optional.empty();
		}
		try {
			return Optional.of(project.getLocation().toFile().toPath().resolve(way).normalize());
		} catch (InvalidPathException noName) {
			return Optional.empty();
		}
	}
}
