package truelead.audit.sarif;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import truelead.audit.result.Acceptance;
import truelead.audit.result.Audited;
import truelead.audit.result.Fingerprint;
import truelead.audit.result.Gone;
import truelead.audit.result.Judged;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Related;
import truelead.checker.rule.Severity;

/** Writes one finding as a SARIF result. */
final class SarifResult {

	private final JsonWriter json;
	private final Artifacts artifacts;
	private final SarifRules rules;
	private final boolean baseline;

	SarifResult(JsonWriter json, Artifacts artifacts, SarifRules rules, boolean baseline) {
		this.json = json;
		this.artifacts = artifacts;
		this.rules = rules;
		this.baseline = baseline;
	}

	void write(Audited.Checked program, Judged judged) throws IOException {
		Finding finding = judged.finding();
		json.beginObject();
		head(finding.rule(), finding.severity(), finding.message(), judged.fingerprint());
		json.name("locations").beginArray().beginObject();
		SarifRegion.physicalLocation(json, artifacts, program.shown(finding.at()), finding.at());
		json.endObject().endArray();
		related(program, finding.related());
		fixes(program, finding.fixes());
		if (judged.acceptance().isPresent()) {
			suppression(judged.acceptance().get());
		}
		if (baseline) {
			json.name("baselineState").value(judged.known() ? "unchanged" : "new");
		}
		properties(program, finding);
		json.endObject();
	}

	void write(Audited.Checked program, Gone gone) throws IOException {
		json.beginObject();
		head(gone.rule(), gone.severity(), gone.message(), gone.fingerprint());
		json.name("locations").beginArray().beginObject().name("physicalLocation").beginObject();
		artifacts.location(json, "artifactLocation", program.source().shown());
		json.name("region").beginObject().name("startLine").value(gone.line()).name("startColumn").value(gone.column()).endObject();
		json.endObject().endObject().endArray();
		json.name("baselineState").value("absent");
		json.endObject();
	}

	private void head(String rule, Severity severity, String message, String fingerprint) throws IOException {
		json.name("ruleId").value(rule);
		if (rules.indexOf(rule) >= 0) {
			json.name("ruleIndex").value(rules.indexOf(rule));
		}
		json.name("level").value(level(severity));
		message(message);
		json.name("partialFingerprints").beginObject().name(Fingerprint.NAME).value(fingerprint).endObject();
	}

	/**
	 * A viewer of SARIF makes a link of {@code [words](target)} in a message (2.1.0, 3.11.6): with a blank between them it is what a
	 * comment says.
	 */
	private void message(String text) throws IOException {
		json.name("message").beginObject().name("text").value(text.replace("](", "] (")).endObject();
	}

	private void related(Audited.Checked program, List<Related> related) throws IOException {
		if (related.isEmpty()) {
			return;
		}
		json.name("relatedLocations").beginArray();
		int id = 1;
		for (Related place : related) {
			json.beginObject().name("id").value(id++);
			message(place.what());
			SarifRegion.physicalLocation(json, artifacts, program.shown(place.at()), place.at());
			json.endObject();
		}
		json.endArray();
	}

	private void fixes(Audited.Checked program, List<Fix> fixes) throws IOException {
		if (fixes.isEmpty()) {
			return;
		}
		json.name("fixes").beginArray();
		for (Fix fix : fixes) {
			json.beginObject();
			json.name("description").beginObject().name("text").value(fix.title() + (fix.why().isEmpty() ? "" : " (" + fix.why() + ")"))
					.endObject();
			json.name("artifactChanges").beginArray();
			for (Map.Entry<String, List<Edit>> file : byFile(program, fix).entrySet()) {
				json.beginObject();
				artifacts.location(json, "artifactLocation", file.getKey());
				json.name("replacements").beginArray();
				for (Edit edit : file.getValue()) {
					json.beginObject();
					SarifRegion.region(json, "deletedRegion", edit.at(), false);
					json.name("insertedContent").beginObject().name("text").value(edit.text()).endObject();
					json.endObject();
				}
				json.endArray().endObject();
			}
			json.endArray();
			json.name("properties").beginObject().name("safe").value(fix.safe()).endObject();
			json.endObject();
		}
		json.endArray();
	}

	private static Map<String, List<Edit>> byFile(Audited.Checked program, Fix fix) {
		Map<String, List<Edit>> files = new LinkedHashMap<>();
		for (Edit edit : fix.edits()) {
			files.computeIfAbsent(program.shown(edit.at()), any -> new ArrayList<>()).add(edit);
		}
		return files;
	}

	private void suppression(Acceptance acceptance) throws IOException {
		json.name("suppressions").beginArray().beginObject();
		json.name("kind").value(acceptance.inProgram() ? "inSource" : "external");
		json.name("status").value("accepted");
		json.name("justification").value(acceptance.reason());
		if (!acceptance.person().isEmpty() || !acceptance.date().isEmpty()) {
			json.name("properties").beginObject().name("person").value(acceptance.person()).name("date")
					.value(acceptance.date()).endObject();
		}
		json.endObject().endArray();
	}

	private void properties(Audited.Checked program, Finding finding) throws IOException {
		json.name("properties").beginObject();
		json.name("program").value(RelativeUri.of(program.source().shown()));
		if (finding.operation() >= 0) {
			json.name("operation").value(finding.operation());
		}
		json.name("evidence").beginArray();
		for (Evidence evidence : finding.evidence()) {
			json.beginObject().name("name").value(evidence.name()).name("value").value(evidence.value()).name("origin")
					.value(evidence.origin());
			if (evidence.at().isPresent()) {
				json.name("line").value(evidence.at().get().line() + 1);
			}
			json.endObject();
		}
		json.endArray().endObject();
	}

	/** SARIF's word for a severity. */
	static String level(Severity severity) {
		return switch (severity) {
			case ERROR -> "error";
			case WARNING -> "warning";
			case INFORMATION -> "note";
		};
	}
}
