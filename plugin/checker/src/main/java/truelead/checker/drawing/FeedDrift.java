package truelead.checker.drawing;

import java.util.Locale;
import truelead.checker.program.LengthUnit;

/**
 * What a feed that does not fit the pitch does on the way to depth: advance over turns as programmed, against the thread.
 *
 * @param pitch   advance a turn that the thread needs, mm
 * @param advance advance a turn as programmed, mm
 * @param turns   turns to depth
 * @param unit    unit the lengths are shown in
 */
public record FeedDrift(double pitch, double advance, double turns, LengthUnit unit) {

	private static final int WIDTH = 420;
	private static final int HEIGHT = 220;
	private static final double LEFT = 46;
	private static final double TOP = 24;
	private static final double RIGHT = 270;
	private static final double BOTTOM = 186;

	/** The drawing in that ink. */
	public Drawing draw(Ink ink) {
		double deepest = Math.max(pitch, advance) * turns;
		double right = TOP + pitch * turns / deepest * (BOTTOM - TOP);
		double programmed = TOP + advance * turns / deepest * (BOTTOM - TOP);
		Svg svg = new Svg(WIDTH, HEIGHT, ink);
		svg.line(LEFT, TOP, RIGHT + 10, TOP, Svg.Line.THIN, false).line(LEFT, TOP, LEFT, BOTTOM + 6, Svg.Line.THIN, false);
		svg.text(RIGHT + 14, TOP, "start", "turns", false).text(LEFT, BOTTOM + 18, "middle", "depth", false);
		svg.line(LEFT, TOP, RIGHT, right, Svg.Line.THICK, false).line(LEFT, TOP, RIGHT, programmed, Svg.Line.DASHED, true);
		svg.line(RIGHT, right, RIGHT, programmed, Svg.Line.THICK, true);
		svg.text(RIGHT, TOP - 12, "middle", String.format(Locale.ROOT, "%.1f", turns), false);
		LevelLabels labels = new LevelLabels();
		labels.add(right, "thread: " + LengthText.of(pitch * turns, unit), false);
		labels.add(programmed, "feed: " + LengthText.of(advance * turns, unit), true);
		labels.draw(svg, RIGHT + 4, RIGHT + 30, TOP, BOTTOM);
		svg.text(LEFT + 14, BOTTOM - 4, "start", LengthText.of(Math.abs(pitch - advance) * turns, unit) + (advance < pitch ? " behind"
				: " ahead"), true);
		return new Drawing(svg.build("Feed against pitch", text()), text());
	}

	/** The same in a sentence. */
	public String text() {
		return String.format(Locale.ROOT, "In %.1f turns the thread advances %s and the feed %s: %s %s.", turns,
				LengthText.of(pitch * turns, unit), LengthText.of(advance * turns, unit), LengthText.of(Math.abs(pitch - advance) * turns,
						unit), advance < pitch ? "behind" : "ahead");
	}
}
