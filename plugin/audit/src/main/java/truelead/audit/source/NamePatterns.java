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
		return exclude.stream().anyMatch(pattern -> matches(pattern, inside)
				|| pattern.endsWith("/**") && matches(pattern.substring(0, pattern.length() - 3), inside)
				|| pattern.endsWith("/") && matches(pattern.substring(0, pattern.length() - 1), inside));
	}

	static boolean matches(String pattern, String inside) {
		String name = pattern.indexOf('/') < 0 ? inside.substring(inside.lastIndexOf('/') + 1) : inside;
		return fits(fold(pattern), fold(name));
	}

	private static String fold(String text) {
		return text.toLowerCase(java.util.Locale.ROOT);
	}

	/**
	 * Goes through the pattern from its end and keeps which ends of the name match what is behind: a pattern of many stars takes no longer
	 * than its length by the name's.
	 */
	private static boolean fits(String pattern, String name) {
		int length = name.length();
		boolean[] behind = new boolean[length + 1];
		behind[length] = true;
		// what stood behind a slash, for a ** before it that stands for no folder
		boolean[] behindSlash = behind;
		for (int p = pattern.length() - 1; p >= 0; p--) {
			char c = pattern.charAt(p);
			boolean folders = c == '*' && p > 0 && pattern.charAt(p - 1) == '*';
			boolean[] here = new boolean[length + 1];
			for (int n = length; n >= 0; n--) {
				char at = n < length ? name.charAt(n) : 0;
				here[n] = c == '*' ? behind[n] || n < length && here[n + 1] && (folders || at != '/') : n < length && behind[n + 1]
						&& (c == at || c == '?' && at != '/');
			}
			if (folders) {
				p--;
				boolean slash = p + 2 < pattern.length() && pattern.charAt(p + 2) == '/';
				for (int n = 0; slash && n <= length; n++) {
					here[n] |= behindSlash[n];
				}
			}
			behindSlash = c == '/' ? behind : behindSlash;
			behind = here;
		}
		return behind[0];
	}
}
