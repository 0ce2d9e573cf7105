package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;

/**
 * A milled thread that is called through and ends far above the end of the drill's full diameter, where nobody says how thick the wall is.
 */
final class MilledThrough {

	private MilledThrough() {
	}

	/** The finding at the first hole where it ends so; empty where a depth or a wall is said. */
	static Optional<Draft> of(NotThrough rule, ThreadMilling milling) {
		boolean through = milling.wanted().through().filter(said -> said.stated() && said.value()
				&& said.source() != FactSource.TOOL_COMMENT).isPresent();
		Optional<ThreadSpec> thread = milling.wanted().statedThread().map(Fact::value);
		if (!through || milling.wanted().wall().isPresent() || milling.wanted().depth().isPresent() || thread.isEmpty()) {
			return Optional.empty();
		}
		return milling.finishingWhere(passes -> at(rule, milling, passes, thread.get()).isPresent()).stream().findFirst()
				.flatMap(passes -> at(rule, milling, passes, thread.get()));
	}

	private static Optional<Draft> at(NotThrough rule, ThreadMilling milling, List<MillPass> passes, ThreadSpec thread) {
		double surface = milling.wanted().surface().value();
		MillPass pass = null;
		double deepest = 0;
		for (MillPass here : passes) {
			double depth = Math.max(here.below(here.startLevel(), surface), here.below(here.endLevel(), surface));
			pass = pass == null || depth > deepest ? here : pass;
			deepest = Math.max(deepest, depth);
		}
		Optional<Cut> drill = pass == null || pass.external() ? Optional.empty()
				: pass.hole().threadedBefore(pass.order(), thread.diameter()).filter(cut -> !Double.isNaN(cut.shoulder()));
		if (drill.isEmpty()) {
			return Optional.empty();
		}
		double full = pass.below(drill.get().shoulder(), surface);
		double above = full - deepest;
		double usual = NotThrough.usual(thread.diameter(), thread.pitch());
		if (!(above > usual) || !(above > NotThrough.PART_BEHIND * full)) {
			return Optional.empty();
		}
		Figures figures = new Figures(pass.modal().unit());
		String message = "the helix goes " + figures.length(deepest)
				+ " deep in a hole that is called through and drilled to its full diameter down to " + figures.length(full) + ": it ends "
				+ figures.length(above)
				+ " above that, so the last turns are missing where the wall is as thick; see the depth, or say WALL";
		return Optional.of(Draft.of(rule, above > 2 * usual ? Severity.WARNING : Severity.INFORMATION,
				BlockText.word(pass.block(), "XYZ".substring(pass.axis(), pass.axis() + 1)), message).on(milling)
				.programmed("depth of the helix", figures.length(deepest), pass.block())
				.known("through", "through", milling.wanted().through().get()).related(drill.get().block(), "the drill block"));
	}
}
