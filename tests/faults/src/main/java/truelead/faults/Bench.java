package truelead.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fault bench: {@code Bench [COUNT [FIRST SEED [OFFENDERS]]]} checks so many good programs and as many with one fault. */
public final class Bench {
	private static final int BATCH = 400;

	private Bench() {
	}

	/** Prints the table and the first offenders; ends with 1 where a good program raised an alarm. */
	public static void main(String[] args) {
		int count = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
		long first = args.length > 1 ? Long.parseLong(args[1]) : 1;
		int each = args.length > 2 ? Integer.parseInt(args[2]) : 3;
		Checker checker = new Checker();
		Tally tally = run(checker, first, count);
		System.out.print(tally.offenders(each));
		System.out.println();
		System.out.print(tally.table(checker.rules));
		System.exit(tally.alarmed() == 0 ? 0 : 1);
	}

	/** Good and bad programs of the seeds from the first on; each fault is put in about equally often. */
	static Tally run(Checker checker, long first, int count) {
		Tally tally = new Tally();
		for (long from = first; from < first + count; from += BATCH) {
			List<Trial> trials = new ArrayList<>();
			int[] planned = new int[Faults.ALL.size()];
			for (int i = 0; i < planned.length; i++) {
				planned[i] = tally.put(Faults.ALL.get(i).name());
			}
			for (long seed = from; seed < Math.min(first + count, from + BATCH); seed++) {
				trials.add(Trial.good(seed));
				rarest(seed, planned).ifPresent(trials::add);
			}
			Map<String, List<Said>> said = checker.check(trials);
			for (Trial trial : trials) {
				tally.add(Verdict.of(trial, said.getOrDefault(trial.name(), List.of())));
			}
		}
		return tally;
	}

	/** Of the faults that have a place in the seed's program the one put in least often so far. */
	private static Optional<Trial> rarest(long seed, int[] planned) {
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < planned.length; i++) {
			order.add(i);
		}
		order.sort(Comparator.comparingInt(i -> planned[i]));
		for (int i : order) {
			Optional<Trial> trial = Trial.bad(seed, Faults.ALL.get(i));
			if (trial.isPresent()) {
				planned[i]++;
				return trial;
			}
		}
		return Optional.empty();
	}
}
