package truelead.audit.source;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;

/**
 * Called programs in the files beside a program. Only names in that one folder are looked at, and only ordinary files: no link, no other
 * folder. {@code 8001} is found as {@code 8001}, {@code O8001}, {@code o08001.nc}; {@code holes} as {@code holes.ngc}. A machine profile
 * may lie in a folder above too, so that one serves all folders of a project; the nearest counts.
 */
public final class Neighbours implements ProgramFolder {

	private final Path folder;
	private final String ownExtension;
	private final Map<String, Optional<ProgramFile>> read = new HashMap<>();
	private Map<String, List<Path>> byStem;

	/** The files beside {@code program}; they are listed at the first question. */
	public Neighbours(Path program) {
		this.folder = program.toAbsolutePath().getParent();
		this.ownExtension = extension(Paths.name(program));
	}

	@Override
	public synchronized Optional<ProgramFile> find(String name) {
		return read.computeIfAbsent(stem(name), this::readFirst);
	}

	@Override
	public Optional<ProgramFile> profile() {
		for (Path above = folder; above != null; above = above.getParent()) {
			Path file = above.resolve(PROFILE);
			if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && ProgramBytes.read(file) instanceof Reading.Program profile) {
				return Optional.of(profile.file());
			}
		}
		return Optional.empty();
	}

	private Optional<ProgramFile> readFirst(String stem) {
		if (byStem == null) {
			byStem = list();
		}
		for (Path candidate : byStem.getOrDefault(stem, List.of())) {
			if (ProgramBytes.read(candidate) instanceof Reading.Program program) {
				return Optional.of(program.file());
			}
		}
		return Optional.empty();
	}

	private Map<String, List<Path>> list() {
		Map<String, List<Path>> files = new TreeMap<>();
		if (folder == null) {
			return files;
		}
		try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
			for (Path entry : stream) {
				String name = Paths.name(entry);
				String extension = extension(name);
				boolean program = extension.isEmpty() || extension.equals(ownExtension) || ProgramSearch.EXTENSIONS.contains(extension);
				if (program && Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)) {
					files.computeIfAbsent(stem(name), any -> new ArrayList<>()).add(entry);
				}
			}
		} catch (IOException | java.nio.file.DirectoryIteratorException | SecurityException unreadable) {
			return files;
		}
		Comparator<Path> nearest = Comparator.comparing((Path path) -> extension(Paths.name(path)).equals(ownExtension) ? 0 : 1)
				.thenComparing(Paths::name);
		files.values().forEach(candidates -> candidates.sort(nearest));
		return files;
	}

	/** The name without extension in lower case; a program number without its O and leading zeros. */
	static String stem(String name) {
		String lower = name.toLowerCase(Locale.ROOT);
		int dot = lower.lastIndexOf('.');
		String stem = dot > 0 ? lower.substring(0, dot) : lower;
		String number = stem.startsWith("o") ? stem.substring(1) : stem;
		if (number.isEmpty() || !number.chars().allMatch(c -> c >= '0' && c <= '9')) {
			return stem;
		}
		int digit = 0;
		while (digit + 1 < number.length() && number.charAt(digit) == '0') {
			digit++;
		}
		return number.substring(digit);
	}

	private static String extension(String name) {
		int dot = name.lastIndexOf('.');
		return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
	}
}
