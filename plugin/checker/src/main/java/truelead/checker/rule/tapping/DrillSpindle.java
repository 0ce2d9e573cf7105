package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.callout.CutterHand;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.HoleMakers;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * How the drills of threaded holes turn: one that stands still or turns backwards breaks, and no hole is there for the tap. On a lathe,
 * where the work or a driven tool turns, by codes that may not be known, the tap of the hole must say by its own how it turns, and tells
 * how the drill has to: in the middle of the work, and the same way.
 */
final class DrillSpindle {

	/** A hole so near to the axis of the work is in its middle, mm. */
	private static final double MIDDLE = 1e-3;

	private DrillSpindle() {
	}

	/** Those that go in while the spindle stands, in a program that starts it for others, or gives them a speed. */
	static List<Draft> still(Rule rule, Work work) {
		if (work.course().subprogramAlone()) {
			return List.of();
		}
		boolean lathe = work.shop().profile().isLathe();
		Set<Integer> told = new HashSet<>();
		return HoleMakers.of(work).stream().filter(maker -> lathe ? isStopped(maker) : stands(maker.cut().step().modal())
				|| lacksSpeed(maker)).filter(maker -> told.add(maker.cut().tool().index())).flatMap(maker -> still(rule, maker.cut(), work)
						.stream().map(draft -> draft.on(maker.operation()))).toList();
	}

	/** Whether no S is in force, or S0, behind a tool change, and the thread of the hole is cut under one. */
	private static boolean lacksSpeed(HoleMakers.Maker maker) {
		return maker.cut().tool().change().isPresent() && lacksSpeed(maker.cut().step().modal())
				&& (maker.operation() instanceof Tapping tapping
						? tapping.strokes().typical().stream().anyMatch(stroke -> stroke.speed().value() > 0)
						: maker.operation() instanceof ThreadMilling milling && milling.passes().typical().stream().anyMatch(pass ->
								pass.modal().speed().value() > 0));
	}

	private static boolean lacksSpeed(Modal modal) {
		return !modal.speed().isSet() || modal.speed().known() && modal.speed().value() <= 0;
	}

	private static boolean stands(Modal modal) {
		return modal.spindle() == SpindleTurn.STOPPED;
	}

	/**
	 * Whether a code has stopped the spindle before a hole in the middle of a lathe's work, whose tap turns: before the first start another
	 * turret's program may have started it.
	 */
	private static boolean isStopped(HoleMakers.Maker maker) {
		Cut cut = maker.cut();
		return stands(cut.step().modal()) && inMiddle(cut.place()) && cut.step().modal().spindleWord().isPresent() && tapTurns(maker);
	}

	/** Whether a code in the stay of the tap starts the spindle, as it is known here. */
	private static boolean tapTurns(HoleMakers.Maker maker) {
		return maker.operation() instanceof Tapping tapping
				&& tapping.strokes().typical().stream().anyMatch(stroke -> !stands(stroke.modal())
						&& saidFor(tapping.tool(), stroke.modal()));
	}

	private static boolean saidFor(ToolUse tool, Modal modal) {
		return modal.spindleWord().filter(word -> tool.change().filter(change -> !word.block().above(change)).isPresent()).isPresent();
	}

	private static boolean everStarted(Work work) {
		return work.course().events().stream().anyMatch(event -> event.event().kind() == Step.EventKind.SPINDLE
				&& !stands(event.event().modal()));
	}

	private static Optional<Draft> still(Rule rule, Cut cut, Work work) {
		Modal modal = cut.step().modal();
		boolean others = everStarted(work);
		if (!others && lacksSpeed(modal)) {
			return Optional.empty();
		}
		Optional<WordRef> stop = stands(modal) ? modal.spindleWord() : Optional.empty();
		String why = !stands(modal) ? modal.speed().word().map(word -> Figures.written(word)
				+ " does not turn the spindle").orElse("no S is in force")
				: stop.map(word -> Figures.written(word) + " stopped the spindle").orElse("nothing starts the spindle");
		Draft draft = Draft.of(rule, others ? Severity.ERROR : Severity.WARNING, Location.of(cut.block()), why + " before "
				+ cut.tool().name() + (cut.kind().atEdge() ? " goes in: it breaks; S and M3 before it"
						: " drills: it breaks, and the holes are not there for the thread; S and M3 before it goes in"));
		stop.ifPresent(word -> draft.related(Location.of(word), "the spindle stop"));
		return Optional.of(draft);
	}

