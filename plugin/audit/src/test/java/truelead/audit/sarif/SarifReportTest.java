package truelead.audit.sarif;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.Recorded;
import truelead.audit.result.Audited;
import truelead.audit.run.Sample;
import truelead.audit.source.Source;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

class SarifReportTest {

	private final Sample bracket = Sample.of("bracket.nc", Sample.BRACKET);
	private final SarifLog log = SarifLog.of(bracket.with(bracket.feedOffPitch()));

	@Test
	void isValidAgainstThePublishedSchema() throws IOException {
		Finding plain = bracket.finding("hole-missing", Severity.WARNING, "<&>\u2028 \u00fc", "X30.");
		Finding accepted = bracket.finding("edge-not-broken", Severity.INFORMATION, "m", "X30.").acceptedFor("no burr wanted");
		SarifLog full = SarifLog.of(bracket.with(bracket.feedOffPitch(), plain, accepted),
				new Audited.Refused(new Source(Path.of("x"), "b \u00e4/x.nc", 0), "binary"));
		assertThat(full.schemaProblems()).isEmpty();
	}

	@Test
	void aCheckOfAProgramWithFaultsIsValidAndTellsItsRules(@TempDir Path folder) throws IOException {
		Path program = Files.writeString(folder.resolve("bracket.nc"), Sample.BRACKET);
		SarifLog checked = new SarifLog(Recorded.run("check", program, "--report", "sarif").out());
		assertThat(checked.schemaProblems()).isEmpty();
		assertThat(checked.text()).contains("\"ruleId\": \"feed-off-pitch\"", "\"ruleIndex\"", "\"shortDescription\"", "\"markdown\"");
	}

	@Test
	void everythingIsKnownAgainWhenLinesAreInsertedAndRenumbered(@TempDir Path folder) throws IOException {
		Path program = Files.writeString(folder.resolve("bracket.nc"), Sample.BRACKET);
		Path log = folder.resolve("then.sarif");
		assertThat(Recorded.run("check", program, "--report", "sarif:" + log).status()).isOne();
		Files.writeString(program, Sample.BRACKET.replace("\nN", "\nN1").replace("N140 X30.", "(HALF WAY)\n\nN140 X30."));
		Recorded again = Recorded.run("check", program, "--baseline", log);
		assertThat(again.status()).isZero();
		assertThat(again.out()).contains("0 errors, 0 warnings, 0 information").doesNotContain("gone since");
	}

	@Test
	void aFindingHasItsRuleItsLevelAndItsRange() {
		JsonObject result = log.result(0);
		assertThat(result.get("ruleId").getAsString()).isEqualTo("feed-off-pitch");
		assertThat(result.get("level").getAsString()).isEqualTo("error");
		assertThat(SarifLog.region(result.getAsJsonArray("locations").get(0))).isEqualTo("5:19-5:23");
	}

	@Test
	void aCommentMakesNoLinkInAViewer() {
		JsonObject result = SarifLog.of(bracket.with(bracket.finding("x", Severity.ERROR, "(see [here](https://a.invalid))", "X30.")))
				.result(0);
		assertThat(result.getAsJsonObject("message").get("text").getAsString()).isEqualTo("(see [here] (https://a.invalid))");
	}

	@Test
	void informationIsANote() {
		assertThat(SarifLog.of(bracket.with(bracket.finding("x", Severity.INFORMATION, "m", "X30."))).result(0).get("level").getAsString())
				.isEqualTo("note");
	}

	@Test
	void theCycleAndTheToolChangeAreRelatedLocationsWithRegions() {
		JsonObject result = log.result(0);
		assertThat(SarifLog.region(result.getAsJsonArray("relatedLocations").get(0))).isEqualTo("5:1-5:23");
		assertThat(SarifLog.region(result.getAsJsonArray("relatedLocations").get(1))).isEqualTo("3:1-3:19");
	}

	@Test
	void aFixIsAReplacement() {
		JsonObject replacement = log.result(0).getAsJsonArray("fixes").get(0).getAsJsonObject().getAsJsonArray("artifactChanges").get(0)
				.getAsJsonObject().getAsJsonArray("replacements").get(0).getAsJsonObject();
		assertThat(replacement.getAsJsonObject("deletedRegion").get("startColumn").getAsInt()).isEqualTo(19);
		assertThat(replacement.getAsJsonObject("insertedContent").get("text").getAsString()).isEqualTo("F520");
	}

	@Test
	void theMarkSurvivesInsertedLinesAndRenumbering() {
		Sample edited = Sample.of("other.nc", Sample.BRACKET.replace("N30 G84", "(NEW COMMENT)\n\nN130 G84"));
		assertThat(SarifLog.of(edited.with(moved(edited))).mark(0)).isEqualTo(log.mark(0));
	}

	@Test
	void theMarkChangesWithTheNumbers() {
		Sample edited = Sample.of("bracket.nc", Sample.BRACKET.replace("F500", "F510"));
		assertThat(SarifLog.of(edited.with(edited.finding("feed-off-pitch", Severity.ERROR, "m", "F510"))).mark(0))
				.isNotEqualTo(log.mark(0));
	}

	@Test
	void twoEqualFindingsHaveTwoMarks() {
		SarifLog two = SarifLog.of(bracket.with(bracket.feedOffPitch(), bracket.feedOffPitch()));
		assertThat(two.mark(0)).isNotEqualTo(two.mark(1));
	}

	@Test
	void namesAreRelativeAndPercentEncoded() {
		assertThat(RelativeUri.of("./teile/gr\u00f6\u00dfe 1.nc")).isEqualTo("teile/gr%C3%B6%C3%9Fe%201.nc");
		assertThat(RelativeUri.of(System.getProperty("user.dir") + "/a.nc")).isEqualTo("a.nc");
		assertThat(RelativeUri.fileName("teile/gr%C3%B6%C3%9Fe%201.nc")).isEqualTo("gr\u00f6\u00dfe 1.nc");
	}

	private static Finding moved(Sample edited) {
		Finding old = Sample.of("bracket.nc", Sample.BRACKET).feedOffPitch();
		return new Finding(old.rule(), old.severity(), old.message(), edited.at("F500"), old.related(), old.fixes(), old.evidence(), 0);
	}
}
