package truelead.forms;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;

/** The programs of folders, in an order by chance that is the same each time. */
public final class ProgramFiles {

	private static final List<String> ENDINGS = List.of(".nc", ".tap", ".ngc", ".cnc", ".mpf");

	private ProgramFiles() {
	}

	/** Those of the folders and all below them. */
	public static List<Path> by(List<String> folders) throws IOException {
		List<Path> files = new ArrayList<>();
		for (String folder : folders) {
			try (Stream<Path> all = Files.walk(Path.of(folder))) {
				all.filter(file -> ENDINGS.stream().anyMatch(file.toString().toLowerCase(Locale.ROOT)::endsWith)).sorted()
						.forEach(files::add);
			}
		}
		Collections.shuffle(files, new Random(5));
		return files;
	}

	/** What stands in one, its lines ended by a line feed. */
	public static String text(Path file) throws IOException {
		return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).replace("\r\n", "\n");
	}
}
