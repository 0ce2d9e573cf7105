package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import truelead.checker.machine.Step;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Figures;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;

/**
 * How far one stroke's feed moves the tap in a turn of the spindle. Per minute: F / S; per revolution: F; synchronised: K (or F as the
 * lead).
 *
 * @param stroke  the stroke
 * @param feed    the F or K that says it, program units
 * @param perTurn whether the number is a length a turn as against a length a minute
 * @param speed   rev/min; NaN where it is per turn and no speed is known
 * @param advance mm a turn
 */
record TapFeed(TapStroke stroke, Setting feed, boolean perTurn, double speed, double advance) {

	/**
	 * What a computed feed may be off the lead, as a part of it: constants such as 0.0787 for 2 mm are rounded too (common practice, no
	 * source).
	 */
	private static final double COMPUTED = 0.005;
	/** The most that written decimals excuse, as a part of the lead. */
	private static final double MOST = 0.01;
	/** The same for a feed in the other unit, whose last decimal then weighs 25 times as much. */
	private static final double CONVERTED = 0.04;
	/** Below this part of the lead nobody could write the feed better. */
	private static final double EXACT = 0.0005;

	/** The advance of a stroke; empty where feed or speed is not known, is zero, or does not count turns. */
	static Optional<TapFeed> of(Tapping tapping, TapStroke stroke) {
		boolean synchronised = tapping.method().synchronised();
		Setting feed = synchronised ? stroke.lead() : stroke.feed();
		FeedMode mode = stroke.modal().feedMode();
		boolean perTurn = synchronised || mode == FeedMode.PER_REVOLUTION;
		if (!feed.known() || feed.value() == 0 || !synchronised && mode == FeedMode.INVERSE_TIME) {
			return Optional.empty();
		}
		double length = Math.abs(feed.value()) * stroke.modal().unit().mm();
		if (perTurn) {
			return Optional.of(new TapFeed(stroke, feed, true, stroke.speed().known() ? stroke.speed().value() : Double.NaN, length));
		}
		double speed = stroke.speed().value();
		return stroke.speed().known() && speed > 0 && !stroke.modal().constantSurface()
				? Optional.of(new TapFeed(stroke, feed, false, speed, length / speed))
				: Optional.empty();
	}

	/** The lead of a synchronised move of its own that comes out; empty where there is none, or it is not known. */
	static Optional<TapFeed> comingOut(Tapping tapping, TapStroke stroke) {
		return stroke.back().filter(Step.Synchronised.class::isInstance).map(Step.Synchronised.class::cast)
				.filter(out -> out.lead().known() && out.lead().value() != 0)
				.map(out -> new TapFeed(stroke, out.lead(), true, Double.NaN, Math.abs(out.lead().value()) * out.modal().unit().mm()));
	}

	/** The first feed of an operation that is as asked, and those of the same value and speed; one of each kind of strokes. */
	static List<TapFeed> alike(Tapping tapping, Predicate<TapFeed> asked) {
		List<TapFeed> feeds = new ArrayList<>(1);
		for (TapStroke stroke : tapping.strokes().typical()) {
			of(tapping, stroke).filter(asked).filter(feed -> feeds.isEmpty() || feed.said().equals(feeds.get(0).said()))
					.ifPresent(feeds::add);
		}
		return feeds;
	}

	/** Advance less the lead wanted, mm a turn: negative where the tap is held back. */
	double error(double lead) {
		return advance - lead;
	}

	/** Whether the feed is the lead times the speed as well as it can be written. */
	boolean exact(double lead) {
		return Math.abs(error(lead)) <= EXACT * lead;
	}

	/**
	 * Whether the feed is right within half a unit of its last written decimal, limits included, but never more than 1 % of the lead: a
	 * whole number must not excuse a wrong pitch.
	 */
	boolean fits(double lead) {
		return Math.abs(error(lead)) <= excused(lead) + 1e-9 * lead;
	}

	/** As {@link #fits}, for the feed read in another unit: multiplied by a factor. */
	boolean fitsTimes(double factor, double lead) {
		boolean written = feed.word().map(WordRef::asWritten).orElse(false);
		double half = written ? feed.rounding() * stroke.modal().unit().mm() / (perTurn ? 1 : speed) * factor : 0;
		return Math.abs(advance * factor - lead) <= Math.min(half, CONVERTED * lead) + COMPUTED * lead;
	}

	private double excused(double lead) {
		boolean written = feed.word().map(WordRef::asWritten).orElse(false);
		double half = feed.rounding() * stroke.modal().unit().mm() / (perTurn ? 1 : speed);
		return written ? Math.min(half, MOST * lead) : COMPUTED * lead;
	}

	/** The F or K that is right for a lead, program units; of J or E of a cycle, the threads an inch. */
	double right(double lead) {
		boolean anInch = (letter() == 'J' || letter() == 'E') && stroke.step() instanceof Step.Stroke;
		return anInch ? LengthUnit.INCH.mm() / lead : lead / stroke.modal().unit().mm() * (perTurn ? 1 : speed);
	}

	/** Decimals that the right value needs to be exact, from those written up to 4. */
	int decimals(double lead) {
		double right = right(lead);
		int most = perTurn ? 5 : 4;
		for (int decimals = 0; decimals < most; decimals++) {
			double shown = Math.rint(right * Math.pow(10, decimals)) / Math.pow(10, decimals);
			if (Math.abs(shown - right) <= EXACT / 2 * right) {
				return decimals;
			}
		}
		return most;
	}

	/** The letter of the number. */
	char letter() {
		return feed.word().map(WordRef::address).orElse('F');
	}

	/** How a message names it: {@code F500 at S520}, {@code F1 a turn}, {@code K.0312}. */
	String said() {
		String word = feed.word().map(Figures::written).orElse("F" + Figures.number(feed.value(), 4));
		return perTurn ? word : word + " at S" + Figures.number(speed, 1);
	}
}
