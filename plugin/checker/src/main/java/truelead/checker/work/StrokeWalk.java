package truelead.checker.work;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.CutRow;
import truelead.checker.hole.Place;
import truelead.checker.hole.Spot;
import truelead.checker.machine.Step;

/** Goes over recorded strokes one by one, those of rows among them, in the order of execution. */
final class StrokeWalk {

	/** Strokes as recorded, the cut that they make if they do not thread, and else the number of the operation that they are of. */
	record Made(TimedStroke timed, Place first, Optional<CutRow> cut, int operation) {

		int count() {
			return timed.row().map(Step.Row::count).orElse(1);
		}

		Place place(int index) {
			return timed.row().map(row -> first.at(row.x(index), row.y(index))).orElse(first);
		}
	}

	private final List<Made> rows;
	private int row;
	private int index;

	StrokeWalk(List<Made> rows) {
		this.rows = rows;
	}

	boolean done() {
		return row == rows.size();
	}

	void next() {
		index++;
		if (index == rows.get(row).count()) {
			index = 0;
			row++;
		}
	}

	int order() {
		return rows.get(row).timed().order() + index;
	}

	Place place() {
		return rows.get(row).place(index);
	}

	/** The cut; empty where it threads. */
	Optional<Spot.Link> cut() {
		int at = index;
		return rows.get(row).cut().map(cut -> new Spot.Link(cut, at));
	}

	/** Whether another one does the same at the same place. */
	boolean same(StrokeWalk other) {
		Made one = rows.get(row);
		Made two = other.rows.get(other.row);
		boolean cuts = one.cut().isPresent();
		return one.operation() == two.operation() && cuts == two.cut().isPresent() && place().equals(other.place())
				&& (!cuts || one.cut().get().kind() == two.cut().get().kind()
						&& one.cut().get().decimals(index) == two.cut().get().decimals(other.index));
	}
}
