package truelead.checker.drawing;

import java.util.Locale;

/** Builds one {@code svg} element. All text is escaped; coordinates are written with at most two decimals, in every locale with a point. */
final class Svg {

	private final StringBuilder body = new StringBuilder();
	private final int width;
	private final int height;
	private final Ink ink;

	Svg(int width, int height, Ink ink) {
		this.width = width;
		this.height = height;
		this.ink = ink;
	}

	/** Kinds of line, told apart in black too. */
	enum Line {
		THICK("stroke-width=\"2.2\""), THIN("stroke-width=\"1\""), DASHED("stroke-width=\"1.2\" stroke-dasharray=\"5 3\""),
		CENTRE("stroke-width=\"0.7\" stroke-dasharray=\"10 3 2 3\""), FAINT("stroke-width=\"0.6\" stroke-opacity=\"0.6\"");

		private final String attributes;

		Line(String attributes) {
			this.attributes = attributes;
		}
	}

	Svg line(double x1, double y1, double x2, double y2, Line kind, boolean alarm) {
		body.append("<line x1=\"").append(n(x1)).append("\" y1=\"").append(n(y1)).append("\" x2=\"").append(n(x2)).append("\" y2=\"")
				.append(n(y2)).append('"').append(stroke(kind, alarm)).append("/>");
		return this;
	}

	/** An open or closed line through points x, y, x, y, ... */
	Svg path(Line kind, boolean alarm, boolean closed, double... xy) {
		body.append("<path fill=\"none\" d=\"").append(points(closed, xy)).append('"').append(stroke(kind, alarm)).append("/>");
		return this;
	}

	/** A tinted area without outline. */
	Svg area(double opacity, boolean alarm, double... xy) {
		body.append("<path d=\"").append(points(true, xy)).append("\" fill=\"").append(colour(alarm)).append("\" fill-opacity=\"")
				.append(n(opacity)).append("\" stroke=\"none\"/>");
		return this;
	}

	Svg circle(double x, double y, double radius, Line kind, boolean alarm) {
		body.append("<circle fill=\"none\" cx=\"").append(n(x)).append("\" cy=\"").append(n(y)).append("\" r=\"").append(n(radius))
				.append('"').append(stroke(kind, alarm)).append("/>");
		return this;
	}

	/** Three quarters of a circle, as drawings of threads have it; the gap is at the lower left. */
	Svg threeQuarters(double x, double y, double r, Line kind, boolean alarm) {
		body.append("<path fill=\"none\" d=\"M").append(n(x - r)).append(' ').append(n(y)).append(" A").append(n(r)).append(' ')
				.append(n(r)).append(" 0 1 1 ").append(n(x)).append(' ').append(n(y + r)).append('"').append(stroke(kind, alarm))
				.append("/>");
		return this;
	}

	/** Anchor is {@code start}, {@code middle} or {@code end}; y is the middle of the letters. */
	Svg text(double x, double y, String anchor, String text, boolean alarm) {
		body.append("<text x=\"").append(n(x)).append("\" y=\"").append(n(y + 4)).append("\" text-anchor=\"").append(anchor)
				.append("\" fill=\"").append(colour(alarm)).append('"').append(alarm ? " font-weight=\"bold\"" : "").append('>')
				.append(Markup.escape(text)).append("</text>");
		return this;
	}

	/** The element, with title and description for those who listen. */
	String build(String title, String description) {
		return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 " + width + ' ' + height + "\" width=\"" + width
				+ "\" height=\"" + height + "\" font-family=\"sans-serif\" font-size=\"12\"><title>" + Markup.escape(title)
				+ "</title><desc>" + Markup.escape(description) + "</desc>" + body + "</svg>";
	}

	private String stroke(Line kind, boolean alarm) {
		return " stroke=\"" + colour(alarm) + "\" " + kind.attributes;
	}

	private String colour(boolean alarm) {
		return alarm ? ink.alarm() : ink.line();
	}

	private static String points(boolean closed, double... xy) {
		StringBuilder path = new StringBuilder();
		for (int i = 0; i + 1 < xy.length; i += 2) {
			path.append(i == 0 ? "M" : " L").append(n(xy[i])).append(' ').append(n(xy[i + 1]));
		}
		return path.append(closed ? " Z" : "").toString();
	}

	/** A number for an attribute; what is not a number becomes 0. */
	static String n(double value) {
		if (Double.isNaN(value) || Double.isInfinite(value)) {
			return "0";
		}
		String text = String.format(Locale.ROOT, "%.2f", value);
		return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text.endsWith("0")
				? text.substring(0, text.length() - 1) : text;
	}
}
