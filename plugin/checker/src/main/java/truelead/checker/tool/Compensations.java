package truelead.checker.tool;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.function.IntFunction;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step;
import truelead.checker.program.InOrder;

/**
 * The changes of cutter radius compensation in the order of execution; those in motions that come again at place after place are made when
 * they are asked for.
 */
public final class Compensations extends AbstractList<CompensationChange> implements RandomAccess {

	/** Where in the steps of a turn compensation changes. */
	record Switch(int step, Compensation before, Compensation after) {
	}

	/**
	 * The changes in motions that are made in several turns, or in one.
	 *
	 * @param order number of the first step of the first turn
	 * @param arc   whether an arc makes the change, which then stands by itself
	 * @param steps the steps of a turn, from 0
	 */
	record Row(int order, int turns, int stepsEach, List<Switch> switches, boolean arc, IntFunction<List<Step>> steps) {

		int count() {
			return turns * switches.size();
		}

		Switch change(int index) {
			return switches.get(index % switches.size());
		}

		int order(int index) {
			return order + index / switches.size() * stepsEach + change(index).step();
		}

		Step step(int index) {
			return steps.apply(index / switches.size()).get(change(index).step());
		}
	}

	private final List<CompensationLog.Entry> entries;
	private final List<ToolUse> tools;
	/** Number of changes before each row, and of all; made when it is first asked for, as most edits ask nothing of compensation. */
	private volatile int[] starts;

	/** @param tools all stays of the program */
	Compensations(List<CompensationLog.Entry> entries, List<ToolUse> tools) {
		this.entries = entries;
		this.tools = tools;
	}

	private int[] starts() {
		int[] known = starts;
		if (known == null) {
			known = new int[entries.size() + 1];
			for (int row = 0; row < entries.size(); row++) {
				known[row + 1] = known[row] + entries.get(row).row().count();
			}
			starts = known;
		}
		return known;
	}

	@Override
	public int size() {
		return starts()[entries.size()];
	}

	@Override
	public CompensationChange get(int index) {
		int row = row(index);
		Row made = entries.get(row).row();
		int change = index - starts()[row];
		return new CompensationChange(made.order(change), made.step(change), made.change(change).before(), made.change(change).after(),
				tools.get(entries.get(row).tool().index()));
	}

	/** The last change before a step. */
	public Optional<CompensationChange> before(int order) {
		int count = countBefore(order);
		return count == 0 ? Optional.empty() : Optional.of(get(count - 1));
	}

	/** The last change to a state before a step. */
	public Optional<CompensationChange> lastTo(Compensation state, int order) {
		for (int index = countBefore(order) - 1; index >= 0; index--) {
			int row = row(index);
			if (entries.get(row).row().change(index - starts()[row]).after() == state) {
				return Optional.of(get(index));
			}
		}
		return Optional.empty();
	}

	/** The changes that arcs make in a tool's stay, which stand each by itself. */
	public List<CompensationChange> byArcs(ToolUse in) {
		List<CompensationChange> arcs = new ArrayList<>();
		int first = countBefore(in.firstOrder());
		for (int row = first < size() ? row(first) : entries.size(); row < entries.size()
				&& entries.get(row).row().order() <= in.lastOrder(); row++) {
			if (entries.get(row).row().arc()) {
				arcs.add(get(starts()[row]));
			}
		}
		return arcs;
	}

	private int countBefore(int order) {
		int low = 0;
		int high = size();
		while (low < high) {
			int middle = (low + high) / 2;
			int row = row(middle);
			if (entries.get(row).row().order(middle - starts()[row]) < order) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}

	private int row(int index) {
		return InOrder.row(starts(), index);
	}
}
