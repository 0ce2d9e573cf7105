package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The drill is below the smallest minor diameter of a cut thread, or leaves more than 75 % of thread to form. */
public final class DrillTooSmall extends DrillSizeRule {

	/** An error is a drill this much below the limit, as a part of the pitch (common practice, no source). */
	private static final double FAR = 0.05;
	/** Percent of thread that a forming tap still takes, and that breaks it (common practice, no source). */
	static final double HIGH = 75;
	private static final double TOO_HIGH = 85;

	public DrillTooSmall() {
		super("drill-too-small");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_TOOL, Slip.UNIT_WORD, Slip.FEED_AND_DRILL, Slip.HELIX_AND_DRILL, Slip.PATH_AND_DRILL,
				Slip.OTHER_THREAD_CUT, Slip.BORE_SHALLOW, Slip.BLOCK_LEFT_OUT);
	}

	@Override
	void turned(SinglePoint turned, Work work, Consumer<Draft> found) {
		ChasedBore.of(turned).flatMap(bore -> bore.small(this)).ifPresent(found);
		TaperHole.of(turned).flatMap(hole -> hole.small(this, turned)).ifPresent(found);
	}

	@Override
	Optional<Draft> tapered(TaperHole hole, ThreadingOperation operation, Figures figures) {
		return hole.small(this, operation, figures);
	}

	@Override
	boolean isOff(InsertHole hole) {
		return hole.tooSmall();
	}

	@Override
	Optional<Draft> cut(ThreadingOperation operation, Visits visits, DrilledSize size, Figures figures) {
		OptionalDouble least = size.limits().map(l -> l.minorMinMm()).orElse(OptionalDouble.empty());
		double missing = least.orElse(0) - size.d();
		if (missing <= DrilledSize.WRITTEN) {
			return Optional.empty();
		}
		String message = size.hole(visits, figures) + " is " + size.made() + " " + figures.fine(size.d())
				+ ", the smallest minor diameter of " + size.threadName() + size.inClass() + " is " + figures.fine(least.getAsDouble())
				+ ": " + figures.fine(missing) + " too small, " + Figures.number(size.percent(), 0) + " % of thread, and "
				+ (operation instanceof Tapping ? "the tap may break" : "the screw does not go in") + "; " + size.right(figures);
		return Optional.of(size.evidence(Draft.of(this, missing > FAR * size.thread().value().pitch() ? Severity.ERROR : Severity.WARNING,
				Location.of(size.at(operation, visits)), message), figures));
	}

	@Override
	Optional<Draft> formed(ThreadingOperation operation, Visits visits, DrilledSize size, Figures figures) {
		double shift = DrilledSize.WRITTEN / (0.0068 * size.thread().value().pitch());
		if (size.percent() <= HIGH + shift) {
			return Optional.empty();
		}
		String message = size.hole(visits, figures) + " is " + size.made() + " " + figures.fine(size.d()) + " for forming "
				+ size.threadName() + ", " + Figures.number(size.percent(), 0)
				+ " % of thread: more than 75 %, and a forming tap has nowhere to push the metal; " + size.right(figures);
		return Optional.of(size.evidence(Draft.of(this, size.percent() > TOO_HIGH + shift ? Severity.ERROR : Severity.WARNING,
				Location.of(size.at(operation, visits)), message), figures));
	}
}
