package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A seed's good program, or the same with one fault: the text, the lines at which the fault may be reported, and the text of the folder's
 * machine profile, empty where it has none.
 */
public record Trial(long seed, Optional<Fault> fault, String text, List<Integer> lines, String machine) {

	/** The program of an even seed as it is good, that of an odd one with a fault that has a place in it. */
	public static Trial of(long seed) {
		for (int i = 0; seed % 2 != 0 && i < Faults.ALL.size(); i++) {
			Optional<Trial> bad = bad(seed, Faults.ALL.get((int) Math.floorMod(seed * 37 + i, (long) Faults.ALL.size())));
			if (bad.isPresent()) {
				return bad.get();
			}
		}
		return good(seed);
	}

	static Trial good(long seed) {
		Job job = Planner.plan(seed);
		return new Trial(seed, Optional.empty(), Programs.print(job).text(), List.of(), profile(job));
	}

	/** The seed's program with this fault; empty where the fault has no place in it. */
	static Optional<Trial> bad(long seed, Fault fault) {
		Job job = Planner.plan(seed);
		List<String> marks = fault.setter().put(job, new Dice(seed * 7919 + 13));
		if (marks.isEmpty()) {
			return Optional.empty();
		}
		Print print = Programs.print(job);
		Trial good = good(seed);
		if (print.text().equals(good.text()) && profile(job).equals(good.machine())) {
			return Optional.empty();
		}
		TreeSet<Integer> lines = new TreeSet<>();
		for (String mark : marks) {
			lines.addAll(print.lines().getOrDefault(mark, List.of()));
			if (mark.equals("anywhere")) {
				print.text().lines().forEach(l -> lines.add(lines.size() + 1));
			}
		}
		return Optional.of(new Trial(seed, Optional.of(fault), print.text(), new ArrayList<>(lines), profile(job)));
	}

	private static String profile(Job job) {
		return job.machine.map(Machine::text).orElse("");
	}

	/** File name that leads back to seed and fault. */
	public String name() {
		return fault.map(f -> seed + "-bad.nc").orElse(seed + "-good.nc");
	}
}
