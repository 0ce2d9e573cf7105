package truelead.checker.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** One cause, one finding. */
class PrecedenceTest {

	private static final ProgramFile FILE = new ProgramFile("A.NC", ProgramText.of("G84\nG80\n"));

	@Test
	void everySlipKeepsARuleSilent() {
		Set<Slip> explaining = EnumSet.noneOf(Slip.class);
		Rules.ALL.forEach(rule -> explaining.addAll(rule.silentWhere()));
		assertThat(explaining).as("a slip that no rule asks for is dead").containsExactlyInAnyOrder(Slip.values());
	}

	@Test
	void noRuleIsSilentOfItsOwnSlip() {
		for (Rule rule : Rules.ALL) {
			assertThat(Collections.disjoint(rule.silentWhere(), rule.tells())).as(rule.name()).isTrue();
		}
	}

	@Test
	void theForgottenFeedSpeaksForTheWrongOne() {
		assertThat(kept(finding("feed-missing", Severity.ERROR, 0, 0, Slip.OTHER_TOOLS_FEED), finding("feed-off-pitch", Severity.ERROR, 0,
				0))).containsExactly("feed-missing");
	}

	@Test
	void anotherOperationSpeaksForItself() {
		assertThat(kept(finding("feed-missing", Severity.ERROR, 0, 0, Slip.OTHER_TOOLS_FEED), finding("feed-off-pitch", Severity.ERROR, 1,
				1))).containsExactly("feed-missing", "feed-off-pitch");
	}

	@Test
	void aPieceOfInformationSilencesNoError() {
		assertThat(kept(finding("feed-missing", Severity.INFORMATION, 0, 0, Slip.OTHER_TOOLS_FEED),
				finding("feed-off-pitch", Severity.ERROR, 0, 0))).containsExactly("feed-missing", "feed-off-pitch");
	}

	@Test
	void aWarningSilencesNoError() {
		assertThat(kept(finding("spindle-not-turning", Severity.WARNING, 0, 0, Slip.NO_SPEED), finding("feed-off-pitch", Severity.ERROR, 0,
				0))).as("M3 may be the cycle's, F is wrong for certain").containsExactly("spindle-not-turning", "feed-off-pitch");
		assertThat(kept(finding("spindle-not-turning", Severity.ERROR, 0, 0, Slip.NO_SPEED), finding("feed-off-pitch", Severity.ERROR, 0,
				0))).containsExactly("spindle-not-turning");
	}

	@Test
	void aBlockThatCannotBeReadSpeaksForWhatItLacks() {
		assertThat(kept(finding("not-understood", Severity.ERROR, -1, 0, Slip.UNREAD_BLOCK), finding("feed-missing", Severity.ERROR, 0, 0)))
				.containsExactly("not-understood");
		assertThat(kept(finding("not-understood", Severity.ERROR, -1, 1, Slip.UNREAD_BLOCK), finding("feed-missing", Severity.ERROR, 0, 0)))
				.as("of its own block alone").containsExactly("not-understood", "feed-missing");
	}

	@Test
	void aWrongUnitWordSpeaksForEveryLength() {
		assertThat(kept(finding("inch-metric-mixup", Severity.ERROR, -1, 0, Slip.UNIT_WORD), finding("drill-too-small", Severity.ERROR, 3,
				1))).containsExactly("inch-metric-mixup");
	}

	@Test
	void aRuleThatFailedSpeaksForNoOther() {
		assertThat(kept(finding("not-understood", Severity.WARNING, -1, 0), finding("callout-missing", Severity.INFORMATION, 0, 0),
				finding("feed-missing", Severity.WARNING, 0, 0))).containsExactly("not-understood", "callout-missing", "feed-missing");
	}

	private static List<String> kept(Finding... findings) {
		return Precedence.apply(List.of(findings)).stream().map(Finding::rule).toList();
	}

	private static Finding finding(String rule, Severity severity, int operation, int line, Slip... tells) {
		return new Finding(rule, severity, "", new Location(FILE, line, new Span(0, 3)), List.of(), List.of(), List.of(), operation,
				Set.of(tells), Optional.empty());
	}
}
