package truelead.audit.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import truelead.audit.terminal.Complaint;

/**
 * A file that is there whole or not at all: written under a temporary name beside its place and moved there at the end. An interrupt
 * removes what was not finished. Something that is no ordinary file, such as a device, is written to directly.
 */
public final class WholeFile implements AutoCloseable {

	private static final Set<Path> UNFINISHED = ConcurrentHashMap.newKeySet();

	private static boolean stopping;

	static {
		Runtime.getRuntime().addShutdownHook(new Thread(WholeFile::stop, "truelead unfinished files"));
	}

	/** The process ends: removes what is not finished, and lets nothing new be started meanwhile. */
	private static void stop() {
		synchronized (UNFINISHED) {
			stopping = true;
			UNFINISHED.forEach(WholeFile::remove);
		}
	}

	private final Path target;
	private final Path written;
	private final Writer writer;

	private WholeFile(Path target, Path written, Writer writer) {
		this.target = target;
		this.written = written;
		this.writer = writer;
	}

	/** Starts the file, and the folders it stands in where they are missing. */
	public static WholeFile at(Path target) throws IOException {
		if (Files.exists(target) && !Files.isRegularFile(target)) {
			if (Files.isDirectory(target)) {
				throw new IOException("is a folder");
			}
			return new WholeFile(target, target, writer(Files.newOutputStream(target, StandardOpenOption.WRITE)));
		}
		Path place = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
		Files.createDirectories(place.getParent());
		Path temporary = place.resolveSibling(".truelead-" + ProcessHandle.current().pid() + "-" + System.nanoTime() + ".part");
		synchronized (UNFINISHED) {
			if (stopping) {
				throw new IOException("interrupted");
			}
			UNFINISHED.add(temporary);
			return new WholeFile(place, temporary, writer(Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW)));
		}
	}

	private static Writer writer(java.io.OutputStream stream) {
		return new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), 1 << 16);
	}

	/** Takes the content, UTF-8. */
	public Writer writer() {
		return writer;
	}

	/** The content is complete: moves it to its place. */
	public void finish() throws IOException {
		writer.close();
		if (written.equals(target)) {
			return;
		}
		try {
			Files.move(written, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
		} catch (AtomicMoveNotSupportedException otherFileSystem) {
			Files.move(written, target, StandardCopyOption.REPLACE_EXISTING);
		}
		UNFINISHED.remove(written);
	}

	/** Gives up what was not finished. */
	@Override
	public void close() {
		if (UNFINISHED.contains(written)) {
			try {
				writer.close();
			} catch (IOException lost) {
				// the file is thrown away in any case
			}
			remove(written);
			UNFINISHED.remove(written);
		}
	}

	/** What is said where a file cannot be written: its name as it was typed, and why. */
	public static Complaint complaint(String name, IOException why) {
		String reason = why instanceof AccessDeniedException ? "not allowed" : !(why instanceof FileSystemException system)
				? why.getMessage() : system.getReason() == null ? "no such place" : system.getReason();
		return new Complaint("cannot write " + name + ": " + reason);
	}

	private static void remove(Path file) {
		try {
			Files.deleteIfExists(file);
		} catch (IOException | SecurityException kept) {
			// nothing more can be done at the end of the process
		}
	}
}
