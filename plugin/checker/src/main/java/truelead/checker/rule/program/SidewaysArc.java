package truelead.checker.rule.program;

import truelead.checker.machine.Step;
import truelead.checker.program.Plane;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Work;
import truelead.grammar.Element;

/** Tells an arc that does not close because the plane in force is not the one that it was written for. */
final class SidewaysArc {

	private SidewaysArc() {
	}

	/**
	 * Whether the arc was written for another plane than the one in force: its block holds the centre word of an axis that is not in the
	 * plane (K under G17, J under G18, I under G19), or a thread mill makes it under another plane than XY, whose words it does not hold.
	 */
	static boolean is(Step.Arc arc, Work work) {
		Plane plane = arc.modal().plane();
		return !arc.byRadius() && (centre(arc, "IJK".charAt(plane.axis())) || plane != Plane.XY && written(arc) != plane
				&& threadMill(arc, work));
	}

	/** The plane that the arc was written for: that of its centre words. */
	static Plane written(Step.Arc arc) {
		return !centre(arc, 'K') ? Plane.XY : centre(arc, 'J') ? Plane.YZ : Plane.ZX;
	}

	private static boolean centre(Step.Arc arc, char address) {
		return arc.block().file().text().block(arc.block().line()).words().stream().map(Element.Word::address)
				.anyMatch(a -> Character.toUpperCase(a) == address);
	}

	private static boolean threadMill(Step.Arc arc, Work work) {
		return arc.modal().tool().known() && work.tools().stream().filter(t -> t.number() == Math.round(arc.modal().tool().value()))
				.map(ToolUse::facts).anyMatch(facts -> facts.isThreadMill());
	}
}
