package truelead.checker.drawing;

import java.util.List;
import truelead.checker.machine.Point;
import truelead.checker.program.LengthUnit;

/**
 * A thread mill in its hole, seen along the axis: hole, major diameter, the way of the cutter's centre and the cutter at the start of the
 * helix. All in mm, NaN where not known.
 *
 * @param hole   diameter of the hole before threading
 * @param major  major diameter of the thread
 * @param cut    diameter the cutter's edge reaches
 * @param cutter diameter of the cutter
 * @param centre axis of the hole
 * @param path   the cutter's centre along entry, helix and exit; first and second axis of the plane are x and y
 * @param unit   unit the lengths are shown in
 */
public record HelixPlan(double hole, double major, double cut, double cutter, Point centre, List<Point> path, LengthUnit unit) {

	private static final int WIDTH = 440;
	private static final int HEIGHT = 280;
	private static final double MIDDLE_X = 140;
	private static final double MIDDLE_Y = 140;
	private static final double ARROW = 8;

	public HelixPlan {
		path = List.copyOf(path);
	}

	/** The drawing in that ink. */
	public Drawing draw(Ink ink) {
		double widest = Math.max(Math.max(orZero(hole), orZero(major)), Math.max(orZero(cut), 1));
		double scale = 240 / widest;
		Svg svg = new Svg(WIDTH, HEIGHT, ink);
		boolean wrong = Math.abs(cut - major) > 0.02 * major;
		ring(svg, hole, scale, Svg.Line.THICK, false);
		ring(svg, major, scale, Svg.Line.THIN, false);
		ring(svg, cut, scale, Svg.Line.DASHED, wrong);
		double[] xy = new double[path.size() * 2];
		for (int i = 0; i < path.size(); i++) {
			xy[i * 2] = MIDDLE_X + (path.get(i).x() - centre.x()) * scale;
			xy[i * 2 + 1] = MIDDLE_Y - (path.get(i).y() - centre.y()) * scale;
		}
		if (xy.length >= 4) {
			svg.path(Svg.Line.THIN, false, false, xy);
			ways(svg, xy);
			double reach = 0;
			int far = 0;
			for (int i = 0; i < path.size(); i++) {
				double r = Math.hypot(path.get(i).x() - centre.x(), path.get(i).y() - centre.y());
				if (r > reach + 1e-6) {
					reach = r;
					far = i;
				}
			}
			if (!Double.isNaN(cutter)) {
				svg.circle(xy[far * 2], xy[far * 2 + 1], cutter / 2 * scale, Svg.Line.FAINT, false);
			}
		}
		svg.line(MIDDLE_X - 6, MIDDLE_Y, MIDDLE_X + 6, MIDDLE_Y, Svg.Line.THIN, false).line(MIDDLE_X, MIDDLE_Y - 6, MIDDLE_X, MIDDLE_Y + 6,
				Svg.Line.THIN, false);
		LevelLabels labels = new LevelLabels();
		label(labels, major, "major, thin", false, 60);
		label(labels, cut, "cut, dashed", wrong, 90);
		label(labels, hole, "hole, thick", false, 120);
		label(labels, cutter, "cutter, faint", false, 150);
		if (xy.length >= 4) {
			labels.add(190, "way of its centre, arrow", false);
			labels.add(220, "in, dot; out, ring", false);
		}
		labels.draw(svg, 268, 284, 20, 260);
		return new Drawing(svg.build("Thread mill in the hole", text()), text());
	}

	/** Where the cutter's centre comes from and goes to, and which way it goes round. */
	private static void ways(Svg svg, double[] xy) {
		int last = xy.length - 2;
		svg.circle(xy[0], xy[1], 1.5, Svg.Line.THICK, false).circle(xy[last], xy[last + 1], 5, Svg.Line.THIN, false);
		int at = xy.length / 4 * 2;
		double dx = xy[at] - xy[at - 2];
		double dy = xy[at + 1] - xy[at - 1];
		double length = Math.hypot(dx, dy);
		if (length > 0) {
			double x = dx / length * ARROW;
			double y = dy / length * ARROW;
			svg.path(Svg.Line.THICK, false, false, xy[at] - x - y / 2, xy[at + 1] - y + x / 2, xy[at], xy[at + 1], xy[at] - x + y / 2,
					xy[at + 1] - y - x / 2);
		}
	}

	/** Twice the area that the centre goes round, mm^2; positive counter-clockwise. */
	private double round() {
		double area = 0;
		for (int i = 1; i < path.size(); i++) {
			Point a = path.get(i - 1);
			Point b = path.get(i);
			area += (a.x() - centre.x()) * (b.y() - centre.y()) - (b.x() - centre.x()) * (a.y() - centre.y());
		}
		return area;
	}

	private static void ring(Svg svg, double diameter, double scale, Svg.Line kind, boolean alarm) {
		if (!Double.isNaN(diameter)) {
			svg.circle(MIDDLE_X, MIDDLE_Y, diameter / 2 * scale, kind, alarm);
		}
	}

	private void label(LevelLabels labels, double diameter, String what, boolean alarm, double y) {
		if (!Double.isNaN(diameter)) {
			labels.add(y, what + " " + LengthText.of(diameter, unit), alarm);
		}
	}

	/** The same in a sentence. */
	public String text() {
		StringBuilder text = new StringBuilder("Thread mill seen along the hole:");
		say(text, " hole ", hole);
		say(text, " cutter ", cutter);
		say(text, " cuts ", cut);
		say(text, " major diameter ", major);
		double round = round();
		text.append(round > 0 ? " its centre goes counter-clockwise," : round < 0 ? " its centre goes clockwise," : "");
		text.setCharAt(text.length() - 1, '.');
		return text.toString();
	}

	private void say(StringBuilder text, String what, double diameter) {
		if (!Double.isNaN(diameter)) {
			text.append(what).append(LengthText.of(diameter, unit)).append(',');
		}
	}

	private static double orZero(double value) {
		return Double.isNaN(value) ? 0 : value;
	}
}
