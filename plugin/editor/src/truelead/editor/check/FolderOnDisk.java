package truelead.editor.check;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import truelead.checker.machine.ProgramFile;
import truelead.checker.machine.ProgramFolder;
import truelead.grammar.ProgramText;

/** The folder that a program lies in, where the programs that it calls are looked for. */
record FolderOnDisk(Path program) implements ProgramFolder {

	/** Called programs larger than this are not read: nobody calls 64 MB. */
	private static final long LARGEST = 64L << 20;

	@Override
	public Optional<ProgramFile> find(String called) {
		Path folder = program.toAbsolutePath().getParent();
		if (folder == null) {
			return Optional.empty();
		}
		try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, file -> isCalled(file, called))) {
			for (Path file : files) {
				if (!file.equals(program.toAbsolutePath()) && readable(file)) {
					return Optional.of(new ProgramFile(file.getFileName().toString(), ProgramText.read(Files.readAllBytes(file))));
				}
			}
		} catch (IOException | RuntimeException unreadable) {
			return Optional.empty();
		}
		return Optional.empty();
	}

	@Override
	public Optional<ProgramFile> profile() {
		Path file = program.toAbsolutePath().resolveSibling(PROFILE);
		try {
			return readable(file) ? Optional.of(new ProgramFile(PROFILE, ProgramText.read(Files.readAllBytes(file)))) : Optional.empty();
		} catch (IOException | RuntimeException unreadable) {
			return Optional.empty();
		}
	}

	/** An ordinary file of this folder; a link may lead out of it. */
	private static boolean readable(Path file) throws IOException {
		return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) <= LARGEST;
	}

	/** {@code O8001.nc}, {@code O8001}, {@code 8001.nc} for 8001; {@code holes.ngc} for holes. Case does not count, leading zeros neither. */
	private static boolean isCalled(Path file, String called) {
		String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
		int dot = name.lastIndexOf('.');
		String stem = dot > 0 ? name.substring(0, dot) : name;
		String wanted = called.toLowerCase(Locale.ROOT);
		return stem.equals(wanted) || withoutZeros(stem).equals(withoutZeros(wanted));
	}

	private static String withoutZeros(String name) {
		int from = name.startsWith("o") ? 1 : 0;
		while (from < name.length() - 1 && name.charAt(from) == '0') {
			from++;
		}
		return name.substring(from);
	}
}
