package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import truelead.checker.EditedProgram;
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
	void anArcThatIsOpenedHasItsOwnThreadJudgedAlone() {
		assertThat(judged(threads(), "X4. Y100. Z-10.500", "X6. Y100. Z-10.500")).hasValue(1);
	}

	@Test
	void anArcThatIsOpenHasItsOwnThreadJudgedAloneWhenItIsClosed() {
		String open = threads().replace("X4. Y100. Z-10.500", "X6. Y100. Z-10.500");
		assertThat(judged(open, "X6. Y100. Z-10.500", "X4. Y100. Z-10.500")).hasValue(1);
	}

	@Test
	void whatIsFoundOfAnOpenArcGoesWithIt() {
		EditedProgram open = new EditedProgram();
		String right = threads();
		String wrong = right.replace("X4. Y100. Z-10.500", "X6. Y100. Z-10.500");
		assertThat(arcs(open, right)).isZero();
		assertThat(arcs(open, wrong)).isOne();
		assertThat(arcs(open, right)).isZero();
	}

	private static long arcs(EditedProgram open, String text) {
		return open.check(file(text), ProgramFolder.EMPTY, Job.EMPTY, MILL, RuleSettings.DEFAULT, Budget.of(MILL)).findings().stream()
				.filter(finding -> finding.rule().equals("arc-not-closed")).count();
	}

	@Test
	void underAnAssumedUnitAHoleHasItsOwnTapJudgedAloneToo() {
		assertThat(judged(rows(""), "X15. Y100.", "X17. Y100.")).hasValue(1);
	}

	@Test
	void aChangedCodeHasAllJudged() {
		assertThat(judged(rows("G21 "), "G80\nT2 M6 (DRILL 5.0)\nS2000 M3\nG43 H2 Z25.\nG81 X0. Y200.",
				"G80\nT2 M6 (DRILL 5.0)\nS2000 M4\nG43 H2 Z25.\nG81 X0. Y200.")).isEmpty();
	}

	@Test
	void afterManyEditsAllIsFollowedAnewSoThatOldTextsAreLetGo() {
		EditedWork work = EditedWork.of(file(rows("G21 ")), ProgramFolder.EMPTY, Job.EMPTY, MILL, Budget.of(MILL));
		for (int edit = 0; edit < EditedPlaces.EDITS; edit++) {
			assertThat(edited(work, rows("G21 "), "X15. Y100.", edit % 2 == 0 ? "X17. Y100." : "X15. Y100."))
					.as("edit " + edit).isPresent();
		}
		assertThat(work.follow(file(rows("G21 ")), ProgramFolder.EMPTY, Budget.of(MILL))).isEmpty();
	}

	@Test
	void noRuleFailsOnAPart() {
		EditedWork work = EditedWork.of(file(rows("G21 ")), ProgramFolder.EMPTY, Job.EMPTY, MILL, Budget.of(MILL));
		Work part = edited(work, rows("G21 "), "X15. Y200.", "X17. Y200.").orElseThrow().work();
		assertThat(Rules.found(part, RuleSettings.DEFAULT)).noneMatch(Rules::failed)
				.anyMatch(finding -> finding.rule().equals("hole-off-position") && finding.operation() == 2);
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

	/** Three threads 100 mm apart, each drilled and milled for itself. */
	private static String threads() {
		StringBuilder text = new StringBuilder("O1 (COVER)\nG21 G90 G17 G40 G49 G80 G54\n");
		for (int y = 0; y < 300; y += 100) {
			text.append("T5 M6 (DRILL 18.5)\nS900 M3\nG43 H5 Z25.\nG81 X0. Y" + y + ". Z-25. R2. F200.\nG80\n");
			text.append("T4 M6 (THREAD MILL 12, M20X1.5)\nS2500 M3\nG43 H4 Z25.\nG0 X0. Y" + y
					+ ".\nG1 Z-12.75 F800.\nG41 D4 X1.\nG3 X4. Z-12. I1.5 J0. F150.\n");
			for (int turn = 1; turn < 5; turn++) {
				text.append(String.format(Locale.ROOT, "G3 X4. Y%d. Z%.3f I-4. J0.\n", y, -12 + 1.5 * turn));
			}
			text.append("G3 X1. Z-5.25 I-1.5 J0.\nG40 G1 X0.\nG0 Z25.\n");
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
