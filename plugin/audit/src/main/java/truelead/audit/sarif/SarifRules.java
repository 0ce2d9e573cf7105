package truelead.audit.sarif;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.rule.RulePage;
import truelead.checker.rulebook.Rules;

/** The rules of the checker as SARIF describes them, with the whole page as help. */
final class SarifRules {

	private final List<RulePage> pages = Rules.pages();
	private final Map<String, Integer> places = new HashMap<>();

	SarifRules() {
		for (RulePage page : pages) {
			places.put(page.name(), places.size());
		}
	}

	/** Place of a rule in the list, -1 for a rule without a page. */
	int indexOf(String rule) {
		return places.getOrDefault(rule, -1);
	}

	/** The rules array of the driver. */
	void write(JsonWriter json) throws IOException {
		json.name("rules").beginArray();
		for (RulePage page : pages) {
			json.beginObject();
			json.name("id").value(page.name());
			text(json, "shortDescription", page.summary());
			text(json, "fullDescription", page.section(RulePage.Heading.FINDS));
			json.name("help").beginObject().name("text").value(page.markdown()).name("markdown").value(page.markdown()).endObject();
			json.name("defaultConfiguration").beginObject().name("level").value(SarifResult.level(page.worst())).endObject();
			json.name("properties").beginObject().name("group").value(page.group()).endObject();
			json.endObject();
		}
		json.endArray();
	}

	private static void text(JsonWriter json, String name, String text) throws IOException {
		json.name(name).beginObject().name("text").value(text).endObject();
	}
}
