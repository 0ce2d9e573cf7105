package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The drill is above the largest minor diameter of the class, or leaves less than 55 % of thread to form. */
public final class DrillTooBig extends DrillSizeRule {

	/** An error is a drill this much above the limit, as a part of the pitch (common practice, no source). */
	private static final double FAR = 0.05;
	/**
	 * Drill charts go this far above the narrow limits of trapezoids of inches, as a part of the pitch: 13/32 for 1/2-10 ACME; those of
	 * metric ones keep to them (common practice, no source).
	 */
	private static final double CHARTS = 0.1;
	/**
	 * Nobody tells a drill from the limit by less, as a part of the pitch: 57/64, 0.8906, where 1-8 UNC ends at 0.890 (common practice, no
	 * source).
	 */
	private static final double HAIR = 0.005;
	/** Percent of thread that a forming tap should make at least (common practice, no source). */
	static final double LOW = 55;
	private static final double TOO_LOW = 45;

	public DrillTooBig() {
		super("drill-too-big");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_TOOL, Slip.UNIT_WORD, Slip.FEED_AND_DRILL, Slip.HELIX_AND_DRILL, Slip.PATH_AND_DRILL,
				Slip.OTHER_THREAD_CUT, Slip.BLOCK_LEFT_OUT);
	}

	@Override
	void turned(SinglePoint turned, Work work, Consumer<Draft> found) {
		ChasedBore.of(turned).flatMap(bore -> bore.big(this)).ifPresent(found);
		TaperHole.of(turned).flatMap(hole -> hole.big(this, turned)).ifPresent(found);
	}

	@Override
	Optional<Draft> tapered(TaperHole hole, ThreadingOperation operation, Figures figures) {
		return hole.big(this, operation, figures);
	}

	@Override
	boolean isOff(InsertHole hole) {
		return hole.tooBig();
	}

	@Override
	Optional<Draft> cut(ThreadingOperation operation, Visits visits, DrilledSize size, Figures figures) {
		OptionalDouble most = size.limits().map(l -> l.minorMaxMm()).orElse(OptionalDouble.empty());
		if (most.isEmpty()) {
			return untabled(operation, visits, size, figures);
		}
		double over = size.d() - most.getAsDouble();
		ThreadSpec thread = size.thread().value();
		if (over <= (thread.system().movement() && thread.system().unit() == LengthUnit.INCH ? CHARTS * thread.pitch()
				: DrilledSize.WRITTEN + HAIR * thread.pitch())) {
			return Optional.empty();
		}
		boolean wouldForm = operation instanceof Tapping && thread.system().formable()
				&& FormHole.percent(size.thread().value(), size.d()) >= LOW;
		String message = size.hole(visits, figures) + " is " + size.made() + " " + figures.fine(size.d())
				+ ", the largest minor diameter of " + size.threadName()
				+ size.inClass() + " is " + figures.fine(most.getAsDouble()) + ": " + figures.fine(over) + " too big, "
				+ Figures.number(size.percent(), 0) + " % of thread left; " + size.right(figures)
				+ (wouldForm ? ", or say FORM TAP if it is one" : "");
		return Optional.of(size.evidence(Draft.of(this, over > (whitworth(thread) ? CHARTS : FAR) * thread.pitch() ? Severity.ERROR
				: Severity.WARNING, Location.of(size.at(operation, visits)), message), figures));
	}

	/** A thread to which no table gives a largest minor diameter, as NPSM: little is left of it whatever its tolerance is. */
	private Optional<Draft> untabled(ThreadingOperation operation, Visits visits, DrilledSize size, Figures figures) {
		if (size.percent() >= TOO_LOW) {
			return Optional.empty();
		}
		return Optional.of(size.evidence(Draft.of(this, Severity.ERROR, Location.of(size.at(operation, visits)), size.hole(visits, figures)
				+ " is " + size.made() + " " + figures.fine(size.d()) + ", " + Figures.number(size.percent(), 0) + " % of thread left in "
				+ size.threadName() + ": less than " + Figures.number(TOO_LOW, 0) + " % holds in no class; " + size.right(figures)),
				figures));
	}

	/**
	 * Drill charts go beyond the limits of BS 84 here too, 27/64 for 1/2-12 BSW, and leave three quarters of the thread (from memory): a
	 * warning.
	 */
	private static boolean whitworth(ThreadSpec thread) {
		return thread.system() == ThreadSystem.BSW || thread.system() == ThreadSystem.BSF;
	}

	@Override
	Optional<Draft> formed(ThreadingOperation operation, Visits visits, DrilledSize size, Figures figures) {
		double shift = DrilledSize.WRITTEN / (0.0068 * size.thread().value().pitch());
		if (size.percent() >= LOW - shift) {
			return Optional.empty();
		}
		String message = size.hole(visits, figures) + " is " + size.made() + " " + figures.fine(size.d()) + " for forming "
				+ size.threadName() + ", " + Figures.number(size.percent(), 0)
				+ " % of thread: less than 55 %, and the crests do not close; " + size.right(figures);
		return Optional.of(size.evidence(Draft.of(this, size.percent() < TOO_LOW - shift ? Severity.ERROR : Severity.WARNING,
				Location.of(size.at(operation, visits)), message), figures));
	}
}
