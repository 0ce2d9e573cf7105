package truelead.checker.rule.method;

import java.util.List;
import java.util.function.Consumer;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The other tools cut with coolant and the tap runs dry. */
public final class CoolantOff extends OperationRule {

	public CoolantOff() {
		super("coolant-off");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		boolean dry = operation instanceof Tapping tapping && !tapping.strokes().isEmpty()
				&& tapping.strokes().typical().stream().noneMatch(s -> s.modal().coolant());
		if (!dry || !firstOfGroup(operation, work)) {
			return;
		}
		boolean othersWet = work.ofTools(Cutting.class, Cutting::of).othersWet(operation.tool());
		if (othersWet) {
			found.accept(Draft.of(this, Severity.INFORMATION, Location.of(operation.block()),
					"the other tools of this program cut with coolant and " + operation.tool().name()
					+ " taps dry; M8 before the cycle, unless it is oiled by hand").programmed("coolant", "off", operation.block()));
		}
	}

	/** How many stays of tools cut, and how many of them without any coolant. */
	private record Cutting(int all, int dry) {

		static Cutting of(List<ToolUse> tools) {
			return new Cutting((int) tools.stream().filter(Cutting::cuts).count(), (int) tools.stream().filter(Cutting::dry).count());
		}

		/** Whether others than a tool cut, and all of them with coolant. */
		boolean othersWet(ToolUse than) {
			return all > (cuts(than) ? 1 : 0) && dry == (dry(than) ? 1 : 0);
		}

		private static boolean cuts(ToolUse tool) {
			return tool.summary().cutWithCoolant() || tool.summary().cutDry();
		}

		private static boolean dry(ToolUse tool) {
			return cuts(tool) && !tool.summary().cutWithCoolant();
		}
	}
}
