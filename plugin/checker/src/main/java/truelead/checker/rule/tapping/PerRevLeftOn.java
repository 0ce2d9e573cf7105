package truelead.checker.rule.tapping;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.FeedUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** The feed mode that a tapping operation set is still in force at a later feed that only makes sense in the other one. */
public final class PerRevLeftOn extends TappingRule {

	/** Words for the feed mode, in pairs. */
	private static final Map<String, String> OTHER = Map.of("G94", "G95", "G95", "G94", "G98", "G99", "G99", "G98");

	public PerRevLeftOn() {
		super("per-rev-left-on");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.MODE_LEFT_ON);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.OTHER_TOOLS_FEED);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		// a mode that does not fit the tap either was never meant for it, which feed-in-wrong-mode says
		if (tapping.strokes().isEmpty() || misled(tapping)) {
			return;
		}
		Optional<WordRef> word = tapping.strokes().get(tapping.strokes().size() - 1).modal().feedModeStated();
		if (word.isEmpty()) {
			return;
		}
		FeedModeWords words = work.derived(FeedModeWords.class, all -> new FeedModeWords(all, PerRevLeftOn::misled));
		int stay = tapping.tool().index();
		if (words.usedBefore(word.get(), stay) || !setForIt(tapping, word.get())) {
			return;
		}
		// by moves in and out the tap's own feed is among the tool's
		Optional<FeedUse> use = words.oddFrom(word.get(), tapping.method() == Tapping.Method.FEED ? stay + 1 : stay);
		if (use.isPresent()) {
			found.accept(draft(use.get(), use.get().odd().orElseThrow(), word.get()));
			return;
		}
		words.misledAfter(word.get(), stay).ifPresent(later -> {
			TapStroke stroke = later.strokes().get(0);
			Setting feed = TapFeed.of(later, stroke).orElseThrow().feed();
			found.accept(at(feed, stroke.block(), new Figures(stroke.modal().unit()), stroke.modal().feedMode(), word.get()).on(later));
		});
	}

	/** Whether the first stroke's feed does not fit its thread and would in the other mode. */
	private static boolean misled(Tapping tapping) {
		double lead = tapping.wanted().statedThread().map(t -> t.value().lead()).orElse(Double.NaN);
		return !tapping.method().synchronised() && TapFeed.of(tapping, tapping.strokes().get(0))
				.filter(f -> !f.fits(lead) && FeedInWrongMode.otherMode(f).map(o -> o.fits(lead)).orElse(false)).isPresent();
	}

	/** Whether the mode was set for the tap: its word stands in the tap's stay, not at the program's head. */
	private static boolean setForIt(Tapping tapping, WordRef word) {
		return tapping.tool().change().filter(change -> !word.block().above(change)).isPresent();
	}

	private Draft draft(FeedUse use, Setting feed, WordRef mode) {
		return at(feed, use.first(), new Figures(use.unit()), use.mode(), mode);
	}

	/** The word for the other feed mode: G94 where G95 is in force, G98 where G99 is. */
	private static Optional<String> other(WordRef word) {
		return Optional.ofNullable(OTHER.get(Figures.written(word)));
	}

	private Draft at(Setting feed, BlockRef block, Figures figures, FeedMode mode, WordRef word) {
		boolean perTurn = mode == FeedMode.PER_REVOLUTION;
		String said = feed.word().map(Figures::written).orElse("F" + Figures.number(feed.value(), 4));
		String message = said + " is read as " + Figures.number(feed.value(), 4) + " " + figures.symbol()
				+ (perTurn ? " a turn" : " a minute") + ": " + Figures.written(word)
				+ " of the tapping operation is still in force; set feed " + (perTurn ? "per minute" : "per revolution")
				+ " again behind the tapping" + other(word).map(code -> ", " + code).orElse("");
		return Draft.of(this, Severity.ERROR, feed, block, message).programmed("feed", said, feed)
				.from("feed mode", perTurn ? "per revolution" : "per minute", "programmed: " + Figures.written(word))
				.related(Location.of(word), "the word for the feed mode");
	}
}
