package truelead.checker.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import truelead.checker.program.LengthUnit;

/**
 * Holes seen along their axis, each marked by its state: a thread as drawings have it, a plain circle for a hole without thread, a crossed
 * one for a finding, a dashed one where no hole was made.
 */
public final class PatternPlan {

	private static final int WIDTH = 480;
	private static final int MOST = 3000;
	private static final double EDGE = 46;

	private final List<PlanHole> holes;
	private final String axes;
	private final LengthUnit unit;

	/** {@code axes} are the letters of the plane, {@code XY}. Holes whose position is not known are left out. */
	public PatternPlan(List<PlanHole> holes, String axes, LengthUnit unit) {
		this.holes = holes.stream().filter(hole -> !Double.isNaN(hole.x()) && !Double.isNaN(hole.y())).toList();
		this.axes = axes;
		this.unit = unit;
	}

	/** The drawing in that ink. */
	public Drawing draw(Ink ink) {
		double left = holes.stream().mapToDouble(PlanHole::x).min().orElse(0);
		double right = holes.stream().mapToDouble(PlanHole::x).max().orElse(0);
		double low = holes.stream().mapToDouble(PlanHole::y).min().orElse(0);
		double high = holes.stream().mapToDouble(PlanHole::y).max().orElse(0);
		double largest = holes.stream().mapToDouble(PlanHole::diameter).filter(d -> d > 0).max().orElse(5);
		double span = Math.max(Math.max(right - left, high - low), largest);
		double scale = Math.min((WIDTH - 2 * EDGE) / Math.max(right - left, span * 0.25), 300 / Math.max(high - low, span * 0.25));
		int height = (int) Math.ceil((high - low) * scale + 2 * EDGE + 8);
		double startX = (WIDTH - (right - left) * scale) / 2;
		Svg svg = new Svg(WIDTH, height, ink);
		Map<PlanHole.State, Integer> drawn = new EnumMap<>(PlanHole.State.class);
		boolean numbers = holes.size() <= 60;
		for (PlanHole hole : holes.subList(0, Math.min(MOST, holes.size()))) {
			double x = startX + (hole.x() - left) * scale;
			double y = height - EDGE - (hole.y() - low) * scale;
			double radius = Math.max(4, Math.min(22, (hole.diameter() > 0 ? hole.diameter() : largest) / 2 * scale));
			mark(svg, hole.state(), x, y, radius);
			if (numbers) {
				svg.text(x + radius + 3, y - radius, "start", hole.label(), hole.state() != PlanHole.State.THREADED
						&& hole.state() != PlanHole.State.DRILLED);
			}
			drawn.merge(hole.state(), 1, Integer::sum);
		}
		frame(svg, height, left, right, low, high, startX, scale);
		return new Drawing(svg.build("Plan of the holes", text()), text());
	}

	/** Draws the mark of a state, for the plan and for its legend. */
	private static void mark(Svg svg, PlanHole.State state, double x, double y, double r) {
		switch (state) {
			case THREADED -> svg.circle(x, y, r * 0.8, Svg.Line.THICK, false).threeQuarters(x, y, r, Svg.Line.THIN, false);
			case DRILLED -> svg.circle(x, y, r * 0.8, Svg.Line.THICK, false);
			case NO_HOLE -> svg.circle(x, y, r * 0.8, Svg.Line.DASHED, true).threeQuarters(x, y, r, Svg.Line.THIN, true);
			case FINDING -> svg.circle(x, y, r * 0.8, Svg.Line.THICK, true).threeQuarters(x, y, r, Svg.Line.THIN, true)
					.line(x - r - 3, y - r - 3, x + r + 3, y + r + 3, Svg.Line.THICK, true).line(x - r - 3, y + r + 3, x + r + 3, y - r - 3,
							Svg.Line.THICK, true);
		}
	}

	private void frame(Svg svg, int height, double left, double right, double low, double high, double startX, double scale) {
		double base = height - 18;
		svg.text(startX, base, "middle", axes.charAt(0) + LengthText.bare(left, unit), false);
		if (right > left) {
			svg.text(startX + (right - left) * scale, base, "middle", axes.charAt(0) + LengthText.bare(right, unit), false);
		}
		double lowY = height - EDGE;
		svg.text(4, lowY, "start", axes.charAt(1) + LengthText.bare(low, unit), false);
		if (high > low) {
			svg.text(4, lowY - (high - low) * scale, "start", axes.charAt(1) + LengthText.bare(high, unit), false);
		}
	}

	/** How many holes stand how, in a sentence. */
	public String text() {
		Map<PlanHole.State, Long> counts = holes.stream()
				.collect(Collectors.groupingBy(PlanHole::state, () -> new EnumMap<>(PlanHole.State.class), Collectors.counting()));
		String said = counts.entrySet().stream().map(entry -> entry.getValue() + " " + entry.getKey().words())
				.collect(Collectors.joining(", "));
		return "Plan of " + holes.size() + (holes.size() == 1 ? " hole: " : " holes: ") + said + "."
				+ (holes.size() > MOST ? " Only the first " + MOST + " are drawn." : "");
	}
}
