package truelead.audit.sarif;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** The files of a run, numbered in the order they are first named. */
final class Artifacts {

	private record Artifact(int index, String uri, String sha256) {
	}

	private final Map<String, Artifact> byName = new LinkedHashMap<>();

	/** Names a checked program with the hash of its bytes. */
	void checked(String shown, String sha256) {
		Artifact known = of(shown);
		byName.put(shown, new Artifact(known.index, known.uri, sha256));
	}

	/** An artifactLocation object under that name. */
	void location(JsonWriter json, String name, String shown) throws IOException {
		Artifact artifact = of(shown);
		json.name(name).beginObject().name("uri").value(artifact.uri).name("index").value(artifact.index).endObject();
	}

	/** The artifacts array of the run. */
	void write(JsonWriter json) throws IOException {
		json.name("artifacts").beginArray();
		for (Artifact artifact : byName.values()) {
			json.beginObject();
			json.name("location").beginObject().name("uri").value(artifact.uri).endObject();
			if (!artifact.sha256.isEmpty()) {
				json.name("hashes").beginObject().name("sha-256").value(artifact.sha256).endObject();
			}
			json.endObject();
		}
		json.endArray();
	}

	private Artifact of(String shown) {
		return byName.computeIfAbsent(shown, name -> new Artifact(byName.size(), RelativeUri.of(name), ""));
	}
}
