package truelead.checker.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Copies;
import truelead.checker.machine.Step;

/** Changes of cutter radius compensation as they come, before the tools are known; at most 50,000 that stand by themselves. */
public final class CompensationLog {

	/** As many changes that stand by themselves are kept. */
	public static final int MOST = 50_000;

	/** A change, or those in copies that come again. */
	public record Entry(ToolLog tool, Compensations.Row row) {

		/** Number of its first step. */
		public int order() {
			return row.order();
		}

		/** Whether another change is the same, but for the tool; of those in copies the first one, others being as the copies are. */
		public boolean same(Entry other) {
			return row.order() == other.row.order() && row.turns() == other.row.turns() && row.stepsEach() == other.row.stepsEach()
					&& row.switches().equals(other.row.switches()) && row.step(0).equals(other.row.step(0));
		}

		/** The step that makes it, of those in copies the first one. */
		public Step step() {
			return row.step(0);
		}
	}

	private final List<Entry> entries = new ArrayList<>();
	private int alone;

	/** A motion changes compensation from what it was before. */
	public void add(int order, ToolLog tool, Step step, Compensation before) {
		if (alone++ < MOST) {
			entries.add(entry(order, tool, 1, 1, List.of(new Compensations.Switch(0, before, step.modal().compensation())),
					step instanceof Step.Arc, turn -> List.of(step)));
		}
	}

	/** Takes the changes in copies, which are as before at the end of each; false, and nothing done, where an arc makes one. */
	public boolean add(int order, ToolLog tool, Copies copies, Compensation before) {
		List<Compensations.Switch> switches = new ArrayList<>();
		List<Step> steps = copies.steps(0);
		Compensation last = before;
		for (int i = 0; i < steps.size(); i++) {
			Compensation now = steps.get(i).modal().compensation();
			if (now != last && steps.get(i) instanceof Step.Arc) {
				return false;
			}
			if (now != last) {
				switches.add(new Compensations.Switch(i, last, now));
			}
			last = now;
		}
		if (!switches.isEmpty()) {
			entries.add(entry(order, tool, copies.count(), copies.stepsEach(), switches, false, copies::steps));
		}
		return true;
	}

	private static Entry entry(int order, ToolLog tool, int turns, int stepsEach, List<Compensations.Switch> switches, boolean arc,
			IntFunction<List<Step>> steps) {
		return new Entry(tool, new Compensations.Row(order, turns, stepsEach, List.copyOf(switches), arc, steps));
	}

	/** The changes so far; those in copies are one. */
	public List<Entry> entries() {
		return entries;
	}

	/** Changes with the stays of their tools, of which all are given. */
	public static Compensations with(List<Entry> entries, List<ToolUse> uses) {
		return new Compensations(entries, uses);
	}
}
