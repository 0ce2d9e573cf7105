package truelead.checker.profile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The text of a machine profile as a sheet of all keys and codes: what it says itself, what it has from its base, and what in it cannot be
 * used. A change touches the line of its key alone, so that remarks and order stay as somebody wrote them. Immutable.
 */
public final class ProfileSheet {

	private static final String NO_BASE = "milling-metric";

	private final List<String> lines;
	private final String lineEnd;

	private ProfileSheet(List<String> lines, String lineEnd) {
		this.lines = List.copyOf(lines);
		this.lineEnd = lineEnd;
	}

	/** The sheet of a text, whatever it holds. */
	public static ProfileSheet of(String text) {
		return new ProfileSheet(text.lines().toList(), text.contains("\r\n") ? "\r\n" : "\n");
	}

	/** The text, every line with its end. */
	public String text() {
		StringBuilder text = new StringBuilder();
		lines.forEach(line -> text.append(line).append(lineEnd));
		return text.toString();
	}

	/** The shipped profile that gives all that is not said here; the generic milling one where none of that name is shipped. */
	public String base() {
		return lineOf(ProfileKey.BASE.key()).map(at -> valueIn(lines.get(at)).toLowerCase(Locale.ROOT))
				.filter(MachineProfile.shipped()::contains).orElse(NO_BASE);
	}

	/** What cannot be used, line by line. */
	public List<ProfileProblem> problems() {
		return ProfileReader.read(text(), "").problems();
	}

	/** Every key in the order of {@link ProfileKey}, then every code that the profile or its base knows, G before M, by number. */
	public List<ProfileEntry> entries() {
		Map<String, String> inherited = ProfileReader.shipped(base());
		Map<String, String> own = new LinkedHashMap<>();
		lines.forEach(line -> ProfileReader.keyOf(line).ifPresent(key -> own.put(key, valueIn(line))));
		List<ProfileEntry> entries = new ArrayList<>();
		for (ProfileKey key : ProfileKey.values()) {
			boolean ofBase = key != ProfileKey.NAME && key != ProfileKey.BASE;
			entries.add(entry(key.key(), own, ofBase ? inherited.getOrDefault(key.key(), "") : "", key.purpose(), key.takes(),
					key.choices()));
		}
		Map<String, String> codes = new TreeMap<>(ProfileSheet::byNumber);
		inherited.keySet().stream().filter(ProfileReader::code).forEach(code -> codes.put(code, inherited.get(code)));
		own.keySet().stream().filter(ProfileReader::code).forEach(code -> codes.putIfAbsent(code, ""));
		codes.forEach((code, value) -> entries.add(entry(code, own, value, "what " + code + " does",
				"one meaning of a code or several, such as tap, rigid-tap-on, spindle-clockwise coolant-on; none", List.of())));
		return entries;
	}

	private static ProfileEntry entry(String key, Map<String, String> own, String base, String purpose, String takes,
			List<String> choices) {
		return new ProfileEntry(key, own.getOrDefault(key, base), own.containsKey(key), base, purpose, takes, choices);
	}

	private static int byNumber(String one, String other) {
		int letter = Character.compare(one.charAt(0), other.charAt(0));
		return letter != 0 ? letter : Double.compare(ProfileKey.parse(one.substring(1)), ProfileKey.parse(other.substring(1)));
	}

	/** The sheet with a key or code said so: in its line, or in a new one at the end. */
	public ProfileSheet with(String key, String value) {
		List<String> changed = new ArrayList<>(lines);
		String line = key + " = " + value.strip().replace("\r", "").replace("\n", " ");
		lineOf(key).ifPresentOrElse(at -> changed.set(at, line), () -> changed.add(line));
		return new ProfileSheet(changed, lineEnd);
	}

	/** The sheet without any line for a key or code, which then has what its base says. */
	public ProfileSheet without(String key) {
		return new ProfileSheet(lines.stream().filter(line -> ProfileReader.keyOf(line).filter(key::equals).isEmpty()).toList(), lineEnd);
	}

	/** The last line for a key: it is the one that counts. */
	private Optional<Integer> lineOf(String key) {
		for (int at = lines.size() - 1; at >= 0; at--) {
			if (ProfileReader.keyOf(lines.get(at)).filter(key::equals).isPresent()) {
				return Optional.of(at);
			}
		}
		return Optional.empty();
	}

	private static String valueIn(String line) {
		return line.substring(line.indexOf('=') + 1).strip();
	}
}
