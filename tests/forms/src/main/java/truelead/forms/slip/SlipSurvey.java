package truelead.forms.slip;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import truelead.checker.CheckResult;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.faults.Trial;
import truelead.forms.Checked;
import truelead.forms.ProgramFiles;
import truelead.grammar.Block;
import truelead.grammar.ProgramText;

/**
 * Puts slips into good programs and counts what is told of them: {@code SlipSurvey OUT PROGRAMS SLIPS FROM...} takes so many programs and
 * of each so many slips by chance, prints the table and keeps in the new folder OUT what nothing tells of. FROM is a folder of programs, or
 * {@code bench:SEED}, the good programs of the fault bench from a seed on.
 */
public final class SlipSurvey {

	private static final String BENCH = "bench:";
	private static final int LARGEST = 6_000;
	/** Classes put in less often say little and are no line of the table. */
	private static final int LEAST = 8;

	private final Random chance = new Random(4);
	private final int slips;
	private final Optional<SilentSlips> silent;
	private final SlipTable table = new SlipTable();
	private int programs;

	/**
	 * A survey of programs yet to be tried.
	 *
	 * @param slips how many slips are put into each program at most
	 */
	SlipSurvey(int slips, Optional<SilentSlips> silent) {
		this.slips = slips;
		this.silent = silent;
	}

	/** Prints the table. */
	public static void main(String[] args) throws IOException {
		if (args.length < 4 || Files.exists(Path.of(args[0]))) {
			System.err.println("SlipSurvey OUT PROGRAMS SLIPS FROM..., where OUT is a folder that is not there yet");
			System.exit(2);
		}
		SlipSurvey survey = new SlipSurvey(Integer.parseInt(args[2]), Optional.of(new SilentSlips(Path.of(args[0]))));
		int most = Integer.parseInt(args[1]);
		List<String> from = List.of(args).subList(3, args.length);
		Set<String> shapes = new HashSet<>();
		for (Path file : ProgramFiles.by(from.stream().filter(one -> !one.startsWith(BENCH)).toList())) {
			if (survey.programs < most && Files.size(file) < LARGEST) {
				String text = ProgramFiles.text(file);
				if (shapes.add(shape(text))) {
					survey.tryAll(file.toString(), text, MachineProfile.generic());
				}
			}
		}
		for (String bench : from.stream().filter(one -> one.startsWith(BENCH)).toList()) {
			// seeds that are even are those of good programs
			for (long seed = Long.parseLong(bench.substring(BENCH.length())) & ~1; survey.programs < most; seed += 2) {
				Trial trial = Trial.of(seed);
				survey.tryAll(trial.name(), trial.text(), trial.machine().isEmpty() ? MachineProfile.generic()
						: MachineProfile.read(trial.machine(), trial.name()).profile());
			}
		}
		System.out.println(survey.programs + " programs");
		System.out.print(survey.table.written(LEAST));
	}

	/** What stays of a program when its numbers are others: copies of one count once. */
	private static String shape(String text) {
		StringBuilder shape = new StringBuilder();
		text.chars().filter(letter -> !Character.isDigit(letter)).forEach(letter -> shape.append((char) letter));
		return shape.toString();
	}

	SlipTable table() {
		return table;
	}

	/** Programs that slips were put into. */
	int programs() {
		return programs;
	}

	/** Tries a program, if it threads and nothing is said of it above information. */
	void tryAll(String name, String text, MachineProfile machine) {
		CheckResult good = Checked.text(text, machine);
		if (good.operations() == 0 || !rules(good).isEmpty()) {
			return;
		}
		programs++;
		List<Block> blocks = blocks(text);
		List<String> before = blocks.stream().map(Block::text).toList();
		List<Slip> all = Slips.of(blocks, ToolAtLine.of(good, blocks.size()));
		Collections.shuffle(all, chance);
		Set<Slip.Kind> seen = new HashSet<>();
		for (Slip slip : all) {
			if (seen.size() < slips && seen.add(slip.in())) {
				CheckResult now = Checked.text(String.join("\n", slip.now()), machine);
				Set<String> rules = rules(now);
				boolean information = now.findings().size() != good.findings().size();
				table.add(slip.in(), rules, information);
				if (rules.isEmpty()) {
					silent.ifPresent(folder -> folder.keep(slip, name, before));
				}
			}
		}
	}

	/** The rules that speak above information. */
	private static Set<String> rules(CheckResult result) {
		return result.findings().stream().filter(finding -> finding.severity() != Severity.INFORMATION && finding.accepted().isEmpty())
				.map(Finding::rule).collect(Collectors.toCollection(TreeSet::new));
	}

	private static List<Block> blocks(String text) {
		ProgramText read = ProgramText.of(text);
		List<Block> blocks = new ArrayList<>();
		for (int line = 0; line < read.lineCount(); line++) {
			blocks.add(read.block(line));
		}
		return blocks;
	}
}
