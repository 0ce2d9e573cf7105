package truelead.audit.source;

import java.util.List;

/**
 * Patterns for names in a folder search: {@code *} any characters of one name, {@code ?} one character, {@code **} any folders. A pattern
 * without a slash is matched against the name alone, at any depth; upper and lower case are the same.
 */
public record NamePatterns(List<String> include, List<String> exclude) {

	/** No patterns: the extensions decide. */
	public static final NamePatterns NONE = new NamePatterns(List.of(), List.of());

	public NamePatterns {
		include = List.copyOf(include);
		exclude = List.copyOf(exclude);
	}

	boolean hasIncludes() {
		return !include.isEmpty();
	}

	/** {@code inside} is the way from the searched folder, parted by slashes. */
	boolean includes(String inside) {
		return include.stream().anyMatch(pattern -> matches(pattern, inside));
	}

	boolean excludes(String inside) {
		return exclude.stream().anyMatch(pattern -> matches(pattern, inside));
	}

	/** Whether a folder and all below it is excluded: its name, or everything in it. */
	boolean excludesFolder(String inside) {
		return exclude.stream().anyMatch(pattern -> matches(pattern, inside) || pattern.endsWith("/**") && matches(pattern.substring(0, pattern.length() - 3), inside)
				|| pattern.endsWith("/") && matches(pattern.substring(0, pattern.length() - 1), inside));
	}

	static boolean matches(String pattern, String inside) {
		String name = pattern.indexOf('/') < 0 ? inside.substring(inside.lastIndexOf('/') + 1) : inside;
		return matches(fold(pattern), 0, fold(name), 0);
	}

	private static String fold(String text) {
		return text.toLowerCase(java.util.Locale.ROOT);
	}

	private static boolean matches(String pattern, int p, String name, int n) {
		if (p == pattern.length()) {
			return n == name.length();
		}
		char c = pattern.charAt(p);
		if (c == '*') {
			boolean folders = pattern.startsWith("**", p);
			int after = p + (folders ? 2 : 1);
			if (folders && pattern.startsWith("/", after) && matches(pattern, after + 1, name, n)) {
				return true;
			}
			for (int i = n; i <= name.length(); i++) {
				if (matches(pattern, after, name, i)) {
					return true;
				}
				if (i < name.length() && name.charAt(i) == '/' && !folders) {
					return false;
				}
			}
			return false;
		}
		return n < name.length() && (c == name.charAt(n) || c == '?' && name.charAt(n) != '/') && matches(pattern, p + 1, name, n + 1);
	}
}
