package truelead.checker.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A rule's page: what a person reads of it in help, hover and SARIF, and the program samples its tests run. Read from the class path,
 * {@code pages/<name>.md} beside this class. Group, severities and summary are stated there and nowhere else.
 *
 * <p>The form: a title that is the rule's name; the lines {@code Group:}, {@code Severity:} (one or several, worst first, parted by
 * commas) and {@code Summary:} (one sentence); then the seven headings of {@link Heading}, all of them, in their order.
 *
 * @param name       name of the rule
 * @param group      the group it is listed in
 * @param severities the severities it reports at by default, worst first
 * @param summary    one sentence: what is wrong
 * @param sections   Markdown under each heading, without the heading
 * @param markdown   the whole page as it stands in the file
 */
public record RulePage(String name, String group, List<Severity> severities, String summary, Map<Heading, String> sections,
		String markdown) {

	/** The headings of every page, in the one order that all pages keep. */
	public enum Heading {
		FINDS("What it finds"), AT_THE_SPINDLE("What happens at the spindle"), FOUND("Found"), RIGHT("Right"),
		FIX("The fix, and whether it is safe to take unread"), ACCEPT("When to accept it"), SOURCE("Source");

		private final String text;

		Heading(String text) {
			this.text = text;
		}

		/** As it stands on the page. */
		public String text() {
			return text;
		}
	}

	public RulePage {
		severities = List.copyOf(severities);
		sections = Map.copyOf(sections);
	}

	/** The severities in words: "error, warning or information". */
	public String reportedAs() {
		String words = severities.stream().map(severity -> severity.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
		int last = words.lastIndexOf(", ");
		return last < 0 ? words : words.substring(0, last) + " or " + words.substring(last + 2);
	}

	/** The page of a rule; an {@link IllegalArgumentException} that says what is wrong where there is none or its form is not kept. */
	public static RulePage of(String name) {
		try (InputStream in = RulePage.class.getResourceAsStream("pages/" + name + ".md")) {
			if (in == null) {
				throw new IllegalArgumentException("rule " + name + " has no page pages/" + name + ".md");
			}
			return read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}

	/** The Markdown under a heading. */
	public String section(Heading heading) {
		return sections.get(heading);
	}

	/** The severity a rule's entry in a report is given: the worst it can report at. */
	public Severity worst() {
		return severities.get(0);
	}

	static RulePage read(String name, String markdown) {
		List<String> lines = markdown.lines().toList();
		if (lines.isEmpty() || !lines.get(0).equals("# " + name)) {
			throw new IllegalArgumentException("page " + name + " must begin with '# " + name + "'");
		}
		Map<Heading, String> sections = new EnumMap<>(Heading.class);
		List<String> front = new ArrayList<>();
		StringBuilder text = new StringBuilder();
		Heading current = null;
		boolean code = false;
		for (String line : lines.subList(1, lines.size())) {
			code ^= line.startsWith("```");
			if (!code && line.startsWith("## ")) {
				close(sections, current, text);
				current = next(name, current, line.substring(3));
			} else if (current == null) {
				front.add(line);
			} else {
				text.append(line).append('\n');
			}
		}
		close(sections, current, text);
		if (current != Heading.SOURCE) {
			throw new IllegalArgumentException("page " + name + " ends before '## " + Heading.SOURCE.text() + "'");
		}
		List<Severity> severities = new ArrayList<>();
		for (String word : front(name, front, "Severity: ").split(", ")) {
			severities.add(Severity.valueOf(word.toUpperCase(Locale.ROOT)));
		}
		return new RulePage(name, front(name, front, "Group: "), severities, front(name, front, "Summary: "), sections, markdown);
	}

	private static Heading next(String name, Heading current, String text) {
		Heading expected = Heading.values()[current == null ? 0 : Math.min(current.ordinal() + 1, Heading.values().length - 1)];
		if (!expected.text().equals(text) || current == Heading.SOURCE) {
			throw new IllegalArgumentException("page " + name + ": heading '" + text + "' where '" + expected.text() + "' belongs");
		}
		return expected;
	}

	private static void close(Map<Heading, String> sections, Heading current, StringBuilder text) {
		if (current != null) {
			sections.put(current, text.toString().strip());
		}
		text.setLength(0);
	}

	private static String front(String name, List<String> front, String key) {
		return front.stream().filter(line -> line.startsWith(key)).map(line -> line.substring(key.length()).strip())
				.filter(v -> !v.isEmpty()).findFirst().orElseThrow(() -> new IllegalArgumentException("page " + name + " lacks its line '"
						+ key.strip() + "'"));
	}
}
