package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.rulebook.Rules;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** One cause, one finding. */
class PrecedenceTest {

	private static final ProgramFile FILE = new ProgramFile("A.NC", ProgramText.of("G84\nG80\n"));

	@Test
	void everyNameInTheOrderIsARule() {
		List<String> rules = Rules.ALL.stream().map(Rule::name).toList();
		assertThat(Precedence.ORDER).allSatisfy(order -> {
			assertThat(rules).contains(order.speaks()).containsAll(order.instead());
			assertThat(order.instead()).doesNotContain(order.speaks());
		});
	}

	@Test
	void theForgottenFeedSpeaksForTheWrongOne() {
		assertThat(kept(finding("feed-missing", Severity.ERROR, 0, 0), finding("feed-off-pitch", Severity.ERROR, 0, 0))).containsExactly("feed-missing");
	}

	@Test
	void anotherOperationSpeaksForItself() {
		assertThat(kept(finding("feed-missing", Severity.ERROR, 0, 0), finding("feed-off-pitch", Severity.ERROR, 1, 1)))
				.containsExactly("feed-missing", "feed-off-pitch");
	}

	@Test
	void aPieceOfInformationSilencesNoError() {
		assertThat(kept(finding("feed-missing", Severity.INFORMATION, 0, 0), finding("feed-off-pitch", Severity.ERROR, 0, 0)))
				.containsExactly("feed-missing", "feed-off-pitch");
	}

	@Test
	void aWarningSilencesNoError() {
		assertThat(kept(finding("spindle-not-turning", Severity.WARNING, 0, 0), finding("feed-off-pitch", Severity.ERROR, 0, 0))).as("M3 may be the cycle's, F is wrong for certain")
				.containsExactly("spindle-not-turning", "feed-off-pitch");
		assertThat(kept(finding("spindle-not-turning", Severity.ERROR, 0, 0), finding("feed-off-pitch", Severity.ERROR, 0, 0))).containsExactly("spindle-not-turning");
	}

	@Test
	void aBlockThatCannotBeReadSpeaksForWhatItLacks() {
		assertThat(kept(finding("not-understood", Severity.ERROR, -1, 0), finding("feed-missing", Severity.ERROR, 0, 0))).containsExactly("not-understood");
	}

	private static List<String> kept(Finding... findings) {
		return Precedence.apply(List.of(findings)).stream().map(Finding::rule).toList();
	}

	private static Finding finding(String rule, Severity severity, int operation, int line) {
		return new Finding(rule, severity, "", new Location(FILE, line, new Span(0, 3)), List.of(), List.of(), List.of(), operation, Optional.empty());
	}
}
