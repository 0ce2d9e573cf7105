package truelead.checker.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Labels beside levels of a section. Where levels lie close together the labels move apart, each with a line to its level. */
final class LevelLabels {

	private static final double GAP = 15;

	private record Label(double y, String text, boolean alarm) {
	}

	private final List<Label> labels = new ArrayList<>();

	void add(double y, String text, boolean alarm) {
		labels.add(new Label(y, text, alarm));
	}

	/** Draws from {@code from} (the edge of the section) to letters that begin at {@code to}, between {@code top} and {@code bottom}. */
	void draw(Svg svg, double from, double to, double top, double bottom) {
		labels.sort(Comparator.comparingDouble(Label::y));
		double[] at = new double[labels.size()];
		double last = top - GAP;
		for (int i = 0; i < at.length; i++) {
			at[i] = Math.max(labels.get(i).y, last + GAP);
			last = at[i];
		}
		double limit = bottom;
		for (int i = at.length - 1; i >= 0 && at[i] > limit; i--) {
			at[i] = limit;
			limit -= GAP;
		}
		for (int i = 0; i < at.length; i++) {
			Label label = labels.get(i);
			double knee = to - 16;
			svg.path(Svg.Line.FAINT, label.alarm, false, from, label.y, knee, label.y, to - 4, at[i]);
			svg.text(to, at[i], "start", label.text, label.alarm);
		}
	}
}
