package truelead.checker.rule.method;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Work;

/**
 * A drill or a threading tool goes down in rapid below what it has cut, feeds nothing there and goes up again: the sign of its retract is
 * lost.
 */
public final class RapidIntoPart implements Rule {

	/** Tools that go into holes, beside those that thread. */
	private static final Set<ToolKind> INTO_HOLES = EnumSet.of(ToolKind.DRILL, ToolKind.CENTRE_DRILL, ToolKind.SPOT_DRILL, ToolKind.REAMER,
			ToolKind.BORING, ToolKind.COUNTERSINK);

	@Override
	public String name() {
		return "rapid-into-part";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.PART_UNKNOWN, Slip.OTHER_AXIS, Slip.DISTANCE_MODE);
	}

	@Override
	public boolean isOfAStay() {
		return true;
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		if (work.shop().profile().isLathe()) {
			LatheApproach.of(this, work).forEach(draft -> found.accept(draft.finding()));
		}
		if (work.shop().profile().isLathe() || work.operationsOfProgram().isEmpty()) {
			return;
		}
		work.judgedTools().filter(tool -> tool.summary().plunge().isPresent() && intoHoles(tool))
				.forEach(tool -> found.accept(draft(tool, tool.summary().plunge().get())));
	}

	private static boolean intoHoles(ToolUse tool) {
		Optional<ToolKind> kind = tool.facts().kind().map(Fact::value);
		return kind.isPresent() ? kind.get().threading() || INTO_HOLES.contains(kind.get()) : tool.summary().drilling()
				|| tool.summary().tapping();
	}

	private Finding draft(ToolUse tool, Step.Move move) {
		Figures figures = new Figures(move.modal().unit());
		return Draft.of(this, Severity.ERROR, BlockText.word(move.block(), "Z"), tool.name() + " goes to Z"
				+ Figures.number(move.to().z() / figures.unit().mm(), 4)
				+ " in rapid, below what it has cut, and cuts nothing there: it is driven into the part; see the sign of Z")
				.programmed("level", figures.length(move.to().z()), move.block()).finding();
	}
}
