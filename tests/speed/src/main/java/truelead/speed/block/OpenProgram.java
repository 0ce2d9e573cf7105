package truelead.speed.block;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/** How much memory an open program keeps: the heap in use with it, less that without it. */
final class OpenProgram {

	private OpenProgram() {
	}

	static String row(String kind, int blocks) {
		check(ProgramText.of(Programs.of(kind, 1000, 42)));
		byte[] bytes = Programs.of(kind, blocks, 42).getBytes(StandardCharsets.UTF_8);
		long before = used();
		ProgramText text = ProgramText.read(bytes);
		CheckResult result = check(text);
		long all = used() - before;
		int findings = result.findings().size();
		result = null;
		long known = used() - before;
		return String.format(Locale.ROOT, "%-10s%9d%17d%31d%19d%23.2f%s", kind, blocks, bytes.length, known, all - known,
				(double) all / text.length(), findings == 0 ? " (nothing found)" : "");
	}

	private static CheckResult check(ProgramText text) {
		return Checker.check(new ProgramFile("A.NC", text), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(), RuleSettings.DEFAULT);
	}

	private static long used() {
		Runtime runtime = Runtime.getRuntime();
		long used = Long.MAX_VALUE;
		for (int i = 0; i < 5; i++) {
			System.gc();
			used = Math.min(used, runtime.totalMemory() - runtime.freeMemory());
		}
		return used;
	}
}
