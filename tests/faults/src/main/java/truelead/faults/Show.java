package truelead.faults;

/** Prints the program of a seed, good or with a fault: {@code Show SEED [FAULT]}. */
public final class Show {
	private Show() {
	}

	/** An unknown fault, or one that has no place in the seed's program, is said so. */
	public static void main(String[] args) {
		long seed = Long.parseLong(args[0]);
		if (args.length == 1) {
			show(Trial.good(seed));
			return;
		}
		Fault fault = Faults.ALL.stream().filter(f -> f.name().equals(args[1])).findFirst()
			.orElseThrow(() -> new IllegalArgumentException("no fault is called " + args[1]));
		Trial.bad(seed, fault).ifPresentOrElse(t -> {
			show(t);
			System.err.println("to be reported at one of the lines " + t.lines() + " by " + fault.rules());
		}, () -> System.err.println("this fault has no place in the program of seed " + seed));
	}

	private static void show(Trial trial) {
		System.out.print(trial.text());
		if (!trial.machine().isEmpty()) {
			System.err.print("the folder's machine profile:\n" + trial.machine());
		}
	}
}
