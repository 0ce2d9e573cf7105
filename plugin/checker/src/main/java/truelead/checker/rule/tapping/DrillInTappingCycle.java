package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.DrillsThatTap;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The tool is called a drill, a reamer or a mill, and the cycle is tapping; or the tap is called by a drill's number, or cuts its thread
 * behind a tool without a name that taps.
 */
public final class DrillInTappingCycle extends TappingRule {

	public DrillInTappingCycle() {
		super("drill-in-tapping-cycle");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.NO_TAP);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.LEFT_ON, Slip.OTHER_AXIS);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (tapping.method() != Tapping.Method.WRONG_TOOL) {
			Optional<Tapping> tap = DrillsThatTap.of(work).behind(tapping);
			tap.map(behind -> unnamed(tapping, behind)).or(() -> drillOfItsNumber(tapping.tool(), work)
					.map(drill -> called(tapping, drill))).ifPresent(found);
			return;
		}
		if (SwappedTools.other(tapping, work).isPresent()) {
			return;
		}
		String kind = ToolName.of(tapping.tool().facts());
		String said = tapping.cycle().map(c -> Figures.written(c.gWord())).orElse("this block");
		String message = tapping.tool().name() + " is called a " + kind + " and " + said
				+ " taps with it: the spindle reverses at the bottom and the feed is a pitch a turn; a drilling cycle, or the tap's own "
				+ "tool number";
		Draft draft = Draft.of(this, Severity.ERROR, tapping.cycle().map(c -> Location.of(c.gWord())).orElse(Location.of(tapping.block())),
				message);
		tapping.tool().facts().kind().ifPresent(fact -> draft.known("tool", ToolName.of(tapping.tool().facts()), fact));
		found.accept(draft);
	}

	private Draft unnamed(Tapping tapping, Tapping tap) {
		Location at = tapping.cycle().map(c -> Location.of(c.gWord())).orElse(Location.of(tapping.block()));
		String message = tapping.tool().name() + " taps where nothing else drills and " + tap.tool().name() + " threads "
				+ tap.wanted().statedThread().orElseThrow().value().withoutClass().designation()
				+ " behind it: it is the drill, and the spindle reverses at the bottom; a drilling cycle";
		return Draft.of(this, Severity.ERROR, at, message).related(tap.block(), "the tap behind it");
	}

	/**
	 * The drill that the number of a tap calls; none where the program stops between the two, at which a person may change what is in the
	 * pocket.
	 */
	private static Optional<ToolUse> drillOfItsNumber(ToolUse tap, Work work) {
		if (!tap.facts().isTap()) {
			return Optional.empty();
		}
		return work.ofTools(DrillsByNumber.class, DrillsByNumber::of).before(tap)
				.filter(drill -> work.course().eventsAfter(drill.firstOrder()).stream()
						.takeWhile(event -> event.order() <= tap.firstOrder())
						.noneMatch(event -> event.event().kind() == Step.EventKind.STOP));
	}

	private Draft called(Tapping tapping, ToolUse drill) {
		ToolUse tap = tapping.tool();
		String tapped = ToolName.of(tap.facts());
		String drilled = ToolName.of(drill.facts());
		Draft draft = Draft.of(this, Severity.ERROR, tap.tool(), tap.change().orElse(tapping.block()), tap.name() + " is called a "
				+ drilled + " before and a " + tapped + " here: the " + drilled + " comes and the spindle reverses at the bottom; the "
				+ tapped + "'s own tool number");
		drill.change().ifPresent(change -> draft.related(change, "where it is the " + drilled));
		drill.facts().kind().ifPresent(fact -> draft.known("tool", drilled, fact));
		return draft;
	}
}
