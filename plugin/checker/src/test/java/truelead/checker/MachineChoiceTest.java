package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.FeedMode;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.grammar.ProgramText;

/** Which machine a program is checked on: by a note, by its folder, by whoever checks, by its words. */
class MachineChoiceTest {

	private static final String TAP = """
			G21
			T0202 (M8X1.25 TAP)
			G97 S300 M3
			G0 X0 Z5.
			G84 Z-20. F1.25
			G80
			M30
			""";

	private static CheckResult check(String text, Optional<String> folderProfile, MachineProfile given) {
		ProgramFolder folder = new ProgramFolder() {
			@Override
			public Optional<ProgramFile> find(String name) {
				return Optional.empty();
			}

			@Override
			public Optional<ProgramFile> profile() {
				return folderProfile.map(profile -> new ProgramFile(PROFILE, ProgramText.of(profile)));
			}
		};
		return Checker.check(new ProgramFile("main.nc", ProgramText.of(text)), folder, Job.EMPTY, given, RuleSettings.DEFAULT);
	}

	private static FeedMode feedMode(CheckResult result) {
		return result.work().shop().profile().feedMode();
	}

	@Test
	void aNoteNamesTheProfile() {
		CheckResult result = check("(machine profile: TURNING)\n" + TAP, Optional.empty(), MachineProfile.generic());
		assertThat(feedMode(result)).isEqualTo(FeedMode.PER_REVOLUTION);
		assertThat(result.assumptions()).contains("machine profile turning by the note in line 1");
		assertThat(result.findings()).extracting(Finding::rule).doesNotContain("note-not-understood");
	}

	@Test
	void theNoteGoesBeforeTheFolderAndTheFolderBeforeTheOneGiven() {
		Optional<String> folder = Optional.of("base = turning\nname = Lathe 3\n");
		MachineProfile given = MachineProfile.named("milling-inch");
		assertThat(check(TAP, folder, given).work().shop().profile().name()).isEqualTo("Lathe 3");
		assertThat(check(TAP, folder, given).assumptions())
				.contains("machine profile Lathe 3 by truelead-machine.properties in the folder");
		assertThat(check("(MACHINE PROFILE: rs274)\n" + TAP, folder, given).work().shop().profile().name()).isEqualTo("rs274");
		assertThat(check("(MACHINE PROFILE: LATHE 3)\n" + TAP, folder, given).work().shop().profile().name()).isEqualTo("Lathe 3");
		assertThat(check(TAP, Optional.empty(), given).work().shop().profile().name()).isEqualTo("milling-inch");
	}

	@Test
	void aNameThatNoProfileHasIsSaid() {
		CheckResult result = check("(MACHINE PROFILE: BAY 9)\n" + TAP, Optional.empty(), MachineProfile.generic());
		assertThat(result.findings()).filteredOn(finding -> finding.rule().equals("note-not-understood")).singleElement()
				.satisfies(finding -> {
			assertThat(finding.message()).isEqualTo("no machine profile is called \"BAY 9\"; there are milling-metric, milling-inch, "
					+ "turning, rs274");
			assertThat(finding.at().line()).isZero();
			assertThat(finding.at().span().start()).isEqualTo(18);
			assertThat(finding.severity()).isEqualTo(Severity.WARNING);
		});
	}

	@Test
	void whatAPostProcessorSaysOfTheMachineIsNoNote() {
		assertThat(check("(MACHINE: MILL 2)\n(MACHINE TIME: 5 MIN)\n" + TAP, Optional.empty(), MachineProfile.named("turning")).findings())
				.extracting(Finding::rule).doesNotContain("note-not-understood");
	}

	@Test
	void aLineOfTheFoldersProfileThatCannotBeUsedIsSaidInItsFile() {
		CheckResult result = check(TAP, Optional.of("base = turning\nM135 = tap-rigidly\n"), MachineProfile.generic());
		assertThat(result.findings()).filteredOn(finding -> finding.rule().equals("note-not-understood")).singleElement()
				.satisfies(finding -> {
			assertThat(finding.at().file().name()).isEqualTo("truelead-machine.properties");
			assertThat(finding.at().line()).isEqualTo(1);
		});
		assertThat(feedMode(result)).isEqualTo(FeedMode.PER_REVOLUTION);
	}

	@Test
	void aThreadingStatementAloneIsAWarning() {
		CheckResult result = check("G21 G90\nT1 M6\nS500 M3\nG0 X0 Y0 Z5\nCYCLE84(50,0,2,-20)\nM30\n", Optional.empty(),
				MachineProfile.generic());
		assertThat(result.findings()).filteredOn(finding -> finding.rule().equals("not-followed")).extracting(Finding::severity)
				.containsExactly(Severity.WARNING);
		assertThat(check("G21 G90\nMCALL CYCLE84(50,0,2,-20)\nX5\nMCALL\nM30\n", Optional.empty(), MachineProfile.generic()).notFollowed())
				.isEqualTo(1);
	}
}
