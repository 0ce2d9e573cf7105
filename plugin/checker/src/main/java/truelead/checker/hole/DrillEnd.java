package truelead.checker.hole;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.ToolFacts;
import truelead.checker.machine.Modal;
import truelead.checker.thread.DrillPoint;

/**
 * How a drill ends of which nobody says the point: a twist drill at 118 degrees; one that turns faster than high speed steel does is of
 * carbide, at 140, and a large one has inserts, and ends in a floor or a point of its own (common practice, no source).
 */
public final class DrillEnd {

	/** High speed steel is not taken so fast in most stock, m/min, and in none where it is as wide as a drill with inserts, mm. */
	private static final double CARBIDE_SPEED = 60;
	private static final double INSERTS_SPEED = 80;
	private static final double INSERTS_SIZE = 18;

	/** The flattest usual point of a drill of solid carbide, radians (common practice, no source). */
	private static final double CARBIDE_POINT = Math.toRadians(140);

	private DrillEnd() {
	}

	/**
	 * The included angle of a drill's point, radians; empty where nobody says it and the drill may have inserts.
	 *
	 * @param modal what is in force where it drills
	 */
	public static Optional<Fact<Double>> angle(ToolFacts facts, Modal modal) {
		return angle(facts, facts.diameter().map(Fact::value).orElse(Double.NaN), modal);
	}

	/**
	 * The same of a drill that is as wide as the thread needs, mm, where nobody says how wide it is.
	 *
	 * @param modal what is in force where it drills
	 */
	public static Optional<Fact<Double>> angle(ToolFacts facts, double diameter, Modal modal) {
		double speed = modal.constantSurface() || !modal.speed().known() ? Double.NaN : Math.PI * diameter * modal.speed().value() / 1000;
		if (facts.pointAngle().filter(Fact::stated).isPresent() || !(speed > CARBIDE_SPEED)) {
			return facts.pointAngle().or(() -> Optional.of(Fact.of(DrillPoint.ORDINARY, FactSource.DEFAULT, "118 degrees are assumed")));
		}
		return speed > INSERTS_SPEED && diameter >= INSERTS_SIZE ? Optional.empty() : Optional.of(Fact.of(CARBIDE_POINT, FactSource.DEFAULT,
				"140 degrees are assumed, for a drill of carbide turns so fast"));
	}

	/**
	 * Length of a drill's point, d/2 / tan(angle/2), mm (geometry); 5 mm at 118 degrees: 1.502. NaN where diameter or angle is not known.
	 *
	 * @param modal what is in force where it drills
	 */
	public static double point(ToolFacts facts, Modal modal) {
		Optional<Fact<Double>> angle = facts.diameter().isPresent() ? angle(facts, modal) : Optional.empty();
		return angle.map(a -> DrillPoint.length(facts.diameter().get().value(), a.value())).orElse(Double.NaN);
	}
}
