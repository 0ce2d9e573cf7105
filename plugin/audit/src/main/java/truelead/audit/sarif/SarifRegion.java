package truelead.audit.sarif;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import truelead.checker.program.Location;

/** Places in SARIF's counting: lines and columns from 1, the end column behind the last character, columns in UTF-16 units. */
final class SarifRegion {

	private SarifRegion() {
	}

	/** A physicalLocation object with its region and the text there. */
	static void physicalLocation(JsonWriter json, Artifacts artifacts, String shown, Location at) throws IOException {
		json.name("physicalLocation").beginObject();
		artifacts.location(json, "artifactLocation", shown);
		region(json, "region", at, true);
		json.endObject();
	}

	/** A region under that name; with its text where asked for. */
	static void region(JsonWriter json, String name, Location at, boolean snippet) throws IOException {
		json.name(name).beginObject();
		json.name("startLine").value(at.line() + 1);
		json.name("startColumn").value(at.span().start() + 1);
		json.name("endLine").value(at.line() + 1);
		json.name("endColumn").value(at.span().end() + 1);
		if (snippet) {
			String line = at.file().text().line(at.line());
			int end = Math.min(at.span().end(), line.length());
			json.name("snippet").beginObject().name("text").value(line.substring(Math.min(at.span().start(), end), end)).endObject();
		}
		json.endObject();
	}
}
