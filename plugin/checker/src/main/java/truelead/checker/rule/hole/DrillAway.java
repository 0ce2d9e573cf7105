package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Step;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.Work;

/**
 * A drill of a lathe that is fed away from the part: it starts beside the face and ends farther off on the same side, where the tap of its
 * hole goes through the face, Z0, to the other side. A sign is lost, whichever way Z grows.
 */
final class DrillAway {

	private static final double SAME = 1e-6;

	private DrillAway() {
	}

	/** The finding at the drill of a stroke's hole; empty where each goes the tap's way, or nobody can tell which of them is wrong. */
	static Optional<Draft> of(Rule rule, TapStroke stroke, Work work) {
		boolean through = stroke.place().plane().axis() == 2 && stroke.start() * stroke.bottom() < 0;
		List<Cut> making = AnotherPart.making(work, stroke.hole(), stroke.order());
		return !through || making.stream().anyMatch(cut -> cut.direction() == stroke.direction()) ? Optional.empty() : making.stream()
				.filter(cut -> cut.start() * cut.tip() > SAME && cut.start() * stroke.start() > 0).findFirst()
				.map(cut -> draft(rule, stroke, cut));
	}

	private static Draft draft(Rule rule, TapStroke stroke, Cut cut) {
		Figures figures = new Figures(stroke.modal().unit());
		Draft draft = Draft.of(rule, Severity.ERROR, BlockText.word(cut.block(), "ZW"), cut.tool().name() + " goes from Z"
				+ level(cut.start(), figures) + " to Z" + level(cut.tip(), figures) + ", away from the part, the tap of its hole from Z"
				+ level(stroke.start(), figures) + " to Z" + level(stroke.bottom(), figures)
				+ ": the hole is not drilled, and the tap is pushed into the full; see the sign of the drill's depth")
				.programmed("level of the drill's bottom", figures.length(cut.tip()), cut.block());
		return cut.step() instanceof Step.Stroke ? draft.related(stroke.block(), "the tapping block") : draft;
	}

	private static String level(double mm, Figures figures) {
		return Figures.number(mm / figures.unit().mm(), 4);
	}
}
