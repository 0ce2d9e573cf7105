package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import truelead.checker.rulebook.Rules;

/** The README lists every rule as its page has it. {@code -Dreadme.write=true} writes the list anew. */
class ReadmeTest {

	private static final Path README = Path.of("..", "..", "README.md");
	private static final String BEGIN = "<!-- rules -->\n";
	private static final String END = "<!-- end of rules -->\n";

	@Test
	void theReadmeListsEveryRuleAsItsPageHasIt() throws IOException {
		String readme = Files.readString(README);
		int from = readme.indexOf(BEGIN) + BEGIN.length();
		int to = readme.indexOf(END);
		if (Boolean.getBoolean("readme.write")) {
			Files.writeString(README, readme.substring(0, from) + table() + readme.substring(to));
		}
		assertThat(readme.indexOf(END)).isGreaterThan(from);
		String anew = "write it anew with -Dtest=ReadmeTest -Dreadme.write=true";
		List<String> listed = Files.readString(README).substring(from).split(END)[0].lines().toList();
		List<String> pages = table().lines().toList();
		assertThat(without(listed, pages)).as("what no page says: " + anew).isEmpty();
		assertThat(without(pages, listed)).as("what is not in the list: " + anew).isEmpty();
		assertThat(listed.equals(pages)).as("their order: " + anew).isTrue();
	}

	private static List<String> without(List<String> lines, List<String> others) {
		return lines.stream().filter(line -> !others.contains(line)).toList();
	}

	private static String table() {
		StringBuilder table = new StringBuilder();
		new TreeMap<>(Rules.pages().stream().collect(Collectors.groupingBy(RulePage::group))).forEach((group, pages) -> {
			table.append("\n### ").append(group).append("\n\n| rule | severity | what it finds |\n|---|---|---|\n");
			pages.forEach(page -> table.append("| ").append(page.name()).append(" | ").append(severities(page.severities())).append(" | ")
					.append(page.summary()).append(" |\n"));
		});
		return table.append('\n').toString();
	}

	private static String severities(List<Severity> severities) {
		return severities.stream().map(severity -> severity.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
	}
}
