package truelead.checker.rule.tapping;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.LengthUnit;
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

	private SinglePointFeed() {
	}

	/** The finding on a pass whose F is neither the lead nor a whole multiple of it, or, of the only lead of its tool, on starts that are all one. */
	static Optional<Draft> check(Rule rule, SinglePoint turned, boolean alone) {
		Setting feed = turned.pass().lead();
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
		if (thread.isEmpty() || !feed.known() || feed.value() == 0) {
			return Optional.empty();
		}
		double lead = thread.get().value().lead();
		double cut = Math.abs(feed.value()) * turned.pass().modal().unit().mm();
		if (mixed(cut, lead)) {
			return Optional.empty();
		}
		double half = feed.word().map(WordRef::literal).orElse(false) ? feed.rounding() * turned.pass().modal().unit().mm() : 0;
		double starts = Math.max(1, Math.rint(cut / lead));
		boolean one = starts > 1 && turned.starts() == 1;
		if (!one && Math.abs(cut - starts * lead) <= Math.max(ROUNDED * lead, Math.min(half, 2 * ROUNDED * lead))) {
			int grooves = turned.grooves(thread.get().value());
			return alone && grooves > 0 && grooves < thread.get().value().starts() ? Optional.of(grooveLeftOut(rule, turned, thread.get(), grooves)) : Optional.empty();
		}
		Figures figures = new Figures(turned.pass().modal().unit());
		String letter = feed.word().map(word -> String.valueOf(word.address())).orElse("");
		String right = letter + Figures.number(lead / turned.pass().modal().unit().mm(), 5);
		Optional<AnotherThread> another = AnotherThread.turned(turned);
		return Optional.of(Draft.of(rule, Severity.ERROR, feed, turned.pass().block(), (letter.isEmpty() ? "F" : letter) + Figures.number(feed.value(), 5) + " cuts a lead of "
				+ figures.advance(cut) + " " + figures.symbol() + ", " + thread.get().value().withoutClass().designation() + " has " + figures.advance(lead)
				+ (one ? ", and all passes start at one place, for one start" : "") + ": " + figures.advance(Math.abs(cut - lead)) + " too "
				+ (cut < lead ? "little" : "much") + " a turn, no gauge or screw goes in past the first turns; " + right + another.map(other -> other.said(letter, "", figures)).orElse(""))
				.programmed("lead", figures.advance(cut) + " " + figures.symbol(), feed)
				.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread.get()));
	}

	/** Whether a lead is that of the thread in the other unit, by what F is usually rounded. */
	private static boolean mixed(double cut, double lead) {
		return Math.abs(cut * LengthUnit.INCH.mm() - lead) <= 2 * ROUNDED * lead || Math.abs(cut / LengthUnit.INCH.mm() - lead) <= 2 * ROUNDED * lead;
	}

	/** The finding of an F that is the lead in the other unit; empty where it is not. */
	static Optional<Draft> otherUnit(Rule rule, SinglePoint turned) {
		Setting feed = turned.pass().lead();
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
		LengthUnit unit = turned.pass().modal().unit();
		double cut = feed.known() ? Math.abs(feed.value()) * unit.mm() : Double.NaN;
		if (thread.isEmpty() || !mixed(cut, thread.get().value().lead())) {
			return Optional.empty();
		}
		double lead = thread.get().value().lead();
		Figures figures = new Figures(unit);
		String letter = feed.word().map(word -> String.valueOf(word.address())).orElse("F");
		boolean otherUnit = cut < lead == (unit == LengthUnit.MM);
		String message = letter + Figures.number(feed.value(), 5) + " cuts a lead of " + figures.advance(cut) + " " + figures.symbol() + ", " + thread.get().value().withoutClass().designation() + " has "
				+ figures.advance(lead) + ", " + (cut < lead ? "25.4 times as much" : "a 25.4th of it") + ": "
				+ (otherUnit ? "the value is in " + (unit == LengthUnit.MM ? "inches" : "mm") : "converted twice") + "; " + letter + Figures.number(lead / unit.mm(), 5);
		return Optional.of(Draft.of(rule, Severity.ERROR, feed, turned.pass().block(), message).programmed("lead", figures.advance(cut) + " " + figures.symbol(), feed)
				.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread.get()).from("one inch", "25.4 mm", "ISO 31-1, exact"));
	}

	/** The lead is right, but no pass runs in the groove of one start or more. */
	private static Draft grooveLeftOut(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, int grooves) {
		Figures figures = new Figures(turned.pass().modal().unit());
		int starts = thread.value().starts();
		String cut = grooves == 1 ? "all passes start at one place: one groove is cut, " : "all passes start at " + grooves + " places: " + grooves + " grooves are cut, ";
		return Draft.of(rule, Severity.ERROR, turned.pass().lead(), turned.pass().block(), cut + thread.value().withoutClass().designation()
				+ " has " + starts + " starts; begin each start " + figures.advance(thread.value().pitch()) + " farther along Z, or 1/" + starts + " of a turn later")
				.programmed("lead", figures.advance(thread.value().lead()) + " " + figures.symbol(), turned.pass().lead())
				.known("starts", String.valueOf(starts), thread);
	}
}
