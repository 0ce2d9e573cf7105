package truelead.audit.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.report.ReportFormat;
import truelead.audit.report.ReportRequest;
import truelead.audit.report.Spared;
import truelead.audit.result.Examination;
import truelead.audit.result.Tally;
import truelead.audit.source.Source;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;

/** The audit as the workbench runs it: watched, and ended by whoever watches. */
class AuditTest {

	@TempDir
	Path folder;

	private final Tally tally = new Tally(Severity.WARNING);

	@Test
	void theWatcherSeesThePrograms() throws IOException {
		List<String> seen = new ArrayList<>();
		try (Reports none = Reports.open(List.of(), System.out, new ReportPlan(false, Severity.WARNING, 0), new Spared(List.of()))) {
			audit().run(programs(20), audited -> seen.add(audited.source().shown()), none);
		}
		assertThat(seen).hasSize(20).isSorted();
		assertThat(tally.programs()).isEqualTo(20);
	}

	@Test
	void aRunThatIsEndedLeavesNoReport() throws IOException {
		Path report = folder.resolve("report.html");
		List<Source> sources = programs(20);
		ReportRequest request = new ReportRequest(ReportFormat.HTML, Optional.of(report.toString()));
		assertThatThrownBy(() -> {
			try (Reports reports = Reports.open(List.of(request), System.out, new ReportPlan(false, Severity.WARNING, 0),
					new Spared(List.of()))) {
				audit().run(sources, audited -> {
					if (tally.programs() == 5) {
						throw new CancellationException();
					}
				}, reports);
			}
		}).isInstanceOf(CancellationException.class);
		assertThat(tally.programs()).isEqualTo(5);
		try (var files = Files.list(folder)) {
			assertThat(files.filter(file -> !file.toString().endsWith(".nc"))).isEmpty();
		}
	}

	private Audit audit() {
		return new Audit(new Examination(Job.EMPTY, MachineProfile.generic(), RuleSettings.DEFAULT), List.of(), tally);
	}

	private List<Source> programs(int count) throws IOException {
		List<Source> sources = new ArrayList<>();
		for (int i = 10; i < 10 + count; i++) {
			Path file = Files.writeString(folder.resolve("p" + i + ".nc"), "G21\nM30\n");
			sources.add(new Source(file, file.getFileName().toString(), 8));
		}
		return sources;
	}
}
