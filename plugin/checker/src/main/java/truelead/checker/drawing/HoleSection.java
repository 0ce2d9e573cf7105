package truelead.checker.drawing;

import truelead.checker.program.LengthUnit;

/**
 * A threaded hole cut through its axis. Depths count downwards from the top of the hole; all in mm, NaN where not known.
 *
 * @param major       major diameter of the thread, or where that is not known of the tool
 * @param pitch       pitch; only the number of flanks drawn depends on it
 * @param drill       diameter of the hole before threading
 * @param drillFull   depth to which the hole has its full diameter
 * @param drillTip    depth of the drill's point; same as {@code drillFull} for a flat bottom
 * @param tapTip      depth of the threading tool's end
 * @param fullThread  depth to which the thread is fully formed: tool's end less its lead
 * @param leadAssumed whether nobody says how long that lead is
 * @param called      depth of thread called out
 * @param wall        thickness of the wall; NaN where not known
 * @param through    whether the hole goes through, so that the tool may leave it below
 * @param countersink diameter of the countersink at the top; NaN or 0 for none
 * @param start       height of the R plane above the top
 * @param unit        unit the lengths are shown in
 */
public record HoleSection(double major, double pitch, double drill, double drillFull, double drillTip, double tapTip, double fullThread,
		boolean leadAssumed, double called, double wall, boolean through, double countersink, double start, LengthUnit unit) {

	private static final int WIDTH = 420;
	private static final int HEIGHT = 300;
	private static final double CENTRE = 110;
	private static final double TOP = 46;
	private static final double BOTTOM = 284;
	private static final double LABELS = 236;

	/** The drawing in that ink. */
	public Drawing draw(Ink ink) {
		double deepest = max(drillTip, drillFull, tapTip, called, wall, 1);
		double down = (BOTTOM - TOP - 14) / deepest;
		double widest = max(major, drill, countersink, 0.5);
		double across = Math.max(Math.min(down, 130 / widest), 46 / widest);
		Svg svg = new Svg(WIDTH, HEIGHT, ink);
		SectionGeometry at = new SectionGeometry(CENTRE, TOP, across, down);
		new SectionBody(this, at, BOTTOM).draw(svg);
		labels(at).draw(svg, CENTRE + 78, LABELS, 10, BOTTOM);
		if (Math.abs(across / down - 1) > 0.02) {
			svg.text(4, HEIGHT - 8, "start", "widths drawn " + Svg.n(Math.round(across / down * 10) / 10.0)
					+ " times as large as depths", false);
		}
		return new Drawing(svg.build("Section of the hole", text()), text());
	}

	private LevelLabels labels(SectionGeometry at) {
		LevelLabels labels = new LevelLabels();
		if (start > 0) {
			labels.add(Math.max(14, at.y(-start)), "R plane " + show(start) + " above", false);
		}
		labels.add(at.y(0), "top of the hole", false);
		boolean falls = fullThread < called - 1e-6 && !(leadAssumed && called < tapTip);
		add(labels, at, called, "thread called out " + show(called), falls);
		add(labels, at, fullThread, "full thread to " + end(), falls);
		add(labels, at, tapTip, "end of the tap " + show(tapTip), hits());
		add(labels, at, drillFull, "full diameter to " + show(drillFull), hits());
		if (drillTip > drillFull + 1e-6) {
			add(labels, at, drillTip, "drill point " + show(drillTip), false);
		}
		add(labels, at, wall, "far face " + show(wall), false);
		return labels;
	}

	private static void add(LevelLabels labels, SectionGeometry at, double depth, String text, boolean alarm) {
		if (!Double.isNaN(depth)) {
			labels.add(at.y(depth), text, alarm);
		}
	}

	/** Whether the tool's end goes below the full diameter. */
	boolean hits() {
		return !through && tapTip > drillFull + 1e-6 && !(wall <= drillFull + 1e-6);
	}

	/** What the drawing shows, in sentences. */
	public String text() {
		StringBuilder text = new StringBuilder();
		if (Double.isNaN(drill)) {
			text.append("No hole known. ");
		} else {
			text.append("Hole ").append(show(drill)).append(" in diameter");
			text.append(Double.isNaN(drillFull) ? "" : ", full diameter to " + show(drillFull));
			text.append(drillTip > drillFull + 1e-6 ? ", drill point at " + show(drillTip) : "").append(". ");
		}
		text.append(Double.isNaN(tapTip) ? "" : "End of the tap at " + show(tapTip)
				+ (Double.isNaN(fullThread) ? "" : ", full thread to " + end()) + ". ");
		text.append(Double.isNaN(called) ? "" : "Called out: " + show(called) + " of thread. ");
		text.append(through ? "The hole goes through. " : "");
		if (!through && !Double.isNaN(tapTip) && !Double.isNaN(drillFull)) {
			double clear = drillFull - tapTip;
			text.append(clear >= 0 ? show(clear) + " clear below the tap. " : "The tap goes " + show(-clear)
					+ " below the full diameter. ");
		}
		return text.append(Double.isNaN(wall) ? "" : "Far face at " + show(wall) + ". ").toString().strip();
	}

	private String end() {
		return (leadAssumed ? "about " : "") + show(fullThread);
	}

	private String show(double mm) {
		return LengthText.of(mm, unit);
	}

	private static double max(double... values) {
		double max = 0;
		for (double value : values) {
			max = Double.isNaN(value) ? max : Math.max(max, value);
		}
		return max;
	}
}
