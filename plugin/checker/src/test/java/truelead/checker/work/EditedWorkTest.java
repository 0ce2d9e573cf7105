package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rulebook.Rules;
import truelead.grammar.ProgramText;

/** Which operations an edit has judged anew. */
class EditedWorkTest {

	private static final MachineProfile MILL = MachineProfile.generic();

	@Test
	void aHoleThatIsMovedHasItsOwnTapJudgedAlone() {
		assertThat(judged(rows("G21 "), "X15. Y100.", "X17. Y100.")).hasValue(1);
	}

	@Test
	void aFeedHasItsOwnTapJudgedAlone() {
		assertThat(judged(rows("G21 "), "Y200. Z-12. R4. F500.", "Y200. Z-12. R4. F520.")).hasValue(1);
	}

	@Test
	void aHoleMovedBesideAnotherToolsHasBothTapsJudged() {
		assertThat(judged(rows("G21 "), "X15. Y100.", "X15. Y201.")).hasValue(2);
	}

	@Test
	void underAnAssumedUnitAllIsJudged() {
		assertThat(judged(rows(""), "X15. Y100.", "X17. Y100.")).isEmpty();
	}

	@Test
	void aChangedCodeHasAllJudged() {
		assertThat(judged(rows("G21 "), "G80\nT2 M6 (DRILL 5.0)\nS2000 M3\nG43 H2 Z25.\nG81 X0. Y200.", "G80\nT2 M6 (DRILL 5.0)\nS2000 M4\nG43 H2 Z25.\nG81 X0. Y200.")).isEmpty();
	}

	@Test
	void noRuleFailsOnAPart() {
		EditedWork work = EditedWork.of(file(rows("G21 ")), ProgramFolder.EMPTY, Job.EMPTY, MILL, Budget.of(MILL));
		Work part = edited(work, rows("G21 "), "X15. Y200.", "X17. Y200.").orElseThrow().work();
		assertThat(Rules.found(part, RuleSettings.DEFAULT)).noneMatch(Rules::failed).anyMatch(finding -> finding.rule().equals("hole-off-position") && finding.operation() == 2);
	}

	/** Three rows of holes, each drilled and tapped for itself, 100 mm apart. */
	private static String rows(String unit) {
		StringBuilder text = new StringBuilder("O1 (COVER)\n" + unit + "G90 G17 G40 G49 G80 G54\n");
		for (int row = 0; row < 3; row++) {
			String places = "X15. Y" + row * 100 + ".\nX30. Y" + row * 100 + ".\nG80\n";
			text.append("T2 M6 (DRILL 5.0)\nS2000 M3\nG43 H2 Z25.\nG81 X0. Y" + row * 100 + ". Z-18. R2. F400.\n" + places);
			text.append("T3 M6 (M6X1 TAP)\nS500 M3\nG43 H3 Z25.\nG84 X0. Y" + row * 100 + ". Z-12. R4. F500.\n" + places);
		}
		return text.append("M30\n").toString();
	}

	/** How many operations are judged where something stands otherwise; empty where all are. */
	private static Optional<Integer> judged(String before, String words, String others) {
		EditedWork work = EditedWork.of(file(before), ProgramFolder.EMPTY, Job.EMPTY, MILL, Budget.of(MILL));
		return edited(work, before, words, others).map(part -> part.work().operations().size());
	}

	private static Optional<EditedWork.Part> edited(EditedWork work, String before, String words, String others) {
		assertThat(before).contains(words);
		ProgramFile now = new ProgramFile("A.NC", work.work().shop().program().text().edit(before.indexOf(words), words.length(), others));
		return work.follow(now, ProgramFolder.EMPTY, Budget.of(MILL)).flatMap(EditedWork.Changed::part);
	}

	private static ProgramFile file(String text) {
		return new ProgramFile("A.NC", ProgramText.of(text));
	}
}
