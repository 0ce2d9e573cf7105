package truelead.checker.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.work.Work;

class BrokenRuleTest {

	@Test
	void aRuleThatBreaksIsAFindingOfItsOwn() {
		Rule broken = new Rule() {

			@Override
			public String name() {
				return "broken";
			}

			@Override
			public void check(Work work, Consumer<Finding> found) {
				throw new ArithmeticException("division");
			}
		};
		assertThat(Rules.check(List.of(broken), Samples.work("G0 X1", "M30"), RuleSettings.DEFAULT)).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("broken");
			assertThat(f.severity()).isEqualTo(Severity.WARNING);
			assertThat(f.message()).startsWith("this rule failed on this program");
			assertThat(Rules.failed(f)).isTrue();
			assertThat(f.evidence()).singleElement().satisfies(where -> assertThat(where.value()).contains("BrokenRuleTest"));
		});
	}
}
