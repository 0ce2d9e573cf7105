package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.turn.SinglePoint;

/**
 * Passes of one tool over one stretch that have another lead than the greater number of them, on a thread that nobody names: whatever it
 * is, all its passes advance alike.
 */
final class TwoLeads {

	/** What a pass may begin and end beside the others and be of the same thread, leads (common practice, no source). */
	private static final double BESIDE = 2;

	private TwoLeads() {
	}

	/** The finding at the lead of the fewer passes; empty where all have one, and where somebody names the thread of these. */
	static Optional<Draft> check(Rule rule, SinglePoint turned, List<SinglePoint> all) {
		Setting feed = turned.pass().lead();
		if (turned.thread().filter(Fact::stated).isPresent() || !feed.known() || feed.value() == 0) {
			return Optional.empty();
		}
		return all.stream().filter(other -> other.tool().index() == turned.tool().index() && other.inside() == turned.inside()
				&& other.passes().size() > turned.passes().size() + 1
				&& alike(turned, other)).findFirst().map(other -> draft(rule, turned, other));
	}

	/** Whether the passes of two begin and end at about the same places. */
	private static boolean alike(SinglePoint turned, SinglePoint other) {
		double near = BESIDE * other.passes().get(0).lead();
		return Math.abs(turned.pass().from().z() - other.pass().from().z()) <= near
				&& Math.abs(turned.pass().to().z() - other.pass().to().z()) <= near
				&& Math.abs(turned.deepest().radius() - other.deepest().radius()) <= near;
	}

	private static Draft draft(Rule rule, SinglePoint turned, SinglePoint other) {
		Setting feed = turned.pass().lead();
		Figures figures = new Figures(turned.pass().modal().unit());
		String letter = feed.word().map(word -> String.valueOf(word.address())).orElse("F");
		double right = other.passes().get(0).lead();
		int fewer = turned.passes().size();
		return Draft.of(rule, Severity.ERROR, feed, turned.pass().block(), letter + Figures.number(feed.value(), 5) + " cuts a lead of "
				+ figures.advance(turned.passes().get(0).lead()) + " " + figures.symbol() + (fewer > 1 ? " in " + fewer + " passes" : "")
				+ ", the other " + other.passes().size() + " passes of the thread " + figures.advance(right)
				+ ": it cuts through their flanks; " + letter + Figures.number(right / turned.pass().modal().unit().mm(), 5))
				.programmed("lead", figures.advance(turned.passes().get(0).lead()) + " " + figures.symbol(), feed)
				.related(other.pass().block(), "the first of the other passes");
	}
}
