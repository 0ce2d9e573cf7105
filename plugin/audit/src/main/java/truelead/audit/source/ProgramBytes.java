package truelead.audit.source;

import java.io.FileInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import truelead.checker.program.ProgramFile;
import truelead.grammar.ProgramText;

/** Reads a file and judges whether it can be a program at all: not empty, not binary, no line that no control would take. */
public final class ProgramBytes {

	/** Longest line taken, bytes. Controls stop at some hundred characters; a line of a million is no program. */
	static final int LONGEST_LINE = 1_000_000;

	private ProgramBytes() {
	}

	/** Whether a path as it was typed is the sign for standard input. A file of that name is {@code ./-}. */
	public static boolean isStandardInput(Path path) {
		return path.toString().equals("-");
	}

	/** Reads a file, or standard input; never throws for anything the file does. */
	public static Reading read(Path path) {
		try {
			if (isStandardInput(path)) {
				return judge("stdin", System.in.readAllBytes());
			}
			if (Files.isDirectory(path)) {
				return new Reading.Refused("is a folder");
			}
			if (Files.exists(path) && !Files.isRegularFile(path)) {
				return new Reading.Refused("is not an ordinary file");
			}
			byte[] bytes = bytes(path);
			return judge(Paths.name(path), bytes, Files.size(path));
		} catch (IOException | SecurityException unreadable) {
			return new Reading.Refused(why(unreadable));
		} catch (OutOfMemoryError tooLarge) {
			return new Reading.Refused("too large for the memory Java has; give it more with java -Xmx");
		}
	}

	/** Why a file cannot be read, to stand behind its name. */
	public static String why(Exception unreadable) {
		if (unreadable instanceof NoSuchFileException) {
			return "no such file or folder";
		}
		if (unreadable instanceof AccessDeniedException) {
			return "may not be read";
		}
		String system = unreadable instanceof FileSystemException failed ? failed.getReason() : unreadable.getMessage();
		return "cannot be read: " + (system == null ? "no such place" : system);
	}

	/**
	 * The bytes of a file. A plain stream needs a good deal less of Java to be loaded than a channel; what goes wrong a channel says more
	 * exactly.
	 */
	private static byte[] bytes(Path path) throws IOException {
		// a name that a stream may take for another one is left to the channel
		if (path.getFileSystem() == FileSystems.getDefault() && Arguments.whole(path.toString())) {
			try (InputStream in = new FileInputStream(path.toFile())) {
				return in.readAllBytes();
			} catch (FileNotFoundException told) {
				return Files.readAllBytes(path);
			}
		}
		return Files.readAllBytes(path);
	}

	/** Judges bytes that were read under that file name. */
	static Reading judge(String name, byte[] bytes) {
		if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
			return new Reading.Refused("UTF-16 text, which no control reads; save it as plain text or UTF-8");
		}
		ByteCensus census = ByteCensus.of(bytes);
		if (bytes.length == 0) {
			return new Reading.Refused("empty file, nothing to check");
		}
		if (census.binary()) {
			return new Reading.Refused("binary file, not a program");
		}
		if (census.blank()) {
			return new Reading.Refused("nothing but blanks, nothing to check");
		}
		if (census.longestLine() > LONGEST_LINE) {
			return new Reading.Refused(String.format(Locale.ROOT, "line %d is %,d characters long; no program has such a line",
					census.lineOfLongest(), census.longestLine()));
		}
		return new Reading.Program(new ProgramFile(name, ProgramText.read(bytes)));
	}

	/**
	 * The same of a file that is {@code lengthNow} bytes long behind the reading: one that is still being written is no program yet. System
	 * files say 0.
	 */
	static Reading judge(String name, byte[] bytes, long lengthNow) {
		return lengthNow != bytes.length && lengthNow > 0 ? new Reading.Refused("changed while it was read; check it when it is written")
				: judge(name, bytes);
	}

	private static boolean startsWith(byte[] bytes, int first, int second) {
		return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
	}
}
