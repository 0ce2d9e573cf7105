package truelead.checker.rule.program;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;
import truelead.checker.rule.Written;

/** How arcs that do not close would have to be read to close: a code that decides it was forgotten, or left over. */
enum ArcReading {
	CENTRE_ABSOLUTE("I, J and K close it read as places", "G90.1 before it, or counted from the start of the arc") {
		@Override
		double[] of(double from, double to, double centre) {
			return new double[] {from, to, centre - from};
		}
	},
	CENTRE_INCREMENTAL("I, J and K close it counted from its start", "G91.1 before it") {
		@Override
		double[] of(double from, double to, double centre) {
			return new double[] {from, to, from + centre};
		}
	},
	END_INCREMENTAL("its end closes it counted from its start", "G91 before it") {
		@Override
		double[] of(double from, double to, double centre) {
			return new double[] {from, from + to, centre};
		}
	},
	END_ABSOLUTE("its end closes it read as a place", "G90 before it") {
		@Override
		double[] of(double from, double to, double centre) {
			return new double[] {from, to - from, centre};
		}
	};

	private final String fact;
	private final String remedy;

	ArcReading(String fact, String remedy) {
		this.fact = fact;
		this.remedy = remedy;
	}

	/** What closes them, as a phrase. */
	String fact() {
		return fact;
	}

	/** What to type. */
	String remedy() {
		return remedy;
	}

	/** Start, end and centre along one axis as they are read this way, mm. */
	abstract double[] of(double from, double to, double centre);

	/** The first reading under which every one of the arcs closes, to the control's tolerance, mm; empty where none does. */
	static Optional<ArcReading> closing(List<Step.Arc> arcs, double tolerance) {
		return Arrays.stream(values()).filter(reading -> arcs.stream().allMatch(arc -> reading.closes(arc, tolerance))).findFirst();
	}

	private boolean closes(Step.Arc arc, double tolerance) {
		if (arc.byRadius()) {
			return false;
		}
		Plane plane = arc.modal().plane();
		double[] u = along(arc, plane.first());
		double[] v = along(arc, plane.second());
		double start = Math.hypot(u[0] - u[2], v[0] - v[2]);
		double end = Math.hypot(u[1] - u[2], v[1] - v[2]);
		return start > tolerance && Math.abs(start - end) <= tolerance + 3 * Written.open(arc.resolution());
	}

	private double[] along(Step.Arc arc, int axis) {
		Point centre = arc.centre();
		return of(arc.from().along(axis), arc.to().along(axis), centre.along(axis));
	}
}
