package truelead.audit.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.audit.source.Source;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

class ExitStatusTest {

	private final Sample bracket = Sample.of("bracket.nc", Sample.BRACKET);

	@Test
	void nothingFoundIsZero() {
		assertThat(status(Severity.WARNING, bracket.with())).isZero();
	}

	@Test
	void aFindingBelowTheLimitIsZero() {
		assertThat(status(Severity.WARNING, bracket.with(found("unit-unstated", Severity.INFORMATION)))).isZero();
	}

	@Test
	void aFindingAtTheLimitIsOne() {
		assertThat(status(Severity.WARNING, bracket.with(found("start-too-close", Severity.WARNING)))).isOne();
		assertThat(status(Severity.INFORMATION, bracket.with(found("unit-unstated", Severity.INFORMATION)))).isOne();
		assertThat(status(Severity.ERROR, bracket.with(found("start-too-close", Severity.WARNING)))).isZero();
	}

	@Test
	void notFollowedIsThreeWhateverTheLimit() {
		assertThat(status(Severity.ERROR, bracket.with(found("not-followed", Severity.WARNING)))).isEqualTo(3);
		assertThat(status(Severity.INFORMATION, bracket.with(found("not-followed", Severity.WARNING)))).isEqualTo(3);
	}

	@Test
	void notFollowedAsInformationDoesNotCount() {
		assertThat(status(Severity.WARNING, bracket.with(found("not-followed", Severity.INFORMATION)))).isZero();
	}

	@Test
	void aFindingSpeaksBeforeNotFollowed() {
		assertThat(status(Severity.WARNING, bracket.with(found("not-followed", Severity.WARNING), found("hole-missing", Severity.ERROR))))
				.isOne();
	}

	@Test
	void anAcceptedFindingDoesNotCount() {
		Finding error = found("hole-missing", Severity.ERROR);
		Finding accepted = error.acceptedFor("cast hole");
		assertThat(status(Severity.WARNING, bracket.with(accepted))).isZero();
	}

	@Test
	void aFileThatCannotBeReadIsTwoWhateverElseIsFound() {
		assertThat(status(Severity.WARNING, bracket.with(bracket.feedOffPitch()), new Audited.Refused(new Source(Path.of("x"), "x", 0),
				"gone"))).isEqualTo(2);
	}

	private Finding found(String rule, Severity severity) {
		return bracket.finding(rule, severity, "m", "X30.");
	}

	private static int status(Severity limit, Audited... programs) {
		Tally tally = new Tally(limit);
		for (Audited program : programs) {
			tally.add(program);
		}
		return tally.status();
	}
}
