package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * A cutter that goes from hole to hole at rapid below the surface, as behind a lead-out without G90: through the walls. Where the helix
 * goes round, above and below, there is a wall whatever the level of the surface (geometry).
 */
final class AcrossBelow {

	/** Holes that are looked at one by one. */
	private static final int MOST = 20_000;

	private AcrossBelow() {
	}

	/** The first move of an operation that does so; empty where none is sure to. */
	static Optional<Draft> of(ExitScarsThread rule, Work work, ThreadMilling operation) {
		if (operation.wanted().statedThread().isEmpty() || work.cutsAtUnknownPlaces()) {
			return Optional.empty();
		}
		MillPasses deep = operation.passes().where(pass -> move(pass).filter(move -> isDeep(work, operation, pass, move)).isPresent());
		return deep.stream().limit(MOST).findFirst().map(pass -> draft(rule, operation, pass, move(pass).orElseThrow(), deep.size()));
	}

	/** The move from or to another place: before the pass, or behind it without coming up. */
	private static Optional<Step.Move> move(MillPass pass) {
		if (pass.external() || Double.isNaN(pass.radius())) {
			return Optional.empty();
		}
		return pass.across().or(() -> away(pass));
	}

	private static Optional<Step.Move> away(MillPass pass) {
		for (Step step : pass.exit()) {
			if (step instanceof Step.Move move && move.rapid() && pass.elsewhere(move.to())) {
				return Optional.of(move);
			}
			if (step instanceof Step.Move move && move.rapid() && move.from().along(pass.axis()) != move.to().along(pass.axis())) {
				return Optional.empty();
			}
		}
		return Optional.empty();
	}

	/** The level at which it leaves its hole or comes to the other one, whichever is deeper, mm. */
	private static double level(MillPass pass, Step.Move move) {
		double from = move.from().along(pass.axis());
		double to = move.to().along(pass.axis());
		return pass.below(from, to) > 0 ? from : to;
	}

	private static boolean isDeep(Work work, ThreadMilling operation, MillPass pass, Step.Move move) {
		HelixForm form = HelixForm.of(pass);
		double surface = operation.wanted().surface().value();
		double below = pass.below(level(pass, move), surface);
		double pitch = operation.wanted().statedThread().orElseThrow().value().pitch();
		boolean inTheWall = below > form.highest(surface) + pitch / 2 && below < form.deepest(surface) + pitch / 2;
		// less than a pitch below the surface is within the countersink or the burr of the hole
		return below > pitch && (inTheWall || operation.wanted().surface().stated() || HoleTop.known(work, operation, pass, surface)
				|| HoleTop.known(work, operation, operation.passes().get(0), surface));
	}

	private static Draft draft(ExitScarsThread rule, ThreadMilling operation, MillPass pass, Step.Move move, int places) {
		Figures figures = new Figures(pass.modal().unit());
		double below = pass.below(level(pass, move), operation.wanted().surface().value());
		boolean increments = !move.modal().absolute();
		Draft draft = Draft.of(rule, Severity.ERROR, MillFacts.word(move.block(), "XYZ"), "the cutter goes to another place at rapid "
				+ figures.length(below)
				+ " below the surface" + (places > 1 ? ", and " + (places - 1) + " more times" : "") + ": through the wall of the hole; "
				+ (increments ? "G91 is in force, G90 before the way out" : "up above the surface first")).on(operation)
				.programmed("level of the move", figures.length(below) + " below the surface", move.block());
		if (increments) {
			draft.from("distance mode", "increments", "programmed").tells(Slip.DISTANCE_MODE);
		}
		return draft;
	}
}
