package truelead.audit.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.result.Audited;
import truelead.audit.result.Fingerprint;
import truelead.audit.result.Gone;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;
import truelead.audit.run.Sample;
import truelead.audit.sarif.SarifReport;
import truelead.audit.source.ContentHash;
import truelead.audit.source.Source;
import truelead.audit.terminal.Complaint;
import truelead.checker.rule.Severity;

class BaselineTest {

	private static final String INSERTED = Sample.BRACKET.replace("N20 G90", "(ROUGHING MOVED TO O0610)\n\nN20 G90");

	@TempDir
	Path folder;

	@Test
	void aFindingBelowInsertedLinesIsKnown() throws IOException {
		Audited.Checked after = now("bracket.nc", INSERTED, "F500");
		assertThat(baseline(after, then("bracket.nc", "F500")).judge(after).findings()).allMatch(Judged::known);
	}

	@Test
	void aNewFindingIsNotKnown() throws IOException {
		Audited.Checked after = now("bracket.nc", Sample.BRACKET, "F500", "X30.");
		assertThat(baseline(after, then("bracket.nc", "F500")).judge(after).findings()).extracting(Judged::known)
				.containsExactly(true, false);
	}

	@Test
	void whatIsMendedIsGone() throws IOException {
		Audited.Checked after = now("bracket.nc", INSERTED, "X30.");
		List<Gone> gone = baseline(after, then("bracket.nc", "F500", "X30.")).judge(after).gone();
		assertThat(gone).extracting(Gone::line).containsExactly(5);
	}

	@Test
	void aProgramInAnotherFolderIsFoundByItsName() throws IOException {
		Audited.Checked after = now("revised/bracket.nc", INSERTED, "F500");
		assertThat(baseline(after, then("released/bracket.nc", "F500")).judge(after).findings()).allMatch(Judged::known);
	}

	@Test
	void ofTwoProgramsWithOneNameTheContentDecides() throws IOException {
		Audited.Checked after = now("c/bracket.nc", Sample.BRACKET, "F500");
		Audited.Checked same = new Audited.Checked(after.source(), after.file(), ContentHash.known("bb"), after.result(),
				after.findings(), List.of());
		Audited.Checked first = withHash(then("a/bracket.nc", "X30."), "aa");
		Audited.Checked second = withHash(then("b/bracket.nc", "F500"), "bb");
		assertThat(baseline(same, first, second).judge(same).findings()).allMatch(Judged::known);
	}

	@Test
	void anotherProgramOfTheRunKeepsItsPlace() throws IOException {
		Audited.Checked moved = now("new/bracket.nc", Sample.BRACKET, "F500");
		Audited.Checked stays = now("old/bracket.nc", Sample.BRACKET, "F500");
		Path log = write(then("old/bracket.nc", "F500"));
		Baseline baseline = Baseline.read(log.toString(), List.of(moved.source(), stays.source()));
		assertThat(baseline.judge(moved).findings()).noneMatch(Judged::known);
		assertThat(baseline.judge(stays).findings()).allMatch(Judged::known);
	}

	@Test
	void programsThatWereNotCheckedNowAreNamedOnce() throws IOException {
		Audited.Checked after = now("flange.nc", Sample.BRACKET);
		Baseline baseline = baseline(after, then("bracket.nc", "F500", "X30."), then("flange.nc"));
		baseline.judge(after);
		assertThat(baseline.remarks()).singleElement().asString().endsWith("also holds 2 findings in 1 program that was not checked now");
	}

	@Test
	void anythingElseIsRefused() throws IOException {
		for (String text : List.of("", "{}", "[]", "G0 X1", "{\"runs\":[{\"results\":[{\"locations\":3,\"partialFingerprints\":{\""
				+ Fingerprint.NAME + "\":1}}]}]}")) {
			Path file = Files.writeString(folder.resolve("odd.sarif"), text);
			assertThatThrownBy(() -> Baseline.read(file.toString(), List.of())).isInstanceOf(Complaint.class)
					.hasMessageContaining("is no SARIF log");
		}
	}

	@Test
	void aLogWithFingerprintsMadeAnotherWayIsNotTakenForOneWithoutFindings() throws IOException {
		Path log = write(then("bracket.nc", "F500"));
		Files.writeString(log, Files.readString(log).replace(Fingerprint.NAME, "truelead/block/v1"));
		assertThatThrownBy(() -> Baseline.read(log.toString(), List.of())).isInstanceOf(Complaint.class)
				.hasMessageEndingWith("its fingerprints are of another version of Truelead; write it again");
	}

	private Baseline baseline(Audited.Checked now, Audited.Checked... then) throws IOException {
		return Baseline.read(write(then).toString(), List.of(now.source()));
	}

	private Path write(Audited.Checked... programs) throws IOException {
		StringWriter out = new StringWriter();
		SarifReport report = new SarifReport(out, false);
		for (Audited.Checked program : programs) {
			report.add(program);
		}
		report.finish(new Tally(Severity.WARNING));
		return Files.writeString(folder.resolve("then.sarif"), out.toString());
	}

	private static Audited.Checked then(String name, String... places) {
		return now(name, Sample.BRACKET, places);
	}

	private static Audited.Checked now(String name, String text, String... places) {
		Sample sample = Sample.of(Path.of(name).getFileName().toString(), text);
		Audited.Checked checked = sample.with(List.of(places).stream()
				.map(place -> sample.finding("hole-missing", Severity.ERROR, "m", place)).toArray(truelead.checker.rule.Finding[]::new));
		return new Audited.Checked(new Source(Path.of(name), name, 0), checked.file(), ContentHash.known("" + text.hashCode()),
				checked.result(), checked.findings(), List.of());
	}

	private static Audited.Checked withHash(Audited.Checked program, String sha256) {
		return new Audited.Checked(program.source(), program.file(), ContentHash.known(sha256), program.result(),
				program.findings(), List.of());
	}
}
