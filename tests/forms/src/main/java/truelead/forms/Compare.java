package truelead.forms;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import truelead.checker.profile.MachineProfile;

/**
 * Tries the forms on the programs of folders: {@code Compare OUT COUNT FORM FOLDER...} takes so many programs by chance, writes them in
 * each form whose name contains the given words ({@code -} for all), and prints a table; programs that differ are written into the folder
 * OUT, before and in the form.
 */
public final class Compare {

	private static final int LARGEST = 40_000;

	private Compare() {
	}

	/** Prints the table. */
	public static void main(String[] args) throws IOException {
		Path out = Files.createDirectories(Path.of(args[0]));
		List<Sample> samples = samples(Integer.parseInt(args[1]), List.of(args).subList(3, args.length));
		System.out.println(samples.size() + " programs");
		for (Form form : Forms.ALL) {
			if (args[2].equals("-") || form.name().contains(args[2])) {
				compare(form, samples, out);
			}
		}
	}

	private static void compare(Form form, List<Sample> samples, Path out) throws IOException {
		int rewritten = 0;
		int declined = 0;
		int differ = 0;
		Map<String, Integer> what = new TreeMap<>();
		Map<String, Integer> why = new TreeMap<>();
		StringBuilder examples = new StringBuilder();
		String folder = form.name().replace(' ', '_').replace(",", "");
		for (Sample sample : samples) {
			Sample.Tried tried = sample.in(form);
			rewritten += tried.rewritten() ? 1 : 0;
			declined += tried.refused() ? 1 : 0;
			tried.declined().ifPresent(reason -> why.merge(reason, 1, Integer::sum));
			if (tried.differs()) {
				tried.onlyBefore().forEach(said -> what.merge("-" + said, 1, Integer::sum));
				tried.onlyNow().forEach(said -> what.merge("+" + said, 1, Integer::sum));
				Path place = Files.createDirectories(out.resolve(folder));
				Files.writeString(place.resolve(differ + "a.nc"), String.join("\n", sample.program().lines()), StandardCharsets.UTF_8);
				Files.writeString(place.resolve(differ + "b.nc"), tried.text(), StandardCharsets.UTF_8);
				examples.append(differ).append(" -").append(tried.onlyBefore()).append(" +").append(tried.onlyNow()).append(' ')
						.append(sample.name()).append('\n');
				differ++;
			}
		}
		if (differ > 0) {
			Files.writeString(out.resolve(folder).resolve("list"), examples.toString(), StandardCharsets.UTF_8);
		}
		PrintStream table = System.out;
		table.printf(Locale.ROOT, "%-36s %5d rewritten %5d declined %s %4d differ %s%n", form.name(), rewritten, declined, most(why, 3),
				differ, most(what, 8));
	}

	private static List<String> most(Map<String, Integer> counts, int limit) {
		return counts.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue()).limit(limit)
				.map(e -> e.getValue() + " " + e.getKey()).toList();
	}

	private static List<Sample> samples(int count, List<String> folders) throws IOException {
		List<Sample> samples = new ArrayList<>();
		for (Path file : ProgramFiles.by(folders)) {
			if (samples.size() < count && Files.size(file) < LARGEST) {
				samples.add(Sample.of(file.toString(), ProgramFiles.text(file), MachineProfile.generic()));
			}
		}
		return samples;
	}
}
