package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import truelead.checker.rule.RulePage.Heading;
import truelead.checker.rulebook.Rules;

/** Holds every rule to its page, its numbers and its samples, and the pages and the order of precedence to the registry. */
class RegistryTest {

	@TestFactory
	Stream<DynamicTest> everyRuleHasAWholePage() {
		return Rules.ALL.stream().map(rule -> DynamicTest.dynamicTest(rule.name(), () -> {
			RulePage page = RulePage.of(rule.name());
			for (Heading heading : Heading.values()) {
				assertThat(page.section(heading)).as(heading.text()).isNotBlank();
			}
			assertThat(page.summary()).endsWith(".");
			assertThat(page.section(Heading.SOURCE)).as("says where the facts come from").isNotBlank();
			assertThat(page.section(Heading.FINDS) + page.section(Heading.AT_THE_SPINDLE)).as("worked numbers").containsPattern("[0-9]");
			assertThat(PageSample.of(page, Heading.FOUND)).as("a sample that is found").isNotEmpty();
			assertThat(PageSample.of(page, Heading.RIGHT)).as("a sample that is right").isNotEmpty();
		}));
	}

	@TestFactory
	Stream<DynamicTest> everySeverityOnAPageIsShownByASample() {
		return Rules.ALL.stream().map(rule -> DynamicTest.dynamicTest(rule.name(), () -> {
			RulePage page = RulePage.of(rule.name());
			List<Severity> shown = PageSample.of(page, Heading.FOUND).stream().flatMap(s -> s.expected().stream())
					.filter(e -> e.rule().equals(rule.name())).map(PageSample.Expected::severity).distinct().sorted().toList();
			assertThat(shown).isEqualTo(page.severities());
		}));
	}

	@Test
	void namesAreUnique() {
		assertThat(Rules.ALL).extracting(Rule::name).doesNotHaveDuplicates();
	}

	@Test
	void noPageIsWithoutARule() throws IOException, URISyntaxException {
		URL folder = RulePage.class.getResource("pages");
		Assumptions.assumeTrue(folder != null, "no pages yet");
		Path pages = Path.of(folder.toURI());
		try (Stream<Path> files = Files.list(pages)) {
			Set<String> names = files.map(f -> f.getFileName().toString().replace(".md", ""))
					.collect(Collectors.toCollection(TreeSet::new));
			assertThat(names).isSubsetOf(Rules.ALL.stream().map(Rule::name).toList());
		}
	}

	@Test
	void aPageThatChangesTheOrderOfItsHeadingsIsRefused() {
		assertThatThrownBy(() -> RulePage.read("x", "# x\nGroup: g\nSeverity: error\nSummary: s.\n## Found\n"))
				.hasMessage("page x: heading 'Found' where 'What it finds' belongs");
	}

	@Test
	void aRuleWithoutAPageIsNamed() throws IOException {
		try (InputStream none = RulePage.class.getResourceAsStream("pages/no-such-rule.md")) {
			assertThat(none).isNull();
		}
		assertThatThrownBy(() -> RulePage.of("no-such-rule")).hasMessageContaining("no page pages/no-such-rule.md");
	}
}
