package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The decimal point of a drill's depth is lost: it goes many times as deep as its thread needs, through the part and what is below it. */
public final class DrillTooDeep extends HoleRule {

	/** A hole that is so many times as deep as its thread may be meant to be, an oil way; with a point put in it must fit the thread (common practice, no source). */
	private static final double TIMES = 4;

	/** As deep below the thread a hole is at most that is drilled for it alone, in times the thread's depth (common practice, no source). */
	private static final double MOST = 2.5;

	/** Where the point may stand. */
	private static final double[] LOST = {10, 100, 1000};

	public DrillTooDeep() {
		super("drill-too-deep");
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		for (Visit visit : visits.typical()) {
			for (Cut cut : visit.hole().makingBefore(visit.order())) {
				Optional<Draft> draft = cut.kind().drills() ? tooDeep(cut, visit.bottom()) : Optional.empty();
				if (draft.isPresent()) {
					found.accept(draft.get());
					return;
				}
			}
		}
	}

	private Optional<Draft> tooDeep(Cut cut, double bottom) {
		if (!(cut.step() instanceof Step.Stroke drill) || drill.relative() || drill.modal().scaled() || !(cut.tip() < TIMES * bottom && bottom < 0)) {
			return Optional.empty();
		}
		Optional<WordRef> word = LevelFix.depthWord(drill).filter(depth -> depth.literal() && !pointed(depth) && othersPointed(drill));
		return word.flatMap(depth -> {
			for (double lost : LOST) {
				double meant = cut.tip() / lost;
				if (meant < bottom && meant > MOST * bottom) {
					return Optional.of(draft(cut, drill, depth, bottom, meant));
				}
			}
			return Optional.empty();
		});
	}

	private static boolean pointed(WordRef word) {
		return word.written().indexOf('.') >= 0;
	}

	/** Whether the cycle's R has a decimal point, as the program writes its lengths. */
	private static boolean othersPointed(Step.Stroke drill) {
		return drill.cycle().word('R').flatMap(Setting::word).filter(DrillTooDeep::pointed).isPresent();
	}

	private Draft draft(Cut cut, Step.Stroke drill, WordRef depth, double bottom, double meant) {
		Figures figures = new Figures(drill.modal().unit());
		String level = "Z" + Figures.number(meant / figures.unit().mm(), 4);
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(depth), Figures.written(depth) + " has no decimal point, R has one: " + cut.tool().name() + " goes " + figures.length(Math.abs(cut.tip()))
				+ " deep, the thread " + figures.length(Math.abs(bottom)) + ": it drills through the part and what is below it, or hardly into it where the control counts steps; " + level)
				.programmed("depth of the drill", figures.length(Math.abs(cut.tip())), depth.block());
		LevelFix.depth(drill, meant, false, "see that the hole is to be so deep").ifPresent(draft::fix);
		return draft;
	}
}
