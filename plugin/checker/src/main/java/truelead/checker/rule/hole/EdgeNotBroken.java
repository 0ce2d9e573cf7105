package truelead.checker.rule.hole;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Holes made in this program are threaded without a countersink before; said once where no tool of it is called one that breaks edges: then
 * it is done elsewhere, or left out everywhere.
 */
public final class EdgeNotBroken extends HoleRule {

	public EdgeNotBroken() {
		super("edge-not-broken");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.NO_TAP);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		List<Visit> sharp = visits.where(v -> v.hole().madeBefore(v.order()) && v.hole().edgeBefore(Integer.MAX_VALUE).isEmpty());
		if (sharp.isEmpty() || work.cutsAtUnknownPlaces()) {
			return;
		}
		boolean others = work.ofTools(Edging.class, Edging::of).here();
		if (others || operation.index() == 0) {
			String count = sharp.size() == 1 ? "1 hole is" : sharp.size() + " holes are";
			found.accept(Draft.of(this, Severity.INFORMATION, Location.of(operation.block()),
					count + " threaded without a countersink or spot before" + (others ? "" : ", and no tool of this program is one for it")
					+ ": the first turn raises a burr and the screw starts hard; countersink a little over the thread's diameter")
					.from("holes without a countersink", String.valueOf(sharp.size()), "counted"));
		}
	}

	/** Whether a tool of the program is called one that breaks edges. */
	private record Edging(boolean here) {

		private static final Set<ToolKind> KINDS = EnumSet.of(ToolKind.SPOT_DRILL, ToolKind.CENTRE_DRILL, ToolKind.COUNTERSINK);

		static Edging of(List<ToolUse> tools) {
			return new Edging(tools.stream().anyMatch(tool -> tool.facts().kind().filter(kind -> KINDS.contains(kind.value()))
					.isPresent()));
		}
	}
}
