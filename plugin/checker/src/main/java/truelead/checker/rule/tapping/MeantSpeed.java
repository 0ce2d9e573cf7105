package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The speed that was meant where F does not fit S, and S is the slip more likely: it is the one of the tool before, or of the drill, or too
 * fast or slow for a tap, or typed wrong, and F fits another whole number of turns.
 *
 * @param word  the S that does not fit
 * @param right what F fits, rev/min; NaN where that is no whole number
 * @param from  why S is the slip
 */
record MeantSpeed(WordRef word, double right, Why from) {

	/** How far from a whole number a speed may come out, by the rounding of F, rev/min. */
	private static final double WHOLE = 0.05;

	/** Why S is the slip more likely. */
	enum Why {
		LEFT_OVER(" is left over from the tool before"), OF_THE_DRILL(", the drill's, is a slip"),
				TOO_FAST(", too fast for any tap, is a slip"), PAST_ITS_DRILL(", far faster than the drill, is a slip"),
				TOO_SLOW(", too slow for any tap, is a slip"), MISTYPED(" is mistyped");

		private final String words;

		Why(String words) {
			this.words = words;
		}
	}

	/** The speed; empty where F is the slip as likely. */
	static Optional<MeantSpeed> of(TapFeed feed, Tapping tapping, double lead) {
		double right = feed.advance() * feed.speed() / lead;
		if (feed.perTurn() || feed.stroke().speed().word().isEmpty()) {
			return Optional.empty();
		}
		WordRef word = feed.stroke().speed().word().get();
		boolean before = tapping.tool().change().filter(word.block()::above).isPresent();
		if (Math.abs(right - Math.rint(right)) >= WHOLE || right < 1) {
			return before && SpeedOverLimit.likeADrill(feed.stroke(), diameter(tapping), feed.speed())
					? Optional.of(new MeantSpeed(word, Double.NaN, Why.LEFT_OVER)) : Optional.empty();
		}
		return why(feed, tapping, right, before, lead).map(why -> new MeantSpeed(word, Math.rint(right), why));
	}

	private static Optional<Why> why(TapFeed feed, Tapping tapping, double right, boolean before, double lead) {
		double diameter = diameter(tapping);
		boolean drill = feed.stroke().hole().makingBefore(feed.stroke().order()).stream().map(Cut::step)
				.anyMatch(cut -> cut.modal().speed().value() == feed.speed());
		boolean fast = SpeedOverLimit.inAnyStock(diameter, feed.speed());
		boolean past = SpeedOverLimit.pastItsDrill(feed.stroke(), diameter, feed.speed());
		boolean slow = SpeedOverLimit.tooSlow(diameter, feed.speed()) && !SpeedOverLimit.tooSlow(diameter, right);
		int alike = Typed.alike(feed.speed(), right);
		boolean mistyped = alike > Typed.alike(feed.feed().value(), feed.right(lead))
				&& (alike == Typed.SLIP || !ofAnotherPitch(feed, tapping));
		return Stream.of(before ? Why.LEFT_OVER : null, drill ? Why.OF_THE_DRILL : null, fast ? Why.TOO_FAST : null,
				past ? Why.PAST_ITS_DRILL : null, slow ? Why.TOO_SLOW : null, mistyped ? Why.MISTYPED : null)
				.flatMap(Stream::ofNullable).findFirst();
	}

	/** Whether F is that of another pitch in use: it was worked out from this S. */
	private static boolean ofAnotherPitch(TapFeed feed, Tapping tapping) {
		return ThreadTable.standard().threads(tapping.wanted().statedThread().orElseThrow().value().system()).stream()
				.anyMatch(other -> feed.fits(other.pitch()));
	}

	private static double diameter(Tapping tapping) {
		return tapping.wanted().statedThread().orElseThrow().value().diameter();
	}

	/** What to type, before the feed that fits the S as it stands. */
	String said() {
		return text() + ", if " + whose() + ", else ";
	}

	/**
	 * The speed in place of the wrong one, or in the tapping block where another tool's was left in force; empty where others turn at the
	 * same word.
	 */
	Optional<Fix> fix(TapFeed feed, Tapping tapping, Work work) {
		if (Double.isNaN(right)) {
			return Optional.empty();
		}
		if (from == Why.LEFT_OVER) {
			return Optional.of(new Fix("Add " + text() + " to the tapping block", false,
					"see that the tap was not meant to turn as the tool before",
					List.of(BlockText.append(FeedFix.opening(feed.stroke()), text()))));
		}
		Location at = Location.of(word);
		boolean shared = work.tappings().stream().anyMatch(other -> other != tapping && other.strokes().typical().stream()
				.anyMatch(stroke -> stroke.speed().word().filter(same -> Location.of(same).equals(at)).isPresent()));
		return shared ? Optional.empty() : Draft.change(word, right, 0, false, "see what else turns at this speed");
	}

	/** Whether S is the one of the tool before. */
	boolean leftOver() {
		return from == Why.LEFT_OVER;
	}

	/** Whose the wrong S is: {@code S2800 is left over from the tool before}. */
	String whose() {
		return Figures.written(word) + from.words;
	}

	/** Whether the speed that was meant is known. */
	boolean known() {
		return !Double.isNaN(right);
	}

	/** The S that was meant. */
	String text() {
		return Double.isNaN(right) ? "an S of its own" : "S" + Figures.number(right, 0);
	}
}
