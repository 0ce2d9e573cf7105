package truelead.checker.job;

import java.util.List;
import java.util.Optional;
import truelead.checker.callout.Dimension;
import truelead.checker.callout.ToolDescription;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/**
 * The thread of a tap that is said by diameter and pitch, each by itself, as programs of a machine say it:
 * {@code D=12. PITCH=1.75 RIGHT HAND TAP}.
 */
final class SizedTap {

	/** What written decimals leave open of a diameter and of a pitch, mm: D=3.505 and PITCH=0.794 for #6-32. */
	private static final double DIAMETER = 0.006;
	private static final double PITCH = 0.003;

	private SizedTap() {
	}

	/** The metric or Unified thread of the tables; empty where diameter or pitch is not said, or the two make none. */
	static Optional<ThreadSpec> thread(ToolDescription tap, LengthUnit unit) {
		if (!tap.kind().tap() || tap.diameter().isEmpty() || tap.pitch().isEmpty()) {
			return Optional.empty();
		}
		double diameter = tap.diameter().get().toolMm(unit);
		Hand hand = tap.hand().orElse(Hand.RIGHT);
		return lengths(tap.pitch().get(), unit).stream().flatMap(pitch -> List.of(ThreadSystem.METRIC, ThreadSystem.UNIFIED).stream()
				.flatMap(system -> ThreadTable.standard().threads(system).stream())
				.filter(thread -> Math.abs(thread.diameter() - diameter) <= DIAMETER && Math.abs(thread.pitch() - pitch) <= PITCH))
				.findFirst().map(thread -> thread.withHand(hand));
	}

	/** What a bare number may mean as a pitch, mm: a length in the program's unit; in inch programs turns an inch too, or millimetres. */
	private static List<Double> lengths(Dimension pitch, LengthUnit unit) {
		double mm = pitch.mm(unit);
		boolean bare = pitch.unit().isEmpty() && unit == LengthUnit.INCH;
		return bare ? List.of(mm, LengthUnit.INCH.mm() / pitch.value(), pitch.value()) : List.of(mm);
	}
}
