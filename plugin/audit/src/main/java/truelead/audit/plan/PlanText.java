package truelead.audit.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.checker.plan.Demand;
import truelead.checker.plan.Existing;
import truelead.checker.plan.Figure;
import truelead.checker.plan.MillCut;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Request;
import truelead.checker.plan.SpeedBand;
import truelead.checker.plan.Weighing;
import truelead.checker.program.BlockRef;

/** Writes a plan for people: the reasoning as a table, the recommendation, the program. */
public final class PlanText {

	private PlanText() {
	}

	static String write(Plan plan, Optional<Existing> existing) {
		StringBuilder text = new StringBuilder(asked(plan.request())).append("\n\n");
		existing.ifPresent(one -> {
			text.append(taken(one)).append("\n");
			one.numbers().forEach(number -> text.append(String.format(Locale.ROOT, "  %-14s %-34s %s%n", number.name(), number.value(),
					number.origin()).replace(System.lineSeparator(), "\n")));
			text.append("\n");
		});
		for (Weighing weighing : plan.weighings()) {
			text.append(weighing.method().title()).append("\n");
			list(text, "for", weighing.pros());
			list(text, "against", weighing.cons());
			list(text, "ruled out", weighing.ruledOut());
			figures(weighing, plan.request(), existing).forEach(figure -> list(text, figure[0], List.of(figure[1])));
			text.append("\n");
		}
		text.append("Recommended: ").append(plan.why()).append("\n");
		text.append("Reasons and limits are common practice, speeds from memory; follow the tool maker's numbers and gauge the "
				+ "first part.\n");
		if (plan.chosen().isPresent()) {
			text.append("\n").append(String.join("\n", plan.blocks())).append("\n");
		}
		return text.toString();
	}

	/** What is to be made, in one line. */
	public static String asked(Request request) {
		return request.thread().designation() + ", " + new Figure(request.unit()).said(request.depth())
				+ (!request.through() ? " of full thread, blind" : request.depth() > request.wall() - 1e-6 ? " through"
						: " of full thread in a through hole of " + new Figure(request.unit()).said(request.wall())) + ", stock "
				+ request.stock().map(s -> s.words()).orElse("not said");
	}

	/** Where the numbers are from, in one line. */
	public static String taken(Existing existing) {
		BlockRef block = existing.sheet().block();
		return "What else could make the thread of " + block.file().name() + ":" + (block.line() + 1) + ", "
				+ existing.sheet().method() + "?";
	}

	/** Hole, demand and speed of a way, and what it has to do with the program as it is: names and values. */
	public static List<String[]> figures(Weighing weighing, Request request, Optional<Existing> existing) {
		Figure figure = new Figure(request.unit());
		List<String[]> figures = new ArrayList<>();
		weighing.hole().ifPresent(hole ->
				figures.add(new String[] {"hole", "drill " + hole.drill().name() + " (" + hole.source() + "), full diameter to "
						+ figure.said(hole.full()) + ", tip to " + figure.said(hole.drillTip()) + "; tool to "
						+ figure.said(hole.toolTip())}));
		weighing.demand().ifPresent(demand -> figures.add(new String[] {"takes", demand(demand)}));
		if (weighing.method().tap()) {
			weighing.demand().ifPresent(demand ->
					figures.add(new String[] {"feed", "F" + figure.feed(request.thread().lead(), demand.speed(), false) + " a minute at S"
							+ Figure.plain(demand.speed(), 1) + ", or F" + figure.feed(request.thread().lead(), demand.speed(), true)
							+ " a turn"}));
		}
		MillCut.in(weighing, request).ifPresent(cut -> figures.add(new String[] {"cutter", mill(cut, figure)}));
		SpeedBand band = SpeedBand.of(weighing.method(), request);
		figures.add(new String[] {"speed", Figure.plain(band.low(), 1) + " to " + Figure.plain(band.high(), 1)
				+ " m/min; sources differ by two to three times"});
		existing.ifPresent(one -> one.beside(weighing).forEach(sentence -> figures.add(new String[] {"program", sentence})));
		return figures;
	}

	/** S, torque and power where the stock is said, time, and how often to gauge. */
	private static String demand(Demand demand) {
		String torque = demand.torque().isEmpty() ? "" : ", about " + Figure.plain(demand.torque().getAsDouble(), 1) + " N m and "
				+ Figure.plain(demand.power().getAsDouble(), 2) + " kW (estimate, from memory)";
		return "S" + Figure.plain(demand.speed(), 1) + torque + ", " + Figure.plain(demand.seconds(), 1)
				+ " s in a hole; gauge the first, then every " + demand.interval()
				+ " at most, oftener as the tool wears (common practice)";
	}

	private static String mill(MillCut cut, Figure figure) {
		String steps = cut.steps().isEmpty() ? "one pass" : cut.radii().size() + " passes, radial steps of "
				+ String.join(", ", cut.steps().stream().map(figure::said).toList());
		return "diameter " + figure.said(cut.cutter()) + ", " + cut.teeth() + " teeth, " + figure.said(cut.toothFeed()) + " a tooth: "
				+ figure.said(cut.edge()) + " a minute at the edge, " + figure.said(cut.centre()) + " at the centre (as programmed); "
				+ steps + ", in and out on half arcs of radius " + figure.said(cut.entry());
	}

	private static void list(StringBuilder text, String label, List<String> reasons) {
		reasons.forEach(reason -> text.append("  ").append(label).append(" ".repeat(11 - label.length())).append(reason).append("\n"));
	}
}
