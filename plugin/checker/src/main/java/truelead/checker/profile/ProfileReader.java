package truelead.checker.profile;

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
import java.util.StringTokenizer;

/** Reads a profile: lines of {@code key = value}, remarks behind {@code #}; a key is one of {@link ProfileKey} or a code such as G84. */
final class ProfileReader {

	private final String file;
	private final Map<String, String> values = new LinkedHashMap<>();
	private final List<ProfileProblem> problems = new ArrayList<>();

	private ProfileReader(String file) {
		this.file = file;
	}

	/** A profile from a text; what it does not say comes from its base, the generic milling profile where none is named. */
	static ProfileReading read(String text, String file) {
		ProfileReader reader = new ProfileReader(file);
		reader.lines(text);
		Map<String, String> all = new LinkedHashMap<>(shipped(reader.values.getOrDefault("base", "milling-metric")));
		reader.values.putIfAbsent("name", file);
		all.putAll(reader.values);
		return new ProfileReading(new MachineProfile(all), reader.problems);
	}

	/** All that a shipped profile says, its base included. */
	static Map<String, String> shipped(String name) {
		ProfileReader reader = new ProfileReader(name + ".properties");
		try (InputStream in = MachineProfile.class.getResourceAsStream(name + ".properties")) {
			if (in == null) {
				throw new IllegalArgumentException("no machine profile is shipped under the name " + name);
			}
			reader.lines(new String(in.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
		if (!reader.problems.isEmpty()) {
			throw new IllegalStateException("shipped profile: " + reader.problems.get(0));
		}
		String base = reader.values.get("base");
		Map<String, String> all = new LinkedHashMap<>(base == null ? Map.of() : shipped(base));
		all.putAll(reader.values);
		return all;
	}

	private void lines(String text) {
		int number = 0;
		int end;
		for (int start = 0; start < text.length(); start = end + 1) {
			end = start;
			while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
				end++;
			}
			String line = text.substring(start, end).strip();
			if (number == 0 && line.startsWith("\uFEFF")) {
				line = line.substring(1).strip();
			}
			if (!line.isEmpty() && line.charAt(0) != '#' && line.charAt(0) != '!') {
				line(line, number);
			}
			end += text.startsWith("\r\n", end) ? 1 : 0;
			number++;
		}
	}

	private void line(String line, int number) {
		int split = line.indexOf('=');
		if (split <= 0) {
			problem(number, "a line is written key = value, with # before a remark");
			return;
		}
		String key = line.substring(0, split).strip();
		String value = line.substring(split + 1).strip();
		if (code(key)) {
			codeLine(key.toUpperCase(Locale.ROOT), value, number);
			return;
		}
		ProfileKey known = ProfileKey.named(key.toLowerCase(Locale.ROOT)).orElse(null);
		if (known == null) {
			problem(number, "'" + key + "' is neither a key of a machine profile nor a code such as G84 or M29");
			return;
		}
		String plain = known == ProfileKey.NAME ? value : value.toLowerCase(Locale.ROOT);
		known.complaint(plain).ifPresentOrElse(complaint -> problem(number, complaint), () -> values.put(known.key(), plain));
	}

	private void codeLine(String key, String value, int number) {
		StringBuilder good = new StringBuilder();
		if (value.isEmpty()) {
			problem(number, key + " has no meaning behind it; it could be 'none'");
		}
		StringTokenizer names = new StringTokenizer(value.toLowerCase(Locale.ROOT));
		while (names.hasMoreTokens()) {
			String name = names.nextToken();
			if (Meaning.named(name).isEmpty()) {
				problem(number, "'" + name + "' is no meaning of a code that is known here; " + key + " could be 'none'");
				return;
			}
			good.append(good.length() == 0 ? "" : " ").append(name);
		}
		if (good.length() > 0) {
			values.put(key, good.toString());
		}
	}

	/** The key or code that a line says something of, as the profile keeps it; empty for a remark, and for what is neither. */
	static Optional<String> keyOf(String line) {
		String plain = line.startsWith("\uFEFF") ? line.substring(1).strip() : line.strip();
		int split = plain.indexOf('=');
		if (split <= 0 || plain.charAt(0) == '#' || plain.charAt(0) == '!') {
			return Optional.empty();
		}
		String key = plain.substring(0, split).strip();
		return code(key) ? Optional.of(key.toUpperCase(Locale.ROOT)) : ProfileKey.named(key.toLowerCase(Locale.ROOT)).map(ProfileKey::key);
	}

	/** Whether a key is a code such as G84 or M29. */
	static boolean code(String key) {
		char letter = Character.toUpperCase(key.charAt(0));
		double number = key.length() > 1 && Character.isDigit(key.charAt(1)) ? ProfileKey.parse(key.substring(1)) : Double.NaN;
		return (letter == 'G' || letter == 'M') && number >= 0 && number < CodeTable.LIMIT;
	}

	private void problem(int line, String message) {
		problems.add(new ProfileProblem(file, line, message));
	}
}
