package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
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

/**
 * The decimal point of a drill's depth is lost, or stands a place off: it goes many times as deep as its thread needs, through the part and
 * what is below it. Or it goes deeper in one hole of many.
 */
public final class DrillTooDeep extends HoleRule {

	/**
	 * A hole that is so many times as deep as its thread may be meant to be, an oil way; with a point put in it must fit the thread (common
	 * practice, no source).
	 */
	private static final double TIMES = 4;

	/**
	 * As deep below the thread a hole is at most that is drilled for it alone, in times the thread's depth (common practice, no source).
	 */
	private static final double MOST = 2.5;

	/** So many diameters no drill goes down in one stroke, without a pilot hole to guide it (common practice, no source). */
	private static final double ONE_STROKE = 20;

	/** Where the point may stand. */
	private static final double[] LOST = {10, 100, 1000};

	public DrillTooDeep() {
		super("drill-too-deep");
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		for (Visit visit : visits.typical()) {
			for (Cut cut : visit.hole().makingBefore(visit.order())) {
				Optional<Draft> draft = cut.kind().drills() ? tooDeep(cut, visit.bottom()).or(() -> inOneStroke(cut, visit))
						.or(() -> DrilledPast.of(this, cut, operation.wanted())) : Optional.empty();
				if (draft.isPresent()) {
					found.accept(draft.get());
					return;
				}
			}
		}
		OddDepth.of(visits).filter(OddDepth::drilledDeeper).map(odd -> odd(odd, odd.drilled(visits))).ifPresent(found);
	}

	private Draft odd(OddDepth odd, Severity severity) {
		Cut cut = odd.drill();
		Figures figures = new Figures(cut.step().modal().unit());
		double usual = odd.usual().tipLevel();
		Draft draft = Draft.of(this, severity, new OddDepth.Going(cut.step(), cut.block()).location(), cut.tool().name() + " goes to "
				+ level(cut.tip(), cut, figures) + " at this hole, at the other " + odd.others() + " to " + level(usual, cut, figures)
				+ ", and all are threaded to the same depth: it may meet what is below; " + level(usual, cut, figures))
				.programmed("level of the drill's tip", figures.length(cut.tip()), cut.block())
				.from("level at the other holes", figures.length(usual), "programmed");
		if (cut.step() instanceof Step.Stroke cycle) {
			LevelFix.depth(cycle, usual, false, "see that the hole is to be as deep as the others").ifPresent(draft::fix);
		}
		return draft;
	}

	private static String level(double mm, Cut cut, Figures figures) {
		return "XYZ".charAt(cut.place().plane().axis()) + figures.coordinate(mm);
	}

	/** A drill that nothing guides goes down without pecking, many times as far as its thread. */
	private Optional<Draft> inOneStroke(Cut cut, Visit visit) {
		double diameter = cut.tool().facts().diameter().filter(Fact::stated).map(Fact::value).orElse(Double.NaN);
		double way = Math.abs(cut.tip() - cut.start());
		boolean alone = visit.hole().makingBefore(visit.order()).stream().allMatch(other -> other.tool().index() == cut.tool().index());
		if (cut.kind() != Cut.Kind.DRILL || !(cut.step() instanceof Step.Stroke drill) || drill.modal().scaled() || !alone
				|| !(way > ONE_STROKE * diameter) || !(Math.abs(cut.tip()) > TIMES * Math.abs(visit.bottom()))) {
			return Optional.empty();
		}
		Figures figures = new Figures(drill.modal().unit());
		return Optional.of(Draft.of(this, Severity.WARNING, LevelFix.depthWord(drill).map(Location::of).orElseGet(() ->
				Location.of(cut.block())), cut.tool().name() + " goes down " + figures.length(way) + " in one stroke, "
				+ Figures.number(way / diameter, 0) + " times its diameter, and the thread is " + figures.length(Math.abs(visit.bottom()))
				+ " deep: the drill jams in its chips, or goes through the part and what is below it; see the digits of its depth, or peck")
				.programmed("depth of the drill", figures.length(Math.abs(cut.tip())), cut.block())
				.known("diameter of the drill", figures.length(diameter), cut.tool().facts().diameter().orElseThrow()));
	}

	private Optional<Draft> tooDeep(Cut cut, double bottom) {
		if (!(cut.step() instanceof Step.Stroke drill) || drill.relative() || drill.modal().scaled()
				|| !(cut.tip() < TIMES * bottom && bottom < 0)) {
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
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(depth), Figures.written(depth) + " has no decimal point, R has one: "
				+ cut.tool().name() + " goes " + figures.length(Math.abs(cut.tip())) + " deep, the thread "
				+ figures.length(Math.abs(bottom))
				+ ": it drills through the part and what is below it, or hardly into it where the control counts steps; " + level)
				.programmed("depth of the drill", figures.length(Math.abs(cut.tip())), depth.block());
		LevelFix.depth(drill, meant, false, "see that the hole is to be so deep").ifPresent(draft::fix);
		return draft;
	}
}
