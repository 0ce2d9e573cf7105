package truelead.checker.rule.tapping;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.FeedUse;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** What each word for a feed mode is in force at, by the stays of the tools, gathered once. */
final class FeedModeWords {

	/** The first tool that feeds under a word; the odd feeds and the tapping in the other mode's feed that come behind, by stay. */
	private static final class Used {

		private int first = Integer.MAX_VALUE;
		private final NavigableMap<Integer, FeedUse> odd = new TreeMap<>();
		private final NavigableMap<Integer, Tapping> misled = new TreeMap<>();
	}

	private static final Used NONE = new Used();

	private final Map<Location, Used> words = new HashMap<>();

	/** @param misled tells the tapping whose feed would be right in the other mode */
	FeedModeWords(Work work, Predicate<Tapping> misled) {
		for (ToolUse tool : work.tools()) {
			for (FeedUse use : tool.summary().feeds()) {
				if (use.modeWord().isPresent()) {
					Used used = words.computeIfAbsent(Location.of(use.modeWord().get()), word -> new Used());
					used.first = Math.min(used.first, tool.index());
					if (use.odd().isPresent()) {
						used.odd.putIfAbsent(tool.index(), use);
					}
				}
			}
		}
		for (Tapping tapping : work.tappings()) {
			if (!tapping.strokes().isEmpty()) {
				TapStroke stroke = tapping.strokes().get(0);
				stroke.modal().feedModeStated().filter(word -> misled.test(tapping)).ifPresent(word -> words
						.computeIfAbsent(Location.of(word), w -> new Used()).misled.putIfAbsent(tapping.tool().index(), tapping));
			}
		}
	}

	/** Whether a tool before a stay feeds under the word already. */
	boolean usedBefore(WordRef word, int stay) {
		return used(word).first < stay;
	}

	/** The first odd feed under the word from a stay on. */
	Optional<FeedUse> oddFrom(WordRef word, int stay) {
		return Optional.ofNullable(used(word).odd.ceilingEntry(stay)).map(Map.Entry::getValue);
	}

	/** The first tapping behind a stay that the word misleads. */
	Optional<Tapping> misledAfter(WordRef word, int stay) {
		return Optional.ofNullable(used(word).misled.higherEntry(stay)).map(Map.Entry::getValue);
	}

	private Used used(WordRef word) {
		return words.getOrDefault(Location.of(word), NONE);
	}
}
