package truelead.checker.rule;

import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.ToolFacts;

/**
 * The tapered lead of a tap: the first turns, which do not cut full thread.
 *
 * @param turns length in turns, and who says so
 */
public record TapLead(Fact<Double> turns) {

	/** The shortest lead any tap has, turns: bottoming taps have 1 to 2 (ASME B94.9), forming taps 1.5 (common practice). */
	private static final double SHORTEST = 1;

	/** The lead of a tool: as stated, else by the kind of tap (DIN 2197 forms B and C; forming 2, common practice). */
	public static TapLead of(ToolFacts facts) {
		return new TapLead(facts.leadTurns().orElseGet(() -> {
			boolean point = ToolName.spiralPoint(facts);
			boolean forming = ToolName.forms(facts);
			return Fact.of(point ? 4.5 : forming ? 2.0 : 2.5, FactSource.DEFAULT,
					point ? "spiral point, form B of DIN 2197, 3.5 to 5.5 turns"
							: forming ? "forming tap, 1.5 to 2.5 turns, common practice" : "form C of DIN 2197, 2 to 3 turns");
		}));
	}

	/** Length, mm. */
	public double length(double pitch) {
		return turns.value() * pitch;
	}

	/** The length that a fault can be proved with, mm: as stated, but the shortest there is where the lead was only assumed. */
	public double atLeast(double pitch) {
		return (turns.stated() ? turns.value() : Math.min(SHORTEST, turns.value())) * pitch;
	}

	/** How a message says it: {@code lead of 2.5 turns}. */
	public String said() {
		return "lead of " + Figures.number(turns.value(), 1) + " turns";
	}
}
