package truelead.audit.html;

import java.util.List;
import truelead.checker.drawing.Markup;

/** Puts HTML together. Everything given as text is escaped; only what comes from this package or from drawings goes in as it is. */
final class Html {

	private final StringBuilder out = new StringBuilder();

	/** Markup of our own. */
	Html raw(String markup) {
		out.append(markup);
		return this;
	}

	/** Text of anybody's. */
	Html text(String text) {
		out.append(Markup.escape(text));
		return this;
	}

	/** An element with text in it; {@code attributes} are ours. */
	Html element(String name, String attributes, String text) {
		return raw("<" + name + (attributes.isEmpty() ? "" : " " + attributes) + ">").text(text).raw("</" + name + ">");
	}

	/** A row of a table of names and values; nothing for an empty value. */
	Html row(String name, String value) {
		return value.isEmpty() ? this : raw("<tr><th scope=\"row\">").text(name).raw("</th><td>").text(value).raw("</td></tr>");
	}

	/** The heads of a table's columns; they stand on every page that the table goes over. */
	Html heads(List<String> heads) {
		raw("<thead><tr>");
		heads.forEach(head -> element("th", "scope=\"col\"", head));
		return raw("</tr></thead>\n");
	}

	/** A line of a table. */
	Html cells(List<String> cells) {
		raw("<tr>");
		cells.forEach(cell -> element("td", "", cell));
		return raw("</tr>\n");
	}

	/** A list of sentences; nothing for none. */
	Html list(List<String> sentences) {
		if (!sentences.isEmpty()) {
			raw("<ul>");
			sentences.forEach(sentence -> element("li", "", sentence));
			raw("</ul>\n");
		}
		return this;
	}

	@Override
	public String toString() {
		return out.toString();
	}
}
