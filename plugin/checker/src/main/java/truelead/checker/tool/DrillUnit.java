package truelead.checker.tool;

import java.util.Optional;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.Dimension;
import truelead.checker.callout.ToolDescription;
import truelead.checker.job.Fact;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.LengthUnit;

/**
 * The unit of a drill whose comment says none, in an inch program: {@code (DRILL 2.5)} at S4500 is no drill of 2.5 in, whose edge would run
 * at 898 m/min.
 */
final class DrillUnit {

	/** In inches a drill from here on is thick enough to be one in mm, mm. */
	private static final double THICK = 25.4;
	/** No drill of an inch and more cuts faster, m/min (common practice, no source). */
	private static final double FASTEST = 300;

	private DrillUnit() {
	}

	/**
	 * The facts of a tool of an inch program, its size in mm where it would turn too fast in inches.
	 *
	 * @param speed rev/min; NaN, where it is not known or the program is in mm, leaves all as it is
	 */
	static ToolFacts byTurning(ToolFacts facts, double speed) {
		Optional<Fact<Double>> fast = facts.kind().map(kind -> kind.value().bores()).orElse(true)
				? facts.diameter().filter(d -> d.value() >= THICK && Math.PI * d.value() * speed / 1000 > FASTEST && bare(d))
				: Optional.empty();
		return fast.map(size -> facts.withDiameter(size.map(mm -> mm / LengthUnit.INCH.mm()))).orElse(facts);
	}

	/** Whether the size is a number without a unit. */
	private static boolean bare(Fact<Double> size) {
		return CalloutReader.readComment(size.said()).tool().flatMap(ToolDescription::diameter)
				.or(() -> CalloutReader.bareSize(size.said())).filter(said -> said.unit().isEmpty()
						&& Math.abs(said.mm(LengthUnit.INCH) - size.value()) < 1e-6).map(Dimension::value).isPresent();
	}
}
