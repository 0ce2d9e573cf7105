package truelead.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Times whole processes from the start: an empty Java program, the command on one small program, and the same with shared class data. */
public final class StartBench {

	private static final int ROUNDS = 15;

	private StartBench() {
	}

	/** The jar, the folder of classes, a small program. */
	public static void main(String[] arguments) throws IOException, InterruptedException {
		String jar = arguments[0];
		String archive = arguments[1] + "/truelead.jsa";
		double empty = median(List.of("-cp", arguments[1], "truelead.speed.Nothing"));
		double plain = median(List.of("-jar", jar, "check", arguments[2]));
		run(List.of("-XX:ArchiveClassesAtExit=" + archive, "-jar", jar, "check", arguments[2]));
		double shared = median(List.of("-XX:SharedArchiveFile=" + archive, "-XX:TieredStopAtLevel=1", "-jar", jar, "check", arguments[2]));
		System.out.printf(Locale.ROOT, "start: empty program %.0f ms, one small program %.0f ms (%.1f times), with shared class data %.0f ms (%.1f times); median of %d%n",
				empty, plain, plain / empty, shared, shared / empty, ROUNDS);
	}

	private static double median(List<String> arguments) throws IOException, InterruptedException {
		double[] times = new double[ROUNDS];
		for (int i = 0; i < ROUNDS; i++) {
			long start = System.nanoTime();
			run(arguments);
			times[i] = (System.nanoTime() - start) / 1e6;
		}
		Arrays.sort(times);
		return times[ROUNDS / 2];
	}

	private static void run(List<String> arguments) throws IOException, InterruptedException {
		List<String> command = new ArrayList<>(List.of(System.getProperty("java.home") + "/bin/java"));
		command.addAll(arguments);
		new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
	}
}
