package truelead.audit.data;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import truelead.audit.report.Report;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.audit.run.Sample;
import truelead.audit.source.Source;
import truelead.checker.rule.Severity;

class DataReportsTest {

	private final Sample bracket = Sample.of("bracket.nc", Sample.BRACKET);

	@Test
	void jsonHasProgramsFindingsAndWhatWasNotChecked() throws IOException {
		StringWriter out = new StringWriter();
		fill(new JsonReport(out), bracket.with(bracket.feedOffPitch()), new Audited.Refused(new Source(Path.of("x"), "x.nc", 0),
				"binary file"));
		JsonObject json = JsonParser.parseString(out.toString()).getAsJsonObject();
		JsonObject finding = json.getAsJsonArray("programs").get(0).getAsJsonObject().getAsJsonArray("findings").get(0).getAsJsonObject();
		assertThat(finding.get("rule").getAsString()).isEqualTo("feed-off-pitch");
		assertThat(finding.get("line").getAsInt()).isEqualTo(5);
		assertThat(json.getAsJsonArray("notChecked").get(0).getAsJsonObject().get("reason").getAsString()).isEqualTo("binary file");
		assertThat(json.getAsJsonObject("summary").get("exitStatus").getAsInt()).isEqualTo(2);
	}

	@Test
	void jsonHasThreadsOfALathe() throws IOException {
		String shaft = """
				O0042 (M20X1.5 SHAFT END)
				G21 G40 G99
				T0303 (THREAD M20X1.5)
				G97 S600 M3
				G0 X24. Z6.
				G92 X19.3 Z-27. F1.5
				X18.7
				X18.16
				G0 X100. Z100.
				M30
				""";
		StringWriter out = new StringWriter();
		fill(new JsonReport(out), Sample.of("shaft.nc", shaft).onALathe());
		JsonObject thread = JsonParser.parseString(out.toString()).getAsJsonObject().getAsJsonArray("programs").get(0).getAsJsonObject()
				.getAsJsonArray("operations").get(0).getAsJsonObject();
		assertThat(thread.get("method").getAsString()).isEqualTo("single point outside");
		assertThat(thread.get("thread").getAsString()).isEqualTo("M20x1.5");
		assertThat(thread.get("line").getAsInt()).isEqualTo(6);
		assertThat(thread.get("pitchMm").getAsDouble()).isEqualTo(1.5);
		assertThat(thread.get("cutDiameterMm").getAsDouble()).isEqualTo(18.16);
		assertThat(thread.get("endMm").getAsDouble()).isEqualTo(-27);
		assertThat(thread.get("passes").getAsInt()).isEqualTo(3);
		assertThat(thread.get("starts").getAsInt()).isEqualTo(1);
		assertThat(thread.get("hand").getAsString()).isEqualTo("right");
		assertThat(thread.get("firstDiameterMm").getAsDouble()).isEqualTo(19.3);
		assertThat(thread.get("firstDepthMm").isJsonNull()).isTrue();
	}

	@Test
	void jsonGivesATerminalNoCommandAndTheReaderTheSameText() throws IOException {
		String hostile = "\u009b31m red \u202e dnuor denrut \u007f \u001b[2J </script>";
		StringWriter out = new StringWriter();
		fill(new JsonReport(out), bracket.with(bracket.finding("hole-missing", Severity.ERROR, hostile, "X30.")));
		assertThat(out.toString()).doesNotContain("\u009b", "\u202e", "\u007f", "\u001b", "</script>");
		assertThat(JsonParser.parseString(out.toString()).getAsJsonObject().getAsJsonArray("programs").get(0).getAsJsonObject()
				.getAsJsonArray("findings").get(0).getAsJsonObject().get("message").getAsString()).isEqualTo(hostile);
	}

	@Test
	void aCaseFailsForFindingsFromTheLimitOn() throws Exception {
		Element suite = junit(Severity.WARNING, bracket.finding("hole-missing", Severity.ERROR, "no <hole>", "X30."));
		assertThat(suite.getAttribute("failures")).isEqualTo("1");
		assertThat(((Element) suite.getElementsByTagName("failure").item(0)).getAttribute("message")).isEqualTo("no <hole>");
	}

	@Test
	void aCaseBelowTheLimitPassesAndTellsTheFinding() throws Exception {
		Element suite = junit(Severity.ERROR, bracket.finding("start-too-close", Severity.WARNING, "close\u0001", "X30."));
		assertThat(suite.getAttribute("failures")).isEqualTo("0");
		assertThat(suite.getElementsByTagName("system-out").item(0).getTextContent())
				.isEqualTo("bracket.nc:6:5 warning start-too-close close\uFFFD");
	}

	@Test
	void aThreadOfALatheIsACaseWithItsFindings() throws Exception {
		Sample shaft = Sample.of("shaft.nc",
				"O0042 (M20X1.5 SHAFT END)\nG21 G40 G99\nT0303 (THREAD M20X1.5)\nG97 S600 M3\nG0 X24. Z6.\nG92 X19.3 Z-27. F1.25\nX18.7\n"
				+ "X18.16\nG0 X100. Z100.\nM30\n");
		StringWriter out = new StringWriter();
		Audited.Checked checked = shaft.onALathe(shaft.finding("feed-off-pitch", Severity.ERROR, "F1.25 is no lead of M20x1.5", "F1.25"));
		fill(new JunitReport(out, Severity.WARNING), checked);
		assertThat(out.toString()).contains("tests=\"2\" failures=\"1\"", "name=\"program\" time=\"0\"></testcase>",
				"name=\"operation 1: M20x1.5, T3, line 6\" time=\"0\"><failure type=\"feed-off-pitch\"");
		StringWriter json = new StringWriter();
		fill(new JsonReport(json), checked);
		JsonObject finding = JsonParser.parseString(json.toString()).getAsJsonObject().getAsJsonArray("programs").get(0).getAsJsonObject()
				.getAsJsonArray("findings").get(0).getAsJsonObject();
		assertThat(finding.get("operation").getAsInt()).isZero();
	}

	@Test
	void whatCouldNotBeFollowedIsAnError() throws Exception {
		assertThat(junit(Severity.ERROR, bracket.finding("not-followed", Severity.WARNING, "#1 has no value", "X30."))
				.getAttribute("errors")).isEqualTo("1");
	}

	@Test
	void openFindingsBecomeLinesOfAnAcceptFile() throws IOException {
		Audited.Checked checked = bracket.with(bracket.feedOffPitch());
		StringWriter out = new StringWriter();
		fill(new AcceptListReport(out), checked);
		assertThat(out.toString().lines()).containsExactly("fingerprint,rule,program,reason,person,date",
				checked.findings().get(0).fingerprint() + ",feed-off-pitch,bracket.nc,,,");
	}

	private Element junit(Severity limit, truelead.checker.rule.Finding... findings) throws Exception {
		StringWriter out = new StringWriter();
		fill(new JunitReport(out, limit), bracket.with(findings));
		Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
				.parse(new ByteArrayInputStream(out.toString().getBytes(StandardCharsets.UTF_8)));
		return (Element) document.getElementsByTagName("testsuite").item(0);
	}

	private static void fill(Report report, Audited... programs) throws IOException {
		Tally tally = new Tally(Severity.WARNING);
		for (Audited program : programs) {
			report.add(program);
			tally.add(program);
		}
		report.finish(tally);
	}
}
