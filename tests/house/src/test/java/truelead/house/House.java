package truelead.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The project's own files, read once. */
final class House {

	/** The top of the project. */
	static final Path TOP = Path.of("").toAbsolutePath().resolve("../..").normalize();

	private static final Set<String> NOT_OURS = Set.of("target", ".git", "screenshots", "bin");

	/** All Java files, in the order of their paths. */
	static final List<JavaSource> JAVA = files().stream().filter(file -> file.endsWith(".java"))
			.map(file -> JavaSource.of(file, text(file))).toList();

	private House() {
	}

	/** Those that ship. */
	static List<JavaSource> shipped() {
		return JAVA.stream().filter(JavaSource::ships).toList();
	}

	/** All files that are not made by the build, as paths from the top with slashes, in order. */
	static List<String> files() {
		List<String> files = new ArrayList<>();
		try {
			Files.walkFileTree(TOP, new SimpleFileVisitor<>() {

				@Override
				public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
					return NOT_OURS.contains(folder.getFileName().toString()) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
				}

				@Override
				public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
					if (!NOT_OURS.contains(file.getFileName().toString())) { // in a worktree .git is a file
						files.add(TOP.relativize(file).toString().replace('\\', '/'));
					}
					return FileVisitResult.CONTINUE;
				}
			});
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
		files.sort(null);
		return files;
	}

	/** The text of a file, each byte a character where it is no UTF-8. */
	static String text(String file) {
		try {
			return new String(Files.readAllBytes(TOP.resolve(file)), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}
}
