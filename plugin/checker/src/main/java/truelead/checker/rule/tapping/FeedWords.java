package truelead.checker.rule.tapping;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** Which values the F and K words of a program's tapping ought to have, gathered once: one word may feed thousands of strokes. */
final class FeedWords {

	/** The smallest and the largest value that strokes fed by a word want; NaN once one of them is not known. */
	private record Wanted(double least, double most) {

		Wanted with(Wanted other) {
			return new Wanted(Math.min(least, other.least), Math.max(most, other.most));
		}
	}

	private final Map<Location, Wanted> wanted = new HashMap<>();

	private FeedWords(Work work) {
		for (Tapping tapping : work.tappings()) {
			double lead = tapping.wanted().statedThread().map(Fact::value).map(ThreadSpec::lead).orElse(Double.NaN);
			WordRef before = null;
			double valueBefore = Double.NaN;
			for (TapStroke stroke : tapping.strokes().typical()) {
				Optional<TapFeed> feed = TapFeed.of(tapping, stroke);
				Optional<WordRef> word = feed.flatMap(f -> f.feed().word());
				if (word.isPresent()) {
					double right = feed.get().right(lead);
					// strokes of one cycle share their word: looking it up again would tell nothing new
					if (word.get() != before || Double.compare(right, valueBefore) != 0) {
						before = word.get();
						valueBefore = right;
						wanted.merge(Location.of(before), new Wanted(right, right), Wanted::with);
					}
				}
			}
		}
	}

	static FeedWords of(Work work) {
		return work.derived(FeedWords.class, FeedWords::new);
	}

	/** Whether every stroke that a word feeds wants this value of it. */
	boolean allWant(WordRef word, double right) {
		Wanted range = wanted.get(Location.of(word));
		return range == null || same(range.least(), right) && same(range.most(), right);
	}

	private static boolean same(double value, double right) {
		return Math.abs(value - right) <= 1e-6 * right;
	}
}
