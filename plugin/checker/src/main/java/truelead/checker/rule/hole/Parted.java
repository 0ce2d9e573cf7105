package truelead.checker.rule.hole;

import java.util.Optional;
import truelead.checker.stroke.TapStroke;
import truelead.checker.turn.Parting;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The cut that takes a part off the bar behind a tapped hole: through or not, while it is tapped the hole ends in the bar where the drill
 * has stopped.
 */
final class Parted {

	/** A part is longer than this, mm: less is faced. */
	private static final double FACED = 2;
	/** As wide as a parting tool is; its place is that of its right or its left corner, mm (common practice, no source). */
	static final double WIDEST = 4;

	private Parted() {
	}

	/**
	 * The nearest one behind the surface after the last stroke of an operation in the middle of a lathe; empty where none goes to the hole.
	 */
	static Optional<Parting> behind(Tapping tapping, Work work) {
		TapStroke stroke = tapping.strokes().typical().get(0);
		double radius = tapping.wanted().thread().map(thread -> thread.value().diameter() / 2).orElse(0.0);
		double surface = tapping.surface(stroke).value();
		Optional<Parting> nearest = Optional.empty();
		for (Parting parting : work.course().partings()) {
			boolean cuts = parting.order() > stroke.order() && parting.radius() <= radius
					&& stroke.direction() * (parting.level() - surface) > FACED && parting.middle().equals(stroke.place());
			if (cuts && nearest.filter(known -> stroke.direction() * (parting.level() - known.level()) >= 0).isEmpty()) {
				nearest = Optional.of(parting);
			}
		}
		return nearest;
	}
}
