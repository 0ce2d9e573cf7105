package truelead.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import truelead.checker.rule.RulePage;
import truelead.checker.rulebook.Rules;

/** The guide: chapters made from the README, then the page of every rule as the checker has it. Nothing is written twice. */
public final class HelpBook {

	/** Name of the first page. */
	public static final String OVERVIEW = "overview";
	/** What the chapters are listed under. */
	public static final String CHAPTERS = "Using Truelead";

	/** Headings of the README whose text stands on the first page. */
	private static final List<String> FIRST = List.of("In Eclipse", "Caution");
	/** Headings that are pages of their own. */
	private static final List<String> OTHERS = List.of("What it says", "Telling it what is wanted", "The machine", "Settings",
			"Threads at the bench", "Lessons", "Reports", "Exit status");

	private static final List<HelpPage> ALL = read();

	private HelpBook() {
	}

	/** Every page, in the order of the book. */
	public static List<HelpPage> all() {
		return ALL;
	}

	/** The page of that name. */
	public static Optional<HelpPage> named(String name) {
		return ALL.stream().filter(page -> page.name().equals(name)).findFirst();
	}

	/** The first page. */
	public static HelpPage overview() {
		return ALL.get(0);
	}

	/** The pages by what they are listed under, in the order of the book. */
	public static Map<String, List<HelpPage>> groups() {
		return ALL.stream().collect(Collectors.groupingBy(HelpPage::group, LinkedHashMap::new, Collectors.toList()));
	}

	private static List<HelpPage> read() {
		Map<String, String> sections = sections(readme());
		List<HelpPage> pages = new ArrayList<>();
		StringBuilder first = new StringBuilder("# Truelead\n").append(sections.get(""));
		FIRST.forEach(heading -> first.append("\n## ").append(heading).append('\n').append(section(sections, heading)));
		pages.add(new HelpPage(OVERVIEW, "Overview", CHAPTERS, "", first.toString()));
		OTHERS.forEach(heading -> pages.add(new HelpPage(heading.toLowerCase(Locale.ROOT).replace(' ', '-'), heading, CHAPTERS, "",
				"# " + heading + "\n" + section(sections, heading))));
		Rules.pages().forEach(rule -> pages.add(new HelpPage(rule.name(), rule.name(), rule.group(), rule.summary(), page(rule))));
		return List.copyOf(pages);
	}

	/** A rule's page without the lines above its first heading that only machines read. */
	private static String page(RulePage rule) {
		StringBuilder page = new StringBuilder("# " + rule.name() + "\n\n" + rule.summary() + " Reported as " + rule.reportedAs() + ".\n");
		for (RulePage.Heading heading : RulePage.Heading.values()) {
			page.append("\n## ").append(heading.text()).append("\n\n").append(rule.section(heading)).append('\n');
		}
		return page.toString();
	}

	private static String section(Map<String, String> sections, String heading) {
		return Optional.ofNullable(sections.get(heading))
				.orElseThrow(() -> new IllegalStateException("the README has no heading " + heading));
	}

	/** Text by heading of the second level; what stands before the first one, without the title, under no name. */
	private static Map<String, String> sections(String readme) {
		Map<String, StringBuilder> sections = new LinkedHashMap<>();
		StringBuilder current = new StringBuilder();
		sections.put("", current);
		for (String line : readme.lines().toList()) {
			if (line.startsWith("## ")) {
				current = new StringBuilder();
				sections.put(line.substring(3).strip(), current);
			} else if (!line.startsWith("# ")) {
				current.append(line).append('\n');
			}
		}
		Map<String, String> texts = new LinkedHashMap<>();
		sections.forEach((heading, text) -> texts.put(heading, text.toString()));
		return texts;
	}

	private static String readme() {
		try (InputStream in = HelpBook.class.getResourceAsStream("/META-INF/README.md")) {
			if (in == null) {
				throw new IllegalStateException("the README is not in the bundle");
			}
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}
}
