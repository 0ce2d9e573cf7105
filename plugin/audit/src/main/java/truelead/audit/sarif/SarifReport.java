package truelead.audit.sarif;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import truelead.audit.report.Report;
import truelead.audit.report.SafeJson;
import truelead.audit.result.Audited;
import truelead.audit.result.Gone;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;

/**
 * SARIF 2.1.0, one run. All findings are in it: accepted ones with a suppression, and with a baseline each with its state, gone ones too.
 */
public final class SarifReport implements Report {

	private final JsonWriter json;
	private final Artifacts artifacts = new Artifacts();
	private final SarifRules rules = new SarifRules();
	private final SarifResult result;
	private final List<Audited.Refused> refused = new ArrayList<>();

	/** Starts the log on {@code out}; {@code baseline} is whether one is given. */
	public SarifReport(Writer out, boolean baseline) throws IOException {
		json = SafeJson.on(out);
		result = new SarifResult(json, artifacts, rules, baseline);
		json.beginObject();
		json.name("$schema").value("https://json.schemastore.org/sarif-2.1.0.json");
		json.name("version").value("2.1.0");
		json.name("runs").beginArray().beginObject();
		json.name("tool").beginObject().name("driver").beginObject();
		json.name("name").value("Truelead").name("version").value("0.1.0").name("semanticVersion").value("0.1.0");
		rules.write(json);
		json.endObject().endObject();
		json.name("columnKind").value("utf16CodeUnits");
		json.name("results").beginArray();
	}

	@Override
	public void add(Audited audited) throws IOException {
		if (audited instanceof Audited.Refused none) {
			refused.add(none);
			return;
		}
		Audited.Checked checked = (Audited.Checked) audited;
		artifacts.checked(checked.source().shown(), checked.sha256());
		for (Judged judged : checked.findings()) {
			result.write(checked, judged);
		}
		for (Gone gone : checked.gone()) {
			result.write(checked, gone);
		}
	}

	@Override
	public void finish(Tally tally) throws IOException {
		json.endArray();
		artifacts.write(json);
		json.name("invocations").beginArray().beginObject();
		json.name("executionSuccessful").value(refused.isEmpty());
		json.name("exitCode").value(tally.status());
		if (!refused.isEmpty()) {
			json.name("toolExecutionNotifications").beginArray();
			for (Audited.Refused none : refused) {
				json.beginObject().name("level").value("error");
				json.name("message").beginObject().name("text").value(none.reason()).endObject();
				json.name("locations").beginArray().beginObject().name("physicalLocation").beginObject();
				json.name("artifactLocation").beginObject().name("uri").value(RelativeUri.of(none.source().shown())).endObject();
				json.endObject().endObject().endArray().endObject();
			}
			json.endArray();
		}
		json.endObject().endArray();
		json.endObject().endArray().endObject();
		json.flush();
	}
}
