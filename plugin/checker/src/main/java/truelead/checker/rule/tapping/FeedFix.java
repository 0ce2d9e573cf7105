package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.WordRef;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Fix;
import truelead.checker.rule.WordText;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** The feed that is right, as text to type and as a change of the program. */
final class FeedFix {

	private FeedFix() {
	}

	/** What to type: {@code F520}. */
	static String text(TapFeed feed, double lead) {
		int decimals = feed.decimals(lead);
		Optional<WordRef> word = feed.feed().word();
		String letter = word.filter(pitch -> pitch.written().startsWith("PIT ") || pitch.written().startsWith("MPIT ")).map(pitch -> "PIT ")
				.orElseGet(() -> String.valueOf(feed.letter()));
		return word.filter(WordRef::literal).map(plain -> WordText.shown(plain, feed.right(lead), decimals))
				.orElseGet(() -> letter + WordText.fresh(feed.right(lead), decimals, false));
	}

	/**
	 * Changes the F or K word, or adds one to the tapping block where the tool before said the word; empty where it is computed, or where
	 * another operation that shares the word needs another value.
	 */
	static Optional<Fix> of(Tapping tapping, Work work, TapFeed feed, double lead) {
		Optional<WordRef> word = feed.feed().word();
		if (word.isEmpty() || !FeedWords.of(work).allWant(word.get(), feed.right(lead))) {
			return Optional.empty();
		}
		if (tapping.tool().change().filter(word.get().block()::above).isPresent()) {
			return Optional.of(add(feed.stroke(), text(feed, lead)));
		}
		boolean own = word.get().block().sameBlock(feed.stroke().block())
				|| feed.stroke().step() instanceof Step.Stroke s && word.get().block().sameBlock(s.cycle().start());
		return Draft.change(word.get(), feed.right(lead), feed.decimals(lead), own,
				own ? "the word stands in the tapping block, and no other operation needs another value of it"
						: "the word stands in another block; see what else is fed by it");
	}

	/** Changes every word of the same wrong feed, as one word is changed; empty where one of them cannot be changed. */
	static Optional<Fix> of(Tapping tapping, Work work, List<TapFeed> feeds, double lead) {
		List<Optional<Fix>> fixes = feeds.stream().map(feed -> of(tapping, work, feed, lead)).toList();
		return fixes.stream().allMatch(Optional::isPresent) ? Fix.together(fixes.stream().flatMap(Optional::stream).toList())
				: Optional.empty();
	}

	/** Whether the word is a plain number, and another operation that shares it needs another value. */
	static boolean shared(Work work, TapFeed feed, double lead) {
		return feed.feed().word().filter(WordRef::literal).filter(word -> !FeedWords.of(work).allWant(word, feed.right(lead))).isPresent();
	}

	/** Adds the right feed to the tapping block. */
	static Fix add(TapStroke stroke, String word) {
		return new Fix("Add " + word + " to the tapping block", true, "no feed of this tool is in force that it could take the place of",
				List.of(BlockText.append(opening(stroke), word)));
	}

	/** The block that starts the stroke's cycle; the stroke's own where it is a move. */
	static BlockRef opening(TapStroke stroke) {
		return stroke.step() instanceof Step.Stroke s ? s.cycle().start() : stroke.block();
	}
}
