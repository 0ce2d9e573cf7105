package truelead.checker.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/**
 * A sample program on a rule's page: a fenced block marked {@code nc}. A line of carets under a block is no part of the program; it marks
 * the columns of a finding, then names rule and severity, and after a colon, where wanted, the exact message:
 *
 * <pre>
 * ```nc
 * G84 X0 Y0 Z-12. R3. F500
 *                     ^^^^ feed-off-pitch error: F500 at S520 advances ...
 * ```
 * </pre>
 *
 * Tabs are not used. Behind {@code nc} may stand {@code key=value} pairs: {@code profile=turning} takes another shipped machine profile,
 * any other key is set in the profile, with {@code _} for a space in its value.
 *
 * @param page     name of the page
 * @param line     line of the page the sample starts at, from 1, to find it again
 * @param program  the program without its caret lines
 * @param expected what the carets say
 * @param options  the pairs behind {@code nc}
 */
record PageSample(String page, int line, String program, List<Expected> expected, Map<String, String> options) {

	/** A finding as the carets announce it; lines from 0, an empty message for any. */
	record Expected(String rule, Severity severity, int line, int start, int end, String message) {
	}

	/** All samples under a heading of a page. */
	static List<PageSample> of(RulePage page, RulePage.Heading heading) {
		List<PageSample> samples = new ArrayList<>();
		int first = page.markdown().substring(0, page.markdown().indexOf("\n## " + heading.text())).split("\n", -1).length + 1;
		List<String> lines = page.section(heading).lines().toList();
		for (int i = 0; i < lines.size(); i++) {
			if (lines.get(i).startsWith("```nc")) {
				int end = i + 1;
				while (!lines.get(end).startsWith("```")) {
					end++;
				}
				samples.add(read(page.name(), first + i + 2, lines.get(i).substring(5), lines.subList(i + 1, end)));
				i = end;
			}
		}
		return samples;
	}

	private static PageSample read(String page, int at, String pairs, List<String> lines) {
		List<String> program = new ArrayList<>();
		List<Expected> expected = new ArrayList<>();
		for (String line : lines) {
			if (line.strip().startsWith("^")) {
				expected.add(carets(line, program.size() - 1));
			} else {
				program.add(line);
			}
		}
		Map<String, String> options = new TreeMap<>();
		for (String pair : pairs.strip().split(" ")) {
			if (!pair.isEmpty()) {
				options.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1).replace('_', ' '));
			}
		}
		return new PageSample(page, at, String.join("\n", program) + "\n", expected, options);
	}

	private static Expected carets(String line, int block) {
		int start = line.indexOf('^');
		int end = line.lastIndexOf('^') + 1;
		String text = line.substring(end).strip();
		int colon = text.indexOf(": ");
		String[] words = (colon < 0 ? text : text.substring(0, colon)).split(" ");
		return new Expected(words[0], Severity.valueOf(words[1].toUpperCase(Locale.ROOT)), block, start, end, colon < 0 ? ""
				: text.substring(colon + 2));
	}

	/** The settings for the machine profile, as a properties file would hold them. */
	Properties profile() {
		Properties properties = new Properties();
		options.forEach((key, value) -> {
			if (!key.equals("profile")) {
				properties.setProperty(key, value);
			}
		});
		return properties;
	}

	@Override
	public String toString() {
		return page + ".md:" + line;
	}
}
