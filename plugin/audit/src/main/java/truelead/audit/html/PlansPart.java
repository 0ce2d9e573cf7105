package truelead.audit.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.drawing.Drawing;
import truelead.checker.drawing.Ink;
import truelead.checker.drawing.PatternPlan;
import truelead.checker.drawing.PlanHole;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Rotary;
import truelead.checker.machine.WorkOffset;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The pattern in plan: a drawing for each work offset, plane and rotary position, and how its holes stand. */
final class PlansPart {

	private static final int MOST_PLANS = 24;
	private static final int MOST_LISTED = 200;
	private static final String AXES = "XYZ";

	private final Audited.Checked program;
	private final Map<Place, PlanHole.State> states = new HashMap<>();
	private final Map<Place, String> threads = new HashMap<>();

	PlansPart(Audited.Checked program) {
		this.program = program;
		program.result().work().operations().forEach(this::mark);
	}

	private void mark(ThreadingOperation operation) {
		List<Judged> bad = program.findings().stream().filter(judged -> judged.open() && judged.finding().operation() == operation.index()
				&& judged.finding().severity() != Severity.INFORMATION).toList();
		String name = operation.wanted().thread().map(fact -> fact.value().designation()).orElse("thread not named");
		for (Hole hole : operation.holes()) {
			boolean faulty = bad.stream().anyMatch(judged -> concerns(judged, operation, hole));
			PlanHole.State state = faulty ? PlanHole.State.FINDING : hole.madeBefore(operation.lastOrder()) ? PlanHole.State.THREADED
					: PlanHole.State.NO_HOLE;
			states.merge(hole.place(), state, (a, b) -> a == PlanHole.State.FINDING || b == PlanHole.State.FINDING
					? PlanHole.State.FINDING : a);
			threads.merge(hole.place(), name, (a, b) -> a.equals(b) ? a : a + ", " + b);
		}
	}

	/** A finding at the block of one stroke that is not the cycle's own block speaks of that hole alone; any other of all. */
	private static boolean concerns(Judged judged, ThreadingOperation operation, Hole hole) {
		if (!(operation instanceof Tapping tapping)) {
			return true;
		}
		int line = judged.finding().at().line();
		List<TapStroke> there = tapping.strokes().stream().filter(stroke -> stroke.block().line() == line).toList();
		boolean ofOneHole = judged.finding().rule().startsWith("hole-") || line != operation.block().line();
		return there.isEmpty() || !ofOneHole || there.stream().anyMatch(stroke -> stroke.place().equals(hole.place()));
	}

	void write(Html html) {
		Map<String, List<Hole>> plans = new LinkedHashMap<>();
		Work work = program.result().work();
		for (Hole hole : work.holes()) {
			if (hole.place().known() && (hole.made() || states.containsKey(hole.place()))) {
				plans.computeIfAbsent(title(hole.place()), any -> new ArrayList<>()).add(hole);
			}
		}
		if (states.isEmpty() || plans.isEmpty()) {
			return;
		}
		html.raw("<h2>Plan of the holes</h2>\n"
				+ "<p class=\"legend\">\u25ce threaded \u00b7 \u2297 threaded, with a finding \u00b7 dashed: threaded, but no hole is"
				+ " made here \u00b7 \u25cb hole, not threaded</p>\n");
		plans.entrySet().stream().filter(plan -> plan.getValue().stream().anyMatch(hole -> states.containsKey(hole.place())))
				.limit(MOST_PLANS).forEach(plan -> plan(html, plan.getKey(), plan.getValue()));
	}

	private void plan(Html html, String title, List<Hole> holes) {
		LengthUnit unit = program.result().work().shop().unit().value();
		Place first = holes.get(0).place();
		List<PlanHole> drawn = new ArrayList<>();
		for (Hole hole : holes) {
			double diameter = hole.making().stream().map(Cut::diameter).flatMap(java.util.Optional::stream).mapToDouble(Fact::value).max()
					.orElse(Double.NaN);
			drawn.add(new PlanHole("" + (drawn.size() + 1), hole.place().u(), hole.place().v(), diameter,
					states.getOrDefault(hole.place(), PlanHole.State.DRILLED)));
		}
		Drawing drawing = new PatternPlan(drawn, "" + AXES.charAt(first.plane().first()) + AXES.charAt(first.plane().second()), unit)
				.draw(Ink.OF_PAGE);
		html.element("h3", "", title).raw("<div class=\"beside\"><figure>" + drawing.svg() + "<figcaption>").text(drawing.text())
				.raw("</figcaption></figure>\n");
		AlikeTable table = new AlikeTable(List.of("diameter", "thread", "state"));
		Figures figures = new Figures(unit);
		for (int i = 0; i < Math.min(MOST_LISTED, drawn.size()); i++) {
			PlanHole hole = drawn.get(i);
			table.add(hole.label() + ": " + position(first, hole, unit),
					List.of(Double.isNaN(hole.diameter()) ? "?" : figures.length(hole.diameter()),
							threads.getOrDefault(holes.get(i).place(), "\u2013"), hole.state().words()));
		}
		table.write(html);
		html.raw("</div>\n");
		if (drawn.size() > MOST_LISTED) {
			html.element("p", "class=\"cut\"", "Only the first " + MOST_LISTED + " of " + drawn.size()
					+ " holes are listed here; the JSON report has all.");
		}
	}

	private static String position(Place place, PlanHole hole, LengthUnit unit) {
		int decimals = unit == LengthUnit.INCH ? 4 : 3;
		return AXES.charAt(place.plane().first()) + Figures.number(hole.x() / unit.mm(), decimals) + " "
				+ AXES.charAt(place.plane().second()) + Figures.number(hole.y() / unit.mm(), decimals);
	}

	private static String title(Place place) {
		String turned = place.rotary().equals(Rotary.NONE) ? "" : ", A" + Figures.number(place.rotary().a(), 3) + " B"
				+ Figures.number(place.rotary().b(), 3) + " C" + Figures.number(place.rotary().c(), 3);
		return "Work offset " + WorkOffset.name(place.workOffset()) + ", plane " + AXES.charAt(place.plane().first())
				+ AXES.charAt(place.plane().second()) + turned + (place.frame() > 0 ? ", shifted frame " + place.frame() : "");
	}
}
