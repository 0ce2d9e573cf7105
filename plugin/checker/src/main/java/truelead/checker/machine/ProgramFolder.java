package truelead.checker.machine;

import java.util.Optional;

/** Where called programs that are not in the file itself are looked for. Whoever calls the checker reads the files; the checker never does. */
@FunctionalInterface
public interface ProgramFolder {

	/** A folder without other programs. */
	ProgramFolder EMPTY = name -> Optional.empty();

	/** The program of that number or name ({@code 8001}, {@code holes}), if the folder has it. */
	Optional<ProgramFile> find(String name);
}
