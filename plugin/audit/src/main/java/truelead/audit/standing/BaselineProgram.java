package truelead.audit.standing;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import truelead.audit.result.Fingerprint;
import truelead.audit.result.Gone;
import truelead.audit.sarif.RelativeUri;
import truelead.checker.rule.Severity;

/**
 * One program of an earlier log.
 *
 * @param uri      its place as the log has it
 * @param name     its file name
 * @param sha256   hash of its bytes then; empty where the log does not say
 * @param findings what it had then
 */
record BaselineProgram(String uri, String name, String sha256, List<Gone> findings) {

	/**
	 * The programs of a log, in its order. A log of another form is a {@link JsonParseException} or {@link IllegalStateException}, one with
	 * fingerprints made another way an {@link IllegalArgumentException} that says so.
	 */
	static List<BaselineProgram> all(JsonElement log) {
		JsonArray runs = array(log.getAsJsonObject(), "runs");
		if (runs.isEmpty()) {
			throw new JsonParseException("no runs");
		}
		Map<String, BaselineProgram> programs = new LinkedHashMap<>();
		for (JsonElement element : runs) {
			JsonObject run = element.getAsJsonObject();
			for (JsonElement artifact : array(run, "artifacts")) {
				String uri = artifact.getAsJsonObject().getAsJsonObject("location").get("uri").getAsString();
				JsonObject hashes = artifact.getAsJsonObject().getAsJsonObject("hashes");
				if (hashes != null) {
					programs.put(uri, new BaselineProgram(uri, RelativeUri.fileName(uri), text(hashes, "sha-256"), new ArrayList<>()));
				}
			}
			for (JsonElement result : array(run, "results")) {
				add(programs, result.getAsJsonObject());
			}
		}
		return List.copyOf(programs.values());
	}

	private static void add(Map<String, BaselineProgram> programs, JsonObject result) {
		JsonObject marks = result.getAsJsonObject("partialFingerprints");
		boolean ours = marks != null && marks.keySet().stream().anyMatch(name -> name.startsWith("truelead/"));
		if (!ours || text(result, "baselineState").equals("absent")) {
			return;
		}
		if (!marks.has(Fingerprint.NAME)) {
			throw new IllegalArgumentException("its fingerprints are of another version of Truelead; write it again");
		}
		JsonObject place = array(result, "locations").get(0).getAsJsonObject().getAsJsonObject("physicalLocation");
		JsonObject properties = result.getAsJsonObject("properties");
		String inProgram = properties == null ? "" : text(properties, "program");
		String uri = inProgram.isEmpty() ? text(place.getAsJsonObject("artifactLocation"), "uri") : inProgram;
		JsonObject region = place.getAsJsonObject("region");
		Gone finding = new Gone(text(result, "ruleId"), severity(text(result, "level")), text(result.getAsJsonObject("message"), "text"),
				region.get("startLine").getAsInt(), region.get("startColumn").getAsInt(), text(marks, Fingerprint.NAME));
		programs.computeIfAbsent(uri, any -> new BaselineProgram(any, RelativeUri.fileName(any), "", new ArrayList<>()))
				.findings.add(finding);
	}

	private static JsonArray array(JsonObject object, String name) {
		return object.has(name) ? object.getAsJsonArray(name) : new JsonArray();
	}

	private static String text(JsonObject object, String name) {
		return object.has(name) ? object.get(name).getAsString() : "";
	}

	private static Severity severity(String level) {
		return switch (level) {
			case "error" -> Severity.ERROR;
			case "note" -> Severity.INFORMATION;
			default -> Severity.WARNING;
		};
	}
}
