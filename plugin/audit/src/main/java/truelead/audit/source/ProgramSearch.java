package truelead.audit.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/**
 * Finds the programs of a folder: files with an extension that programs have, and files without extension and texts ({@code .txt}) that
 * begin like a program. Links, and files and folders whose name begins with a dot, are not followed. The order is by name, the same on
 * every system.
 */
public final class ProgramSearch {

	/** Extensions that programs have; {@code .tap} is from "tape". */
	static final Set<String> EXTENSIONS = Set.of("nc", "ngc", "cnc", "tap", "eia", "mpf", "spf", "gcode", "gc", "iso", "min", "pim", "ptp",
			"cn", "ncc", "prg", "fnc", "nci", "mcd", "sub");

	/** What notes, and many a program that was sent by mail, end with. */
	private static final String TEXT = ".txt";

	private static final int FIRST_BYTES = 4096;

	private final NamePatterns patterns;
	private final BiConsumer<String, String> trouble;

	/** {@code trouble} takes the shown name of a folder that cannot be read, and why. */
	public ProgramSearch(NamePatterns patterns, BiConsumer<String, String> trouble) {
		this.patterns = patterns;
		this.trouble = trouble;
	}

	/** Whether a file has an extension that programs have. */
	public static boolean hasExtension(Path file) {
		String name = Paths.name(file);
		int dot = name.lastIndexOf('.');
		return dot >= 0 && EXTENSIONS.contains(name.substring(dot + 1).toLowerCase(Locale.ROOT));
	}

	/** The programs below a folder, in order. */
	public List<Source> search(Path folder, String shown) {
		List<Source> found = new ArrayList<>();
		String prefix = shown.endsWith("/") || shown.endsWith(java.io.File.separator) ? shown : shown + "/";
		walk(folder, prefix.equals("./") ? "" : prefix, "", found);
		return found;
	}

	private void walk(Path folder, String shown, String inside, List<Source> found) {
		for (Path entry : entries(folder, shown)) {
			String name = Paths.name(entry);
			BasicFileAttributes attributes = attributes(entry);
			if (name.startsWith(".") || attributes == null) {
				continue;
			}
			if (attributes.isDirectory()) {
				if (!patterns.excludesFolder(inside + name)) {
					walk(entry, shown + name + "/", inside + name + "/", found);
				}
			} else if (attributes.isRegularFile() && wanted(entry, name, inside + name)) {
				found.add(new Source(entry, shown + name, attributes.size()));
			}
		}
	}

	private boolean wanted(Path file, String name, String inside) {
		if (patterns.excludes(inside)) {
			return false;
		}
		if (patterns.hasIncludes()) {
			return patterns.includes(inside);
		}
		if (name.toLowerCase(Locale.ROOT).endsWith(TEXT)) {
			return begins(file, ProgramLook::ofText);
		}
		return name.lastIndexOf('.') < 0 ? begins(file, ProgramLook::of) : hasExtension(file);
	}

	private List<Path> entries(Path folder, String shown) {
		List<Path> entries = new ArrayList<>();
		try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
			stream.forEach(entries::add);
		} catch (IOException | java.nio.file.DirectoryIteratorException | SecurityException unreadable) {
			trouble.accept(shown, "folder cannot be read");
		}
		entries.sort((one, other) -> Paths.name(one).compareTo(Paths.name(other)));
		return entries;
	}

	private static BasicFileAttributes attributes(Path entry) {
		try {
			return Files.readAttributes(entry, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
		} catch (IOException | SecurityException gone) {
			return null;
		}
	}

	private static boolean begins(Path file, Predicate<byte[]> likeProgram) {
		try (InputStream in = Files.newInputStream(file)) {
			return likeProgram.test(in.readNBytes(FIRST_BYTES));
		} catch (IOException | SecurityException unreadable) {
			return false;
		}
	}
}
