package truelead.checker.machine;

/** Counts executed blocks against a budget. */
final class Meter {

	private static final int ASK_EVERY = 1 << 12;

	private final Budget budget;
	private final long limit;
	private long executed;
	private boolean spent;
	private boolean cancelled;

	/** A program without loops and calls is followed to its end, however long it is. */
	Meter(Budget budget, int lines) {
		this.budget = budget;
		this.limit = Math.max(budget.blocks(), lines);
	}

	/** One more block; false where it may not be executed any more. */
	boolean next() {
		executed++;
		if (executed > limit) {
			spent = true;
		} else if (executed % ASK_EVERY == 0 && budget.cancelled().getAsBoolean()) {
			spent = true;
			cancelled = true;
		}
		return !spent;
	}

	/** So many more blocks at once; false, and none counted, where they may not all be executed. */
	boolean next(int blocks) {
		if (spent || executed + blocks > limit) {
			return false;
		}
		boolean ask = (executed & -ASK_EVERY) != (executed + blocks & -ASK_EVERY);
		executed += blocks;
		if (ask && budget.cancelled().getAsBoolean()) {
			spent = true;
			cancelled = true;
		}
		return !spent;
	}

	/** A meter that never ends. */
	static Meter free() {
		return new Meter(new Budget(Long.MAX_VALUE, () -> false), 0);
	}

	/** Blocks executed so far. */
	long executed() {
		return executed;
	}

	boolean spent() {
		return spent;
	}

	boolean cancelled() {
		return cancelled;
	}

	long blocks() {
		return limit;
	}
}
