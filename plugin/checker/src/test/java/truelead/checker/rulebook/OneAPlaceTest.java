package truelead.checker.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Related;
import truelead.checker.rule.Severity;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** What one rule says again and again of one place is said once, as grave as the worst of it. */
class OneAPlaceTest {

	private final ProgramFile file = new ProgramFile("bracket.nc", ProgramText.of("G84 Z-15. R3. F500\nX30.\nX50.\n"));
	private final Location feed = new Location(file, 0, new Span(14, 18));

	@Test
	void theWorstSpeaksWhereverItStands() {
		assertThat(OneAPlace.merge(List.of(finding(Severity.WARNING, 1), finding(Severity.ERROR, 2)))).extracting(Finding::severity)
				.containsExactly(Severity.ERROR);
		assertThat(OneAPlace.merge(List.of(finding(Severity.ERROR, 1), finding(Severity.WARNING, 2)))).extracting(Finding::severity)
				.containsExactly(Severity.ERROR);
	}

	@Test
	void theBlocksOfAllCasesStayItsOwnFirst() {
		assertThat(OneAPlace.merge(List.of(finding(Severity.WARNING, 1), finding(Severity.ERROR, 2)))).flatExtracting(Finding::related)
				.extracting(one -> one.at().line()).containsExactly(2, 1);
	}

	private Finding finding(Severity severity, int line) {
		return new Finding("feed-off-pitch", severity, "in line " + line, feed,
				List.of(new Related(new Location(file, line, new Span(0, 4)), "the threading block")), List.of(), List.of(), 0);
	}
}
