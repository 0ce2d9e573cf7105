package truelead.audit.source;

import java.nio.file.Path;

/**
 * A program to check, not read yet.
 *
 * @param path  where it is
 * @param shown its name in reports: as typed, or the folder as typed and the way from there, parted by {@code /}
 * @param bytes its size, for a fair share of memory; 0 where it is not known
 */
public record Source(Path path, String shown, long bytes) {

	/** The folder part of {@code shown} with its last slash, empty where there is none; programs it calls stand there too. */
	public String shownFolder() {
		return shown.substring(0, Math.max(shown.lastIndexOf('/'), shown.lastIndexOf(java.io.File.separatorChar)) + 1);
	}
}
