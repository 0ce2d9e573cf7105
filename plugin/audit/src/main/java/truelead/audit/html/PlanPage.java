package truelead.audit.html;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import truelead.checker.plan.Figure;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Request;
import truelead.checker.plan.Weighing;
import truelead.checker.rule.Evidence;

/**
 * A page that weighs the ways to make a thread: recommendation first, the reasons of every way, the program, what to mind before it runs.
 */
public final class PlanPage {

	private PlanPage() {
	}

	/**
	 * The whole page.
	 *
	 * @param asked   what is to be made, in one line
	 * @param figures for a way: names and values, in order
	 * @param taken   which operation of a program the numbers are from, in one line; empty for none
	 * @param numbers those numbers, each with its origin
	 */
	public static String write(Plan plan, String asked, Function<Weighing, List<String[]>> figures, String taken, List<Evidence> numbers) {
		Html html = new Html().raw(Page.head("Plan: " + plan.request().thread().designation())).element("h1", "", asked);
		verdict(html, plan);
		if (!numbers.isEmpty()) {
			html.element("h2", "", taken).raw("<table class=\"numbers\">");
			numbers.forEach(number -> html.row(number.name(), number.value() + " (" + number.origin() + ")"));
			html.raw("</table>\n");
		}
		html.element("h2", "", "The ways to make it");
		plan.weighings().forEach(weighing -> way(html, weighing, plan, figures.apply(weighing)));
		if (plan.chosen().isPresent()) {
			html.element("h2", "", "The program").raw("<pre class=\"blocks\">").text(String.join("\n", plan.blocks())).raw("</pre>\n");
			html.raw("<div class=\"caution\">").element("strong", "", "Before it runs").list(before(plan.request(), plan.chosen().get()))
					.raw("</div>\n");
		}
		return html + Page.foot();
	}

	private static void verdict(Html html, Plan plan) {
		boolean can = plan.chosen().isPresent();
		String named = plan.chosen().map(chosen -> chosen.method().title() + ": ").orElse("");
		html.raw("<p class=\"verdict " + (can ? "good" : "bad") + "\"><span class=\"sign\" aria-hidden=\"true\">"
				+ (can ? "\u2714" : "\u2716") + "</span> ")
				.element("strong", "", can ? "Recommended: " + plan.chosen().get().method().title() : "No way makes this thread as asked")
				.raw(" <span>").text(can && plan.why().startsWith(named) ? plan.why().substring(named.length()) : plan.why())
				.raw("</span></p>\n");
		html.element("p", "", "Reasons and limits are common practice, speeds and torques from memory, where sources differ by two to "
				+ "three times: follow the tool maker's numbers.");
	}

	private static void way(Html html, Weighing weighing, Plan plan, List<String[]> figures) {
		boolean chosen = plan.chosen().filter(weighing::equals).isPresent();
		html.raw("<article class=\"operation\"><h3>").text(weighing.method().title()).raw(" <span class=\"state\">")
				.text(chosen ? "recommended" : weighing.possible() ? "possible" : "ruled out")
				.raw("</span></h3>\n<table class=\"numbers\">");
		weighing.ruledOut().forEach(reason -> html.row("ruled out", reason));
		weighing.pros().forEach(reason -> html.row("for", reason));
		weighing.cons().forEach(reason -> html.row("against", reason));
		figures.forEach(figure -> html.row(figure[0], figure[1]));
		html.raw("</table></article>\n");
	}

	/** What to mind before the program of a way runs, one sentence each. */
	public static List<String> before(Request request, Weighing way) {
		Figure figure = new Figure(request.unit());
		List<String> steps = new ArrayList<>();
		steps.add("The machine's manual and the shop's rules come first; a qualified person decides. Wear eye protection.");
		steps.add("Tool numbers, offsets, places and G54 are placeholders: put in those of your machine. The surface is at Z0, the lowest "
				+ "tool goes to Z-" + figure.said(way.hole().orElseThrow().drillTip()) + ".");
		steps.add("Prove it out at reduced rapid, the first hole above the part.");
		steps.add("Gauge the first hole by pin and the first thread by go and no-go before the batch runs.");
		return steps;
	}
}
