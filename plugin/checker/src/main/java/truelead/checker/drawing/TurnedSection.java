package truelead.checker.drawing;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.program.LengthUnit;

/**
 * A thread that a lathe cuts by a single point: half of the part cut through its axis, the chuck on the left. Lengths in mm; levels along Z
 * are counted away from the chuck.
 *
 * @param inside   whether it is cut in a bore
 * @param crest    distance of the crests from the axis at its deep end: of the turned outside, or of the bore
 * @param root     distance from the axis that the deepest pass ends at
 * @param slope    by how much it is farther from the axis for each mm away from the chuck; 0 for a parallel thread
 * @param pitch    pitch, which the number of flanks drawn follows
 * @param begin    level at which the first pass begins
 * @param end      level at which it ends
 * @param prepared level down to which the outside is turned or the hole bored; NaN where that is not known
 * @param shoulder whether the part is wider there, or the hole narrower
 * @param first    distance from the axis that the first pass goes to; NaN where the control divides the depth
 * @param unit     unit the lengths are shown in
 * @param names    how a level is called: the program's Z
 */
public record TurnedSection(boolean inside, double crest, double root, double slope, double pitch, double begin, double end,
		double prepared, boolean shoulder, double first, LengthUnit unit, Levels names) {

	/** Names a level. */
	public interface Levels {

		/** The level as the program has it, {@code Z-27}. */
		String of(double level);
	}

	private static final int WIDTH = 420;
	private static final double LEFT = 10;
	private static final double RIGHT = 252;
	private static final double TOP = 16;
	/** Most and least height from the axis to the outermost line, and room below the axis, pixels. */
	private static final double MOST = 180;
	private static final double LEAST = 70;
	private static final double BELOW = 76;
	/** Distances from the axis that come so near to the scale of lengths are drawn in it. */
	private static final double NEARLY = 0.7;
	private static final int MOST_FLANKS = 200;
	/** How much farther from the axis a shoulder is drawn, and the part's wall around a bore, of which nobody says how far that is. */
	private static final double WIDER = 1.25;
	/** Room beside the thread, a part of its length. */
	private static final double BESIDE = 0.15;

	/** The drawing in that ink. */
	public Drawing draw(Ink ink) {
		double lowest = Double.isNaN(prepared) ? Math.min(begin, end) : Math.min(prepared, Math.min(begin, end));
		double highest = Math.max(Math.max(begin, end), face());
		double chuck = lowest - BESIDE * (highest - lowest);
		double widest = WIDER * Math.max(crest, root);
		double longest = (RIGHT - LEFT) / (highest - chuck);
		double across = Math.min(MOST / widest, Math.max(longest, LEAST / widest));
		double along = across > NEARLY * longest ? Math.min(across, longest) : longest;
		Scale at = new Scale(chuck, TOP + widest * across, along, across);
		int height = (int) Math.ceil(at.axis + BELOW);
		Svg svg = new Svg(WIDTH, height, ink);
		body(svg, at, chuck, widest);
		svg.path(Svg.Line.THICK, false, false, flanks(at));
		svg.line(LEFT, at.axis, at.x(highest) + 6, at.axis, Svg.Line.CENTRE, false);
		levels(svg, at);
		LevelLabels labels = new LevelLabels();
		labels.add(at.y(crest), (inside ? "bore " : "outside ") + show(2 * crest), false);
		if (!Double.isNaN(first)) {
			labels.add(at.y(first), "first pass " + show(2 * first), false);
		}
		labels.add(at.y(root), "last pass " + show(2 * root), false);
		labels.draw(svg, at.x(end), RIGHT + 24, 12, at.axis - 8);
		if (Math.abs(across / along - 1) > 0.02) {
			svg.text(4, height - 8, "start", "distances from the axis drawn " + Svg.n(Math.round(across / along * 10) / 10.0)
					+ " times as large as lengths", false);
		}
		return new Drawing(svg.build("Section of the turned thread", text()), text());
	}

	private record Scale(double chuck, double axis, double along, double across) {

		double x(double level) {
			return LEFT + (level - chuck) * along;
		}

		double y(double radius) {
			return axis - radius * across;
		}
	}

	/** Where the part begins: its face, which is taken for level 0, or where the passes begin. */
	private double face() {
		return Math.min(begin, end) < 0 ? 0 : Math.max(begin, end);
	}

	private void body(Svg svg, Scale at, double chuck, double widest) {
		boolean stepped = shoulder && !Double.isNaN(prepared);
		double deep = stepped ? prepared : chuck;
		double floor = at.x(deep);
		double face = at.x(face());
		double near = at.y(crestAt(deep));
		double mouth = at.y(crestAt(face()));
		double far = at.y(widest);
		double left = at.x(chuck);
		double[] outline;
		if (inside) {
			outline = stepped ? new double[] {floor, at.axis, floor, near, face, mouth, face, far, left, far, left, at.axis}
					: new double[] {left, near, face, mouth, face, far, left, far};
		} else {
			outline = stepped ? new double[] {face, at.axis, face, mouth, floor, near, floor, far, left, far, left, at.axis}
					: new double[] {face, at.axis, face, mouth, left, near, left, at.axis};
		}
		svg.area(0.12, false, outline).path(Svg.Line.THIN, false, true, outline);
	}

	private double crestAt(double level) {
		return crest + slope * (level - Math.min(begin, end));
	}

	private double[] flanks(Scale at) {
		double deep = Math.min(begin, end);
		double length = Math.min(Math.max(begin, end), face()) - deep;
		int count = (int) Math.max(1, Math.min(MOST_FLANKS, Math.round(2 * length / pitch)));
		double[] points = new double[2 * count + 2];
		for (int i = 0; i <= count; i++) {
			double level = deep + length * i / count;
			points[2 * i] = at.x(level);
			points[2 * i + 1] = at.y(crestAt(level) + (i % 2 == 0 ? 0 : root - crest));
		}
		return points;
	}

	/** The levels below the axis, each in a line of its own so that none lies over another. */
	private void levels(Svg svg, Scale at) {
		List<Double> levels = new ArrayList<>(List.of(begin, end));
		List<String> said = new ArrayList<>(List.of("begins " + names.of(begin), "ends " + names.of(end)));
		if (!Double.isNaN(prepared)) {
			levels.add(prepared);
			said.add(ofPrepared());
		}
		for (int i = 0; i < levels.size(); i++) {
			double x = at.x(levels.get(i));
			double y = at.axis + 14 + 15 * i;
			boolean alarm = i == 1 && over();
			svg.line(x, at.axis - 4, x, y, Svg.Line.FAINT, alarm);
			boolean left = x > (LEFT + RIGHT) / 2;
			svg.text(left ? x - 4 : x + 4, y, left ? "end" : "start", said.get(i), alarm);
		}
	}

	private String ofPrepared() {
		return (inside ? shoulder ? "bore ends " : "bored to " : shoulder ? "shoulder " : "turned to ") + names.of(prepared);
	}

	private boolean over() {
		return prepared > Math.min(begin, end) + 1e-6;
	}

	/** The same in a sentence or two. */
	public String text() {
		String room = Double.isNaN(prepared) ? "" : " " + show(Math.abs(Math.min(begin, end) - prepared)) + (over() ? " beyond: "
				: " before: ") + ofPrepared() + ".";
		return "Passes from " + names.of(begin) + " to " + names.of(end)
				+ (Double.isNaN(first) ? "" : ", the first to diameter " + show(2 * first)) + ", the deepest to diameter "
				+ show(2 * root) + "." + room;
	}

	private String show(double mm) {
		return LengthText.of(mm, unit);
	}
}
