package truelead.forms;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.RulePage;
import truelead.checker.rulebook.Rules;
import truelead.faults.Trial;

/**
 * Programs to try forms on: the samples of all rule pages, the demo programs, the checker's own test programs, and those of the fault
 * bench.
 */
final class Programs {

	private static final Path TOP = Path.of("").toAbsolutePath().resolve("../..").normalize();
	private static final String FENCE = "```nc";

	private Programs() {
	}

	/** Samples of rule pages, good and bad. */
	static List<Sample> ofPages() {
		List<Sample> samples = new ArrayList<>();
		for (RulePage page : Rules.pages()) {
			List<String> lines = page.markdown().lines().toList();
			for (int i = 0; i < lines.size(); i++) {
				if (lines.get(i).startsWith(FENCE)) {
					int first = i + 1;
					while (!lines.get(i + 1).startsWith("```")) {
						i++;
					}
					List<String> program = lines.subList(first, i + 1).stream().filter(line -> !line.strip().startsWith("^")).toList();
					samples.add(Sample.of(page.name() + ".md:" + first, String.join("\n", program) + "\n",
							machine(lines.get(first - 1).substring(FENCE.length()).strip())));
				}
			}
		}
		return samples;
	}

	/** The machine that the words behind a sample's fence make: {@code profile=turning key=value}. */
	private static MachineProfile machine(String pairs) {
		MachineProfile machine = MachineProfile.named("milling-metric");
		for (String pair : pairs.isEmpty() ? new String[0] : pairs.split(" ")) {
			String key = pair.substring(0, pair.indexOf('='));
			String value = pair.substring(pair.indexOf('=') + 1).replace('_', ' ');
			machine = key.equals("profile") ? MachineProfile.named(value) : machine.with(key, value);
		}
		return machine;
	}

	/** The demo programs and those that the checker's tests read from files. */
	static List<Sample> ofFiles() {
		List<Sample> samples = new ArrayList<>();
		for (String folder : List.of("plugin/editor/demo", "plugin/checker/src/test/resources/truelead/checker/programs")) {
			try (Stream<Path> files = Files.list(TOP.resolve(folder))) {
				for (Path file : files.sorted().toList()) {
					samples.add(Sample.of(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8).replace("\r\n",
							"\n"), MachineProfile.generic()));
				}
			} catch (IOException unreadable) {
				throw new UncheckedIOException(unreadable);
			}
		}
		return samples;
	}

	/** A program of the fault bench. */
	static Sample ofBench(long seed) {
		Trial trial = Trial.of(seed);
		MachineProfile machine = trial.machine().isEmpty() ? MachineProfile.generic()
				: MachineProfile.read(trial.machine(), trial.name()).profile();
		return Sample.of(trial.name(), trial.text(), machine);
	}
}
