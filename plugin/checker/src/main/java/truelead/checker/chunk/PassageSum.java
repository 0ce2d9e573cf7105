package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import truelead.checker.chunk.Contour.FeedWord;
import truelead.checker.chunk.Contour.Passage;

/** Adds up the moves of a contour that are no rapids. */
final class PassageSum {

	private final PlainLines lines;
	private int cuts = -1;
	private boolean levels;
	private boolean entryLevels;
	private boolean entryFeed;
	/** The feed that the move before was made under. */
	private int before = -1;
	private int least = -1;
	private int most = -1;

	PassageSum(PlainLines lines) {
		this.lines = lines;
	}

	/**
	 * Moves that are no rapids, all under one feed.
	 *
	 * @param line    the first of them
	 * @param changed whether one changes the level
	 * @param entry   whether one says the first Z
	 * @param feed    line of the F word they are made under, -1 for the one in force at the beginning
	 */
	void cut(int line, boolean changed, boolean entry, int feed) {
		cuts = cuts < 0 ? line : cuts;
		levels |= changed;
		entryLevels |= entry;
		if (feed < 0) {
			entryFeed = true;
			return;
		}
		if (feed == before) {
			return;
		}
		before = feed;
		least = least < 0 || lines.feeds[feed] < lines.feeds[least] ? feed : least;
		most = most < 0 || lines.feeds[feed] > lines.feeds[most] ? feed : most;
	}

	/** The sum; {@code word} gives the F word of a line. */
	Passage passage(IntFunction<FeedWord> word) {
		List<FeedWord> feeds = new ArrayList<>(2);
		if (least >= 0) {
			feeds.add(word.apply(least));
		}
		if (most >= 0 && most != least) {
			feeds.add(word.apply(most));
		}
		return new Passage(cuts, levels, entryLevels, entryFeed, List.copyOf(feeds));
	}
}
