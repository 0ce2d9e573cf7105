package truelead.checker.tool;

import java.util.Objects;
import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/**
 * Looks for a rapid of a tool down along Z, below level 0 and below what it has cut since it came down, or below the R of its cycle, that
 * nothing is fed behind before it goes up again: a retract whose sign is lost.
 */
final class Plunges {

	/** So far below what is open a rapid goes at least that is not meant, mm (common practice, no source). */
	private static final double BELOW = 1;

	/**
	 * The level that the tool may be below nothing, mm: 0, or that of its deepest feed or of R since it came down; below all others where
	 * that is not known.
	 */
	private double open;
	/** A rapid that went down below that, while nothing has come behind it. */
	private Step.Move last;
	private Step.Move first;
	/** Whether it works along another axis, or upwards. */
	private boolean aside;

	Plunges() {
	}

	/** The same so far, which goes on by itself from now on. */
	Plunges(Plunges other) {
		open = other.open;
		last = other.last;
		first = other.first;
		aside = other.aside;
	}

	/**
	 * Takes a motion.
	 *
	 * @param measured whether the tool has run with a length offset: a rapid without one then goes to a level of its own
	 */
	void motion(Step step, boolean measured) {
		if (step instanceof Step.Move move && move.rapid()) {
			rapid(move, measured);
		} else if (step instanceof Step.Move move) {
			fed(Math.min(move.from().z(), move.to().z()));
		} else if (step instanceof Step.Synchronised move) {
			fed(Math.min(move.from().z(), move.to().z()));
		} else if (step instanceof Step.Arc arc) {
			aside |= arc.modal().plane() != Plane.XY;
			fed(Math.min(arc.from().z(), arc.to().z()));
		} else if (step instanceof Step.Contour contour) {
			fed(contour.levels() ? Double.NaN : Math.min(contour.from().z(), contour.to().z()));
		} else if (step instanceof Step.Stroke stroke) {
			cycle(stroke);
		} else if (step instanceof Step.Row row) {
			cycle(row.first());
		}
	}

	private void rapid(Step.Move move, boolean measured) {
		double to = move.to().z();
		if (to < move.from().z() || Double.isNaN(move.from().z()) && !Double.isNaN(to)) {
			last = to < open - BELOW && (move.modal().lengthOffset().isSet() || !measured) ? move : null;
		} else if (!(to < 0)) {
			first = first == null ? last : first;
			last = null;
			open = 0;
		}
	}

	private void cycle(Step.Stroke stroke) {
		aside |= stroke.modal().plane() != Plane.XY || stroke.bottom() > stroke.rLevel();
		fed(stroke.rLevel());
	}

	private void fed(double level) {
		open = Double.isNaN(level) ? Double.NEGATIVE_INFINITY : Math.min(open, level);
		last = null;
	}

	/** The first such rapid; one that nothing has come behind is one too. */
	Optional<Step.Move> first() {
		return Optional.ofNullable(first == null ? last : first).filter(move -> !aside);
	}

	/** Whether both have come as far. */
	boolean same(Plunges other) {
		return open == other.open && Objects.equals(last, other.last) && Objects.equals(first, other.first) && aside == other.aside;
	}
}
