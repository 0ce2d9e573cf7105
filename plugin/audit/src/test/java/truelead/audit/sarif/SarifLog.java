package truelead.audit.sarif;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Set;
import truelead.audit.result.Audited;
import truelead.audit.result.Fingerprint;
import truelead.audit.result.Tally;
import truelead.checker.rule.Severity;

/** A written log, read again the way another program would. */
record SarifLog(String text) {

	private static final String SCHEMA = "sarif-2.1.0-rtm.5.json";

	static SarifLog of(Audited... programs) {
		StringWriter out = new StringWriter();
		try {
			SarifReport report = new SarifReport(out, false);
			Tally tally = new Tally(Severity.WARNING);
			for (Audited program : programs) {
				report.add(program);
				tally.add(program);
			}
			report.finish(tally);
		} catch (IOException never) {
			throw new UncheckedIOException(never);
		}
		return new SarifLog(out.toString());
	}

	Set<ValidationMessage> schemaProblems() throws IOException {
		try (InputStream schema = SarifLog.class.getResourceAsStream(SCHEMA)) {
			return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4).getSchema(schema).validate(text, InputFormat.JSON);
		}
	}

	JsonObject result(int index) {
		JsonObject run = JsonParser.parseString(text).getAsJsonObject().getAsJsonArray("runs").get(0).getAsJsonObject();
		return run.getAsJsonArray("results").get(index).getAsJsonObject();
	}

	String mark(int index) {
		return result(index).getAsJsonObject("partialFingerprints").get(Fingerprint.NAME).getAsString();
	}

	/** {@code 5:19-5:23} of a location. */
	static String region(JsonElement location) {
		JsonObject region = location.getAsJsonObject().getAsJsonObject("physicalLocation").getAsJsonObject("region");
		return region.get("startLine") + ":" + region.get("startColumn") + "-" + region.get("endLine") + ":" + region.get("endColumn");
	}
}
