package truelead.checker.lesson;

import java.util.List;
import truelead.checker.drawing.Markup;

/** Draws a plot as SVG in the colour of the text around it; curves are told apart by their dashes, so it holds in print without colour. */
public final class PlotPicture {

	/** Sizes, pixels (a choice of ours; lesson-page.js has the same). */
	private static final double WIDTH = 440;
	private static final double FIELD = 230;
	private static final double TALL_FIELD = 330;
	private static final double LEFT = 58;
	private static final double TOP = 12;
	private static final double LINE = 17;
	private static final double BELOW = 44;
	private final StringBuilder svg = new StringBuilder();

	private PlotPicture() {
	}

	/** The picture as an {@code svg} element without scripts, links or styles. */
	public static String of(Plot plot, Outcome outcome) {
		return new PlotPicture().draw(plot, outcome);
	}

	private String draw(Plot plot, Outcome outcome) {
		double field = plot.trueToScale() ? TALL_FIELD : FIELD;
		double height = TOP + field + BELOW + LINE * plot.curves().size();
		PlotFrame frame = PlotFrame.of(plot, outcome, LEFT, TOP, WIDTH - LEFT - 14, field);
		svg.append("<svg viewBox=\"0 0 ").append(figure(WIDTH)).append(' ').append(figure(height)).append("\" role=\"img\" aria-label=\"")
				.append(Markup.escape(plot.title() + ": " + plot.up() + " over " + plot.across())).append("\" font-size=\"12\">");
		axes(plot, frame);
		for (Plot.Curve curve : plot.curves()) {
			path(outcome.tracks().get(curve.name()), frame, curve.dash());
		}
		double y = TOP + field + BELOW;
		for (Plot.Curve curve : plot.curves()) {
			line(LEFT, y, LEFT + 40, y, 2, curve.dash().pattern());
			text(LEFT + 48, y + 4, "start", curve.label());
			y += LINE;
		}
		return svg.append("</svg>").toString();
	}

	private void axes(Plot plot, PlotFrame frame) {
		double right = frame.left() + frame.width();
		double bottom = frame.top() + frame.height();
		List<Double> across = frame.ticksAcross();
		List<Double> up = frame.ticksUp();
		for (double tick : across) {
			line(frame.x(tick), bottom, frame.x(tick), bottom + 4, 1, "");
			text(frame.x(tick), bottom + 16, "middle", PlotFrame.said(tick, across));
		}
		for (double tick : up) {
			line(frame.left() - 4, frame.y(tick), frame.left(), frame.y(tick), 1, "");
			svg.append("<path d=\"M").append(figure(frame.left())).append(' ').append(figure(frame.y(tick))).append('H')
					.append(figure(right)).append("\" stroke=\"currentColor\" stroke-width=\"0.5\" opacity=\"0.25\" fill=\"none\"/>");
			text(frame.left() - 7, frame.y(tick) + 4, "end", PlotFrame.said(tick, up));
		}
		line(frame.left(), frame.top(), frame.left(), bottom, 1, "");
		line(frame.left(), bottom, right, bottom, 1, "");
		text((frame.left() + right) / 2, bottom + 31, "middle", plot.across());
		double middle = (frame.top() + bottom) / 2;
		svg.append("<text transform=\"translate(13 ").append(figure(middle))
				.append(") rotate(-90)\" text-anchor=\"middle\" fill=\"currentColor\">").append(Markup.escape(plot.up())).append("</text>");
	}

	private void path(Track track, PlotFrame frame, Plot.Dash dash) {
		svg.append("<path d=\"");
		for (int i = 0; i < track.size(); i++) {
			svg.append(i == 0 ? "M" : "L").append(figure(frame.x(track.across(i)))).append(' ').append(figure(frame.y(track.up(i))));
		}
		svg.append("\" stroke=\"currentColor\" stroke-width=\"2\" fill=\"none\"").append(dashes(dash.pattern())).append("/>");
	}

	private void line(double x1, double y1, double x2, double y2, double width, String dashes) {
		svg.append("<path d=\"M").append(figure(x1)).append(' ').append(figure(y1)).append('L').append(figure(x2)).append(' ')
				.append(figure(y2)).append("\" stroke=\"currentColor\" stroke-width=\"").append(figure(width)).append("\" fill=\"none\"")
				.append(dashes(dashes)).append("/>");
	}

	private void text(double x, double y, String anchor, String text) {
		svg.append("<text x=\"").append(figure(x)).append("\" y=\"").append(figure(y)).append("\" text-anchor=\"").append(anchor)
				.append("\" fill=\"currentColor\">").append(Markup.escape(text)).append("</text>");
	}

	private static String dashes(String pattern) {
		return pattern.isEmpty() ? "" : " stroke-dasharray=\"" + pattern + "\"";
	}

	private static String figure(double number) {
		return Reading.fixed(number, 1);
	}
}
