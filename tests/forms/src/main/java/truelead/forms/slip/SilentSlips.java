package truelead.forms.slip;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Keeps the programs with slips that nothing tells of, a folder a class: as they were checked, and to be read, with what was and is at the
 * slip.
 */
final class SilentSlips {

	private final Path out;
	private final Map<Slip.Kind, Integer> kept = new HashMap<>();

	SilentSlips(Path out) {
		this.out = out;
	}

	/** Keeps one, put into these lines of the program of this name. */
	void keep(Slip slip, String program, List<String> before) {
		int number = kept.merge(slip.in(), 1, Integer::sum);
		try {
			Path folder = Files.createDirectories(out.resolve(slip.in().tool().replace(' ', '-'))
					.resolve((slip.in().word() + ' ' + slip.in().kind()).replace(' ', '-')));
			Files.writeString(folder.resolve(number + ".nc"), String.join("\n", slip.now()), StandardCharsets.UTF_8);
			Files.writeString(folder.resolve(number + ".txt"), marked(slip, program, before), StandardCharsets.UTF_8);
		} catch (IOException unwritable) {
			throw new UncheckedIOException(unwritable);
		}
	}

	/** The program with its line numbers; what was at the slip is marked with a minus, what is now with a plus. */
	static String marked(Slip slip, String program, List<String> before) {
		int same = 0;
		while (same < before.size() && same < slip.now().size() && before.get(same).equals(slip.now().get(same))) {
			same++;
		}
		int behind = 0;
		while (behind < Math.min(before.size(), slip.now().size()) - same
				&& before.get(before.size() - 1 - behind).equals(slip.now().get(slip.now().size() - 1 - behind))) {
			behind++;
		}
		StringBuilder text = new StringBuilder(program + ": " + slip.in() + "\n\n");
		lines(text, ' ', slip.now(), 0, same);
		lines(text, '-', before, same, before.size() - behind);
		lines(text, '+', slip.now(), same, slip.now().size() - behind);
		lines(text, ' ', slip.now(), slip.now().size() - behind, slip.now().size());
		return text.toString();
	}

	private static void lines(StringBuilder text, char mark, List<String> lines, int from, int to) {
		for (int line = from; line < to; line++) {
			text.append(String.format(Locale.ROOT, "%c %4d  %s%n", mark, line + 1, lines.get(line)).replace("\r\n", "\n"));
		}
	}
}
