package truelead.audit.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramSearch;
import truelead.audit.terminal.Complaint;

/**
 * What nothing may be written over: the files that a run reads, and every program that is there. A slip in an option must not cost anybody
 * a program.
 */
public final class Spared {

	private final Set<Path> read = new HashSet<>();

	/** Spares the files of these names, as they were typed; empty names and those of no file are passed over. */
	public Spared(Collection<String> typed) {
		typed.stream().filter(name -> !name.isEmpty()).forEach(name -> read.add(place(Paths.of(name))));
	}

	/** Spares one file more. */
	public void add(Path file) {
		read.add(place(file));
	}

	/** The place to write to that was typed; ends the command with a complaint where something stands there that is spared. */
	public Path target(String typed) {
		Path path = Paths.of(typed);
		if (read.contains(place(path))) {
			throw new Complaint("cannot write " + typed + ": it is read in this run; give another name");
		}
		if (Files.isRegularFile(path) && ProgramSearch.hasExtension(path)) {
			throw new Complaint("cannot write " + typed
					+ ": it is there already, and a program by its name; give another name, or remove it first");
		}
		return path;
	}

	/** Where a path leads: the same for all names of a file. */
	static Path place(Path path) {
		try {
			return path.toRealPath();
		} catch (IOException | SecurityException missing) {
			Path whole = path.toAbsolutePath().normalize();
			Path folder = whole.getParent();
			return folder == null || !Files.isDirectory(folder) ? whole : place(folder).resolve(whole.getFileName());
		}
	}
}
