package truelead.faults;

import java.util.List;
import java.util.SplittableRandom;

/** Seeded choices: the same seed makes the same program on every machine. */
final class Dice {
	private final SplittableRandom random;

	Dice(long seed) {
		this.random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 0x632BE59BD9B4E019L);
	}

	/** True with the given probability, 0 to 1. */
	boolean chance(double probability) {
		return random.nextDouble() < probability;
	}

	/** A whole number from low to high, both included. */
	int whole(int low, int high) {
		return low + random.nextInt(high - low + 1);
	}

	/** A number from low up to high. */
	double between(double low, double high) {
		return low + random.nextDouble() * (high - low);
	}

	@SafeVarargs
	final <T> T pick(T... choices) {
		return choices[random.nextInt(choices.length)];
	}

	<T> T pick(List<T> choices) {
		return choices.get(random.nextInt(choices.size()));
	}

	/** A seed for another, independent set of choices. */
	long seed() {
		return random.nextLong();
	}
}