	/** Those that turn counter-clockwise along Z, and are not said to be ground so. */
	static List<Draft> backwards(Rule rule, Work work) {
		boolean lathe = work.shop().profile().isLathe();
		Set<Integer> told = new HashSet<>();
		return HoleMakers.of(work).stream().filter(maker -> isBackwards(maker.cut()) && (!lathe || isAgainstTap(maker))
				&& told.add(maker.cut().tool().index()))
				.map(maker -> backwards(rule, maker.cut(), otherWay(maker) ? Severity.ERROR : Severity.WARNING).on(maker.operation()))
				.toList();
	}

	/**
	 * Those of bores that a point threads, on a lathe: where its passes under M3 or M4 cut the hand that is called out, the codes turn the
	 * work as they are taken here, and a drill has to turn as a tap goes in (geometry).
	 */
	static List<Draft> againstPoint(Rule rule, Work work) {
		Map<Place, Integer> bores = new HashMap<>();
		for (SinglePoint turned : work.course().singlePoints()) {
			Optional<Hand> named = turned.thread().filter(Fact::stated).map(thread -> thread.value().hand());
			if (named.isPresent() && turned.hand().equals(named)) {
				turned.bore().map(SinglePoint.Bore::cut).ifPresent(cut -> bores.merge(cut.place().at(0, 0), cut.order(), Math::max));
			}
		}
		Set<Integer> told = new HashSet<>();
		List<Draft> drafts = new ArrayList<>();
		for (Hole hole : bores.isEmpty() ? List.<Hole>of() : work.holes()) {
			int bored = inMiddle(hole.place()) ? bores.getOrDefault(hole.place().at(0, 0), -1) : -1;
			hole.cuts().stream().filter(cut -> cut.order() <= bored && cut.kind().drills() && isBackwards(cut)
					&& saidFor(cut.tool(), cut.step().modal()) && told.add(cut.tool().index()))
					.forEach(cut -> drafts.add(backwards(rule, cut, Severity.ERROR)));
		}
		return drafts;
	}

	private static boolean inMiddle(Place place) {
		return Math.abs(place.u()) < MIDDLE && Math.abs(place.v()) < MIDDLE;
	}

	/** Whether drill and tap of a lathe's hole turn against each other, both by codes of their own. */
	private static boolean isAgainstTap(HoleMakers.Maker maker) {
		return otherWay(maker) && tapTurns(maker) && saidFor(maker.cut().tool(), maker.cut().step().modal());
	}

	private static boolean isBackwards(Cut cut) {
		boolean drill = cut.tool().facts().kind().map(Fact::value).filter(kind -> kind == ToolKind.DRILL || kind == ToolKind.REAMER)
				.isPresent();
		return drill && cut.place().plane().axis() == 2 && cut.step().modal().spindle() == SpindleTurn.COUNTERCLOCKWISE
				&& cut.tool().comments().stream().noneMatch(comment -> CutterHand.left(comment.text()));
	}

	private static Draft backwards(Rule rule, Cut cut, Severity severity) {
		Optional<WordRef> word = cut.step().modal().spindleWord();
		Draft draft = Draft.of(rule, severity, word.map(Location::of).orElseGet(() -> Location.of(cut.block())),
				word.map(Figures::written).orElse("the spindle") + " turns " + cut.tool().name()
				+ " counter-clockwise, a drill cuts turning clockwise: it rubs, burns and breaks; M3, or say that it is ground LEFT "
				+ "HAND CUTTING").from("direction", "counter-clockwise", "programmed");
		word.flatMap(at -> SpindleWrongWay.turned(at, Hand.RIGHT)).ifPresent(draft::fix);
		return draft;
	}

	/** Whether the tool that threads the hole turns clockwise. */
	private static boolean otherWay(HoleMakers.Maker maker) {
		return maker.operation() instanceof Tapping tapping
				? tapping.strokes().typical().stream().anyMatch(stroke -> stroke.turning() == SpindleTurn.CLOCKWISE)
				: maker.operation() instanceof ThreadMilling milling && milling.passes().typical().stream().anyMatch(pass ->
						pass.modal().spindle() == SpindleTurn.CLOCKWISE);
	}
}
