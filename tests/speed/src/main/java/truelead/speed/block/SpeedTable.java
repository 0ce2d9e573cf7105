package truelead.speed.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks of reading, checking and editing, and prints one table with our times beside the baselines of the same run. */
public final class SpeedTable {

	private static final List<String> READING = List.of("baselineNewlines", "baselineLexer", "baselineParser", "readBlocks", "check");

	private SpeedTable() {
	}

	/** {@code blocks}, {@code edits} or {@code memory}; then kinds of programs and numbers of blocks, each parted by commas. */
	public static void main(String[] arguments) throws RunnerException {
		String[] kinds = (arguments.length > 1 ? arguments[1] : "surfacing,axes,pockets,named,holes,cycles,mills,mixed,turning").split(",");
		switch (arguments[0]) {
			case "blocks" -> blocks(kinds, sizes(arguments, "10000,100000,1000000"));
			case "edits" -> edits(kinds, sizes(arguments, "10000,100000,1000000"));
			case "memory" -> memory(kinds, sizes(arguments, "10000,100000,1000000"));
			default -> throw new IllegalArgumentException("blocks, edits or memory, not " + arguments[0]);
		}
	}

	private static String[] sizes(String[] arguments, String otherwise) {
		return (arguments.length > 2 ? arguments[2] : otherwise).split(",");
	}

	private static void blocks(String[] kinds, String[] sizes) throws RunnerException {
		Map<String, Map<String, Double>> rows = new TreeMap<>();
		for (RunResult result : run(ReadingBenchmark.class, kinds, sizes)) {
			rows.computeIfAbsent(row(result), row -> new TreeMap<>())
					.put(result.getPrimaryResult().getLabel(), result.getPrimaryResult().getScore());
		}
		System.out.println("\nmilliseconds           newlines    lexer   parser  reading    check  check / lexer");
		rows.forEach((row, times) -> {
			StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-22s", row));
			READING.forEach(name -> line.append(String.format(Locale.ROOT, "%9.1f", times.getOrDefault(name, Double.NaN))));
			System.out.println(line.append(String.format(Locale.ROOT, "%15.2f", times.get("check") / times.get("baselineLexer"))));
		});
	}

	private static void edits(String[] kinds, String[] sizes) throws RunnerException {
		List<String> lines = new ArrayList<>();
		for (RunResult result : run(EditBenchmark.class, kinds, sizes)) {
			lines.add(String.format(Locale.ROOT, "%-22s%-14s%9.3f%9.3f%9d", row(result), result.getPrimaryResult().getLabel(),
					result.getPrimaryResult().getStatistics().getPercentile(50),
					result.getPrimaryResult().getStatistics().getPercentile(99), result.getPrimaryResult().getStatistics().getN()));
		}
		System.out.println("\nmilliseconds                           median      99 %    edits");
		lines.forEach(System.out::println);
	}

	private static Collection<RunResult> run(Class<?> benchmark, String[] kinds, String[] sizes) throws RunnerException {
		return new Runner(new OptionsBuilder().include(benchmark.getName()).param("kind", kinds).param("blocks", sizes).build()).run();
	}

	private static String row(RunResult result) {
		return String.format(Locale.ROOT, "%-10s%9s", result.getParams().getParam("kind"), result.getParams().getParam("blocks"));
	}

	private static void memory(String[] kinds, String[] sizes) {
		System.out.println("\nbytes kept             bytes of text   text and what is known of it   and the findings   bytes a "
				+ "byte of text");
		for (String kind : kinds) {
			Arrays.stream(sizes).mapToInt(Integer::parseInt).forEach(size -> System.out.println(OpenProgram.row(kind, size)));
		}
	}
}
