package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.turn.SinglePoint;

/** The speed at which a lathe cuts a thread by a single point, with a digit too many. */
final class TurnedSpeed {

	/** Cutting speed that no point for threads runs at, m/min (common practice, no source: carbide is run at 80 to 250). */
	private static final double FASTEST = 450;
	/** Up to this, m/min, a point may run faster than what turned its work, and above it not so many times as fast (no source). */
	private static final double USUAL = 250;
	private static final double TIMES_ITS_TURNING = 2;
	/** No lathe's slide is led into a thread so fast, m/min (common practice, no source). */
	private static final double FASTEST_SLIDE = 20;
	private static final double FOOT = 12;

	private TurnedSpeed() {
	}

	/** The finding of a thread that is turned too fast; empty where it is not, or its speed is not known. */
	static Optional<Draft> of(Rule rule, SinglePoint turned) {
		Modal modal = turned.pass().modal();
		if (modal.constantSurface() || !modal.speed().known()) {
			return Optional.empty();
		}
		double speed = modal.speed().value();
		double diameter = 2 * Math.max(turned.deepest().radius(), turned.passes().get(0).radius());
		double surface = Math.PI * diameter * speed / 1000;
		// a feed a minute, or another slip of the lead, is told by itself
		double lead = turned.passes().get(0).lead();
		boolean led = turned.agreed().filter(thread -> lead < 1.5 * turned.asCut(thread.value()).lead()).isPresent();
		double slide = led ? lead * speed / 1000 : 0;
		OptionalDouble before = turning(turned);
		double most = before.isPresent() ? Math.min(FASTEST, Math.max(USUAL, TIMES_ITS_TURNING * before.getAsDouble())) : FASTEST;
		if (!(surface > most || slide > FASTEST_SLIDE)) {
			return Optional.empty();
		}
		String said = modal.speed().word().map(Figures::written).orElse("S" + Figures.number(speed, 1));
		String fact = surface > FASTEST ? " turns the thread at " + Figures.number(surface, 0) + " m/min, no point for threads runs above "
				+ Figures.number(FASTEST, 0) : surface > most ? " turns the thread at " + Figures.number(surface, 0)
				+ " m/min, its work was turned at " + Figures.number(before.getAsDouble(), 0) : " with this lead asks "
				+ Figures.number(slide, 1) + " m/min of the slide, threads are led below " + Figures.number(FASTEST_SLIDE, 0);
		double right = Math.min(most * 1000 / Math.PI / diameter, FASTEST_SLIDE * 1000 / lead);
		return Optional.of(Draft.of(rule, Severity.WARNING, modal.speed(), turned.pass().block(), said + fact
				+ (surface > most ? ": the point burns" : ": it does not come up to that before the wall") + "; S"
				+ Figures.number(Math.floor(right / 10) * 10, 0) + " at most")
				.programmed("speed", said, modal.speed()).from("highest speed", Figures.number(most, 0) + " m/min",
						"common practice, no source"));
	}

	/** The constant surface speed that its work was turned or bored at, m/min; empty where there was none. */
	private static OptionalDouble turning(SinglePoint turned) {
		Optional<Modal> modal = turned.prepared().map(Step::modal).filter(then -> then.constantSurface() && then.speed().known());
		double unit = modal.filter(then -> then.unit() == LengthUnit.INCH).isPresent() ? FOOT * LengthUnit.INCH.mm() / 1000 : 1;
		return modal.map(then -> OptionalDouble.of(then.speed().value() * unit)).orElse(OptionalDouble.empty());
	}
}
