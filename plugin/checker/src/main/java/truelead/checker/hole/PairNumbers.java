package truelead.checker.hole;

import java.util.HashMap;
import java.util.Map;

/**
 * Numbers for pairs of numbers, the same for the same pair, from 1 on; 0 is left for nothing. Pairs that come again and again cost next to
 * nothing.
 */
public final class PairNumbers {

	private static final int RECENT = 1 << 8;

	private final Map<Long, Integer> all = new HashMap<>();
	private final long[] recent = new long[RECENT];
	private final int[] recentNumbers = new int[RECENT];

	/** The number of a pair of numbers that are not negative. */
	public int of(int one, int other) {
		long pair = (long) one << 32 | other;
		int at = Place.scatter(one, other) & RECENT - 1;
		if (recentNumbers[at] == 0 || recent[at] != pair) {
			recent[at] = pair;
			recentNumbers[at] = all.computeIfAbsent(pair, fresh -> all.size() + 1);
		}
		return recentNumbers[at];
	}
}
