package truelead.checker.rule.tapping;

import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** The tool is called a drill, a reamer or a mill, and the cycle is tapping. */
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
			return;
		}
		String kind = ToolName.of(tapping.tool().facts());
		String said = tapping.cycle().map(c -> Figures.written(c.gWord())).orElse("this block");
		String message = tapping.tool().name() + " is called a " + kind + " and " + said
				+ " taps with it: the spindle reverses at the bottom and the feed is a pitch a turn; a drilling cycle, or the tap's own tool number";
		Draft draft = Draft.of(this, Severity.ERROR, tapping.cycle().map(c -> Location.of(c.gWord())).orElse(Location.of(tapping.block())), message);
		tapping.tool().facts().kind().ifPresent(fact -> draft.known("tool", ToolName.of(tapping.tool().facts()), fact));
		found.accept(draft);
	}
}
