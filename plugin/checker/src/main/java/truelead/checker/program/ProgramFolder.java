package truelead.checker.program;

import java.util.Optional;

/**
 * Where called programs that are not in the file itself are looked for. Whoever calls the checker reads the files; the checker never does.
 */
@FunctionalInterface
public interface ProgramFolder {

	/** Name of the file that holds the machine profile of a folder. */
	String PROFILE = "truelead-machine.properties";

	/** A folder without other programs. */
	ProgramFolder EMPTY = name -> Optional.empty();

	/** The program of that number or name ({@code 8001}, {@code holes}), if the folder has it. */
	Optional<ProgramFile> find(String name);

	/** The folder's machine profile, the file {@value #PROFILE} in it or in the nearest folder above that has one; empty where none has. */
	default Optional<ProgramFile> profile() {
		return Optional.empty();
	}
}
