package truelead.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Times whole processes from the start, by turns: an empty Java program, the command on one small program by its jar alone, and the same as
 * {@code feature/truelead} starts it, with an archive of its classes.
 */
public final class StartBench {

	private static final int ROUNDS = 41;
	private static final String MAIN = "truelead.audit.Main";

	private StartBench() {
	}

	/** The jar, the folder of classes, a small program. */
	public static void main(String[] arguments) throws IOException, InterruptedException {
		String jar = arguments[0];
		String program = arguments[2];
		String archive = arguments[1] + "/truelead.jsa";
		String list = arguments[1] + "/truelead.list";
		run(List.of("-XX:DumpLoadedClassList=" + list, "-cp", jar, MAIN, "check", program));
		run(List.of("-Xshare:dump", "-XX:SharedClassListFile=" + list, "-XX:SharedArchiveFile=" + archive, "-cp", jar));
		List<List<String>> starts = List.of(List.of("-cp", arguments[1], "truelead.speed.Nothing"), List.of("-jar", jar, "check", program),
				List.of("-Xshare:auto", "-XX:SharedArchiveFile=" + archive, "-XX:TieredStopAtLevel=1", "-XX:CompileThresholdScaling=8",
						"-XX:-UsePerfData", "-Xlog:disable", "-Dfile.encoding=UTF-8", "-cp", jar, MAIN, "check", program));
		double[][] times = new double[starts.size()][ROUNDS];
		for (int round = 0; round < ROUNDS; round++) {
			for (int i = 0; i < times.length; i++) {
				long start = System.nanoTime();
				run(starts.get(i));
				times[i][round] = (System.nanoTime() - start) / 1e6;
			}
		}
		Arrays.stream(times).forEach(Arrays::sort);
		double empty = times[0][ROUNDS / 2];
		double plain = times[1][ROUNDS / 2];
		double shared = times[2][ROUNDS / 2];
		System.out.printf(Locale.ROOT,
				"start: empty program %.0f ms, one small program %.0f ms (%.1f times), with shared class data %.0f ms (%.1f times); "
				+ "median of %d;" + " fastest %.0f, %.0f, %.0f ms%n", empty, plain, plain / empty, shared, shared / empty, ROUNDS,
				times[0][0], times[1][0], times[2][0]);
	}

	private static void run(List<String> arguments) throws IOException, InterruptedException {
		List<String> command = new ArrayList<>(List.of(System.getProperty("java.home") + "/bin/java"));
		command.addAll(arguments);
		new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
	}
}
