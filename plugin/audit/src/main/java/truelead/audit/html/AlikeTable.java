package truelead.audit.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A table of holes in which those with the same numbers stand together, so that the one that is not as the others is seen among forty. */
final class AlikeTable {

	private final List<String> heads;
	private final Map<List<String>, List<String>> places = new LinkedHashMap<>();

	/** {@code heads} are those of the numbers, and ours. */
	AlikeTable(List<String> heads) {
		this.heads = heads;
	}

	/** A hole at that place with these numbers. */
	void add(String place, List<String> numbers) {
		places.computeIfAbsent(numbers, any -> new ArrayList<>()).add(place.replace(' ', '\u00a0')); // a place stays in one line
	}

	void write(Html html) {
		html.raw("<div class=\"wide\"><table class=\"list alike\">").heads(heads);
		places.forEach((numbers, at) -> {
			html.raw("<tr class=\"places\">").element("th", "scope=\"rowgroup\" colspan=\"" + heads.size() + "\"",
					(at.size() == 1 ? "" : at.size() + " holes: ") + String.join(" \u00b7 ", at)).raw("</tr>\n");
			html.raw("<tr>");
			for (int i = 0; i < heads.size(); i++) {
				html.element("td", "data-is=\"" + heads.get(i) + "\"", numbers.get(i)); // on a telephone the heads stand beside the numbers
			}
			html.raw("</tr>\n");
		});
		html.raw("</table></div>\n");
	}
}
