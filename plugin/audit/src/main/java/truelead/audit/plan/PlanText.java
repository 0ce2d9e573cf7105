package truelead.audit.plan;

import java.util.List;
import truelead.checker.plan.Demand;
import truelead.checker.plan.Figure;
import truelead.checker.plan.HolePlan;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Request;
import truelead.checker.plan.SpeedBand;
import truelead.checker.plan.Weighing;

/** Writes a plan for people: the reasoning as a table, the recommendation, the program. */
final class PlanText {

	private PlanText() {
	}

	static String write(Plan plan) {
		StringBuilder text = new StringBuilder();
		Request request = plan.request();
		Figure figure = new Figure(request.unit());
		text.append(request.thread().designation()).append(", ").append(figure.said(request.depth())).append(request.through() ? " through" : " of full thread, blind")
				.append(", stock ").append(request.stock().map(s -> s.words()).orElse("not said")).append("\n\n");
		plan.weighings().forEach(weighing -> weighing(text, weighing, request, figure));
		text.append("Recommended: ").append(plan.why()).append("\n");
		text.append("Reasons and limits are common practice, speeds from memory; follow the tool maker's numbers and gauge the first part.\n");
		if (plan.chosen().isPresent()) {
			text.append("\n").append(String.join("\n", plan.blocks())).append("\n");
		}
		return text.toString();
	}

	private static void weighing(StringBuilder text, Weighing weighing, Request request, Figure figure) {
		text.append(weighing.method().title()).append("\n");
		list(text, "for", weighing.pros());
		list(text, "against", weighing.cons());
		list(text, "ruled out", weighing.ruledOut());
		weighing.hole().ifPresent(hole -> hole(text, hole, figure));
		weighing.demand().ifPresent(demand -> list(text, "takes", List.of(demand(demand))));
		SpeedBand band = SpeedBand.of(weighing.method(), request);
		list(text, "speed", List.of(Figure.plain(band.low(), 1) + " to " + Figure.plain(band.high(), 1) + " m/min; sources differ by two to three times"));
		text.append("\n");
	}

	/** S, torque and power where the stock is said, time, and how often to gauge. */
	static String demand(Demand demand) {
		String torque = demand.torque().isEmpty() ? "" : ", about " + Figure.plain(demand.torque().getAsDouble(), 1) + " N m and "
				+ Figure.plain(demand.power().getAsDouble(), 2) + " kW (estimate, from memory)";
		return "S" + Figure.plain(demand.speed(), 1) + torque + ", " + Figure.plain(demand.seconds(), 1) + " s in a hole; gauge the first, then every "
				+ demand.interval() + " at most, oftener as the tool wears (common practice)";
	}

	private static void hole(StringBuilder text, HolePlan hole, Figure figure) {
		list(text, "hole", List.of("drill " + hole.drill().name() + " (" + hole.source() + "), full diameter to " + figure.said(hole.full()) + ", tip to "
				+ figure.said(hole.drillTip()) + "; tool to " + figure.said(hole.toolTip())));
	}

	private static void list(StringBuilder text, String label, List<String> reasons) {
		reasons.forEach(reason -> text.append("  ").append(label).append(" ".repeat(11 - label.length())).append(reason).append("\n"));
	}
}
