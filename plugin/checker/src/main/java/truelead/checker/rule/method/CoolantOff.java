package truelead.checker.rule.method;

import java.util.function.Consumer;
import truelead.checker.machine.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.ToolUse;
import truelead.checker.work.Work;

/** The other tools cut with coolant and the tap runs dry. */
public final class CoolantOff extends OperationRule {

	public CoolantOff() {
		super("coolant-off");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		boolean dry = operation instanceof Tapping tapping && !tapping.strokes().isEmpty()
				&& tapping.strokes().stream().noneMatch(s -> s.modal().coolant());
		if (!dry || !firstOfGroup(operation, work)) {
			return;
		}
		boolean othersWet = work.tools().stream().filter(t -> t.index() != operation.tool().index() && cuts(t)).count() > 0
				&& work.tools().stream().filter(t -> t.index() != operation.tool().index() && cuts(t)).allMatch(t -> t.summary().cutWithCoolant());
		if (othersWet) {
			found.accept(Draft.of(this, Severity.INFORMATION, Location.of(operation.block()),
					"The other tools of this program cut with coolant and " + operation.tool().name() + " taps dry; M8 before the cycle, unless it is oiled by hand")
					.programmed("coolant", "off", operation.block()));
		}
	}

	private static boolean cuts(ToolUse tool) {
		return tool.summary().cutWithCoolant() || tool.summary().cutDry();
	}
}
