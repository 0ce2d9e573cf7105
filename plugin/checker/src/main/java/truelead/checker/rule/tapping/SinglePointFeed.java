package truelead.checker.rule.tapping;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.AnotherThread;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;

/**
 * The lead of a thread that a lathe cuts by a single point. A whole multiple of the pitch is a thread of several starts, which a comment
 * seldom says, where the passes start at several places along the lead.
 */
final class SinglePointFeed {

	/** How far F may be rounded, as a part of the lead (real programs round by up to 0.64 %). */
	private static final double ROUNDED = 0.01;

	/** Speed that no lead is mistaken for: below it F is a lead of several starts, rev/min. */
	private static final double LEAST_SPEED = 20;

	private SinglePointFeed() {
	}

	/**
	 * The finding on a pass whose F is neither the lead nor a whole multiple of it, or, of the only lead of its tool, on starts that are
	 * all one.
	 */
	static Optional<Draft> check(Rule rule, SinglePoint turned, boolean alone) {
		Setting feed = turned.pass().lead();
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
		if (thread.isEmpty() || !feed.known() || feed.value() == 0 || leftOver(turned).isPresent()) {
			return Optional.empty();
		}
		double lead = thread.get().value().lead();
		double cut = Math.abs(feed.value()) * turned.pass().modal().unit().mm();
		if (mixed(cut, lead) || minute(turned, cut, lead)) {
			return Optional.empty();
		}
		double half = feed.word().map(WordRef::asWritten).orElse(false) ? feed.rounding() * turned.pass().modal().unit().mm() : 0;
		double starts = Math.max(1, Math.rint(cut / lead));
		boolean one = starts > 1 && turned.starts() == 1;
		if (!one && Math.abs(cut - starts * lead) <= Math.max(ROUNDED * lead, Math.min(half, 2 * ROUNDED * lead))) {
			int grooves = turned.grooves(thread.get().value());
			return alone && grooves > 0 && grooves < thread.get().value().starts()
					? Optional.of(grooveLeftOut(rule, turned, thread.get(), grooves)) : Optional.empty();
		}
		Figures figures = new Figures(turned.pass().modal().unit());
		String letter = feed.word().map(word -> String.valueOf(word.address())).orElse("");
		String right = letter + Figures.number(lead / turned.pass().modal().unit().mm(), 5);
		Optional<AnotherThread> another = AnotherThread.turned(turned);
		return Optional.of(Draft.of(rule, Severity.ERROR, feed, turned.pass().block(), (letter.isEmpty() ? "F" : letter)
				+ Figures.number(feed.value(), 5) + " cuts a lead of " + figures.advance(cut) + " " + figures.symbol() + ", "
				+ thread.get().value().withoutClass().designation() + " has " + figures.advance(lead)
				+ (one ? ", and all passes start at one place, for one start" : "") + ": " + figures.advance(Math.abs(cut - lead)) + " too "
				+ (cut < lead ? "little" : "much") + " a turn, no gauge or screw goes in past the first turns; " + right
				+ another.map(other -> other.said(letter, figures)).orElse(""))
				.programmed("lead", figures.advance(cut) + " " + figures.symbol(), feed)
				.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread.get()));
	}

	/**
	 * The F of the tool before, written above the block that changes the tool, that a thread gets for its lead and that does not fit; empty
	 * where there is none.
	 */
	static Optional<WordRef> leftOver(SinglePoint turned) {
		Setting feed = turned.pass().lead();
		Optional<BlockRef> change = turned.pass().modal().toolChange();
		BlockRef pass = turned.pass().block();
		double cut = feed.known() ? Math.abs(feed.value()) * turned.pass().modal().unit().mm() : Double.NaN;
		boolean fits = turned.thread().filter(thread -> Math.abs(cut - thread.value().lead()) <= ROUNDED * thread.value().lead())
				.isPresent();
		return fits ? Optional.empty() : feed.word().filter(word -> word.address() == 'F' && change.filter(at -> word.block().above(at)
				&& at.above(pass)).isPresent());
	}

	/** Whether a lead is that of the thread in the other unit, by what F is usually rounded. */
	private static boolean mixed(double cut, double lead) {
		return Math.abs(cut * LengthUnit.INCH.mm() - lead) <= 2 * ROUNDED * lead
				|| Math.abs(cut / LengthUnit.INCH.mm() - lead) <= 2 * ROUNDED * lead;
	}

	/** Whether F is what a tap would be fed a minute for this lead. */
	private static boolean minute(SinglePoint turned, double cut, double lead) {
		Modal modal = turned.pass().modal();
		return modal.speed().known() && !modal.constantSurface() && modal.speed().value() > LEAST_SPEED
				&& Math.abs(cut - lead * modal.speed().value()) <= ROUNDED * lead * modal.speed().value();
	}

	/** The finding of an F that is the way a minute, pitch times speed; empty where it is not. */
	static Optional<Draft> otherMode(Rule rule, SinglePoint turned) {
		Setting feed = turned.pass().lead();
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
		Modal modal = turned.pass().modal();
		double cut = feed.known() ? Math.abs(feed.value()) * modal.unit().mm() : Double.NaN;
		if (thread.isEmpty() || !minute(turned, cut, thread.get().value().lead())) {
			return Optional.empty();
		}
		double lead = thread.get().value().lead();
		Figures figures = new Figures(modal.unit());
		String letter = feed.word().map(word -> String.valueOf(word.address())).orElse("F");
		String message = letter + Figures.number(feed.value(), 4) + " is the feed a minute at S" + Figures.number(modal.speed().value(), 1)
				+ ": the thread is cut by the lead a turn, of " + thread.get().value().withoutClass().designation() + " "
				+ figures.advance(lead) + "; " + letter + Figures.number(lead / modal.unit().mm(), 5);
		return Optional.of(Draft.of(rule, Severity.ERROR, feed, turned.pass().block(), message)
				.programmed("lead", figures.advance(cut) + " " + figures.symbol(), feed)
				.programmed("speed", "S" + Figures.number(modal.speed().value(), 1), modal.speed())
				.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread.get()));
	}

	/**
	 * What is said of a thread whose lead is F under a word for feed per minute; empty where another word is the lead, or none is in force.
	 */
	static Optional<Draft> perMinute(Rule rule, SinglePoint turned) {
		Setting feed = turned.pass().lead();
		Modal modal = turned.pass().modal();
		boolean byFeed = feed.word().filter(word -> word.address() == 'F').isPresent();
		if (!byFeed || modal.feedMode() != FeedMode.PER_MINUTE || modal.feedModeStated().isEmpty()) {
			return Optional.empty();
		}
		String word = Figures.written(modal.feedModeStated().get());
		return Optional.of(Draft.of(rule, Severity.INFORMATION, feed, turned.pass().block(),
				word + ", feed per minute, is in force at the thread: most controls read its F as the lead a turn all the same; "
				+ "else the word for feed per revolution before it").related(Location.of(modal.feedModeStated().get()), "the feed mode"));
	}

	/** The finding of an F that is the lead in the other unit; empty where it is not. */
	static Optional<Draft> otherUnit(Rule rule, SinglePoint turned) {
		Setting feed = turned.pass().lead();
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
		LengthUnit unit = turned.pass().modal().unit();
		double cut = feed.known() ? Math.abs(feed.value()) * unit.mm() : Double.NaN;
		if (thread.isEmpty() || !mixed(cut, thread.get().value().lead()) || leftOver(turned).isPresent()) {
			return Optional.empty();
		}
		double lead = thread.get().value().lead();
		Figures figures = new Figures(unit);
		String letter = feed.word().map(word -> String.valueOf(word.address())).orElse("F");
		boolean otherUnit = cut < lead == (unit == LengthUnit.MM);
		String message = letter + Figures.number(feed.value(), 5) + " cuts a lead of " + figures.advance(cut) + " " + figures.symbol()
				+ ", " + thread.get().value().withoutClass().designation() + " has " + figures.advance(lead) + ", "
				+ (cut < lead ? "25.4 times as much" : "a 25.4th of it") + ": "
				+ (otherUnit ? "the value is in " + (unit == LengthUnit.MM ? "inches" : "mm") : "converted twice") + "; " + letter
				+ Figures.number(lead / unit.mm(), 5);
		return Optional.of(Draft.of(rule, Severity.ERROR, feed, turned.pass().block(), message)
				.programmed("lead", figures.advance(cut) + " " + figures.symbol(), feed)
				.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread.get())
				.from("one inch", "25.4 mm", "ISO 31-1, exact"));
	}

	/** The lead is right, but no pass runs in the groove of one start or more. */
	private static Draft grooveLeftOut(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, int grooves) {
		Figures figures = new Figures(turned.pass().modal().unit());
		int starts = thread.value().starts();
		String cut = grooves == 1 ? "all passes start at one place: one groove is cut, " : "all passes start at " + grooves + " places: "
				+ grooves + " grooves are cut, ";
		return Draft.of(rule, Severity.ERROR, turned.pass().lead(), turned.pass().block(), cut + thread.value().withoutClass().designation()
				+ " has " + starts + " starts; begin each start " + figures.advance(thread.value().pitch()) + " farther along Z, or 1/"
				+ starts + " of a turn later")
				.programmed("lead", figures.advance(thread.value().lead()) + " " + figures.symbol(), turned.pass().lead())
				.known("starts", String.valueOf(starts), thread);
	}
}
