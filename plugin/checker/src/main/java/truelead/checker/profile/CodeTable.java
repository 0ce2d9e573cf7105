package truelead.checker.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringTokenizer;

/** The meanings of one letter's codes, by the code times ten: 840 for G84, 842 for G84.2. */
final class CodeTable {

	/** Codes from 0 to below this. */
	static final int LIMIT = 1000;

	private static final List<Meaning> UNKNOWN = List.of();

	private final List<?>[] meanings = new List<?>[LIMIT * 10];

	CodeTable(char letter, Map<String, String> values) {
		values.forEach((key, value) -> {
			if (key.charAt(0) == letter && key.length() > 1 && Character.isDigit(key.charAt(1))) {
				List<Meaning> all = new ArrayList<>();
				for (StringTokenizer names = new StringTokenizer(value, " "); names.hasMoreTokens();) {
					all.add(Meaning.named(names.nextToken()).orElse(Meaning.NONE));
				}
				meanings[tenfold(ProfileKey.parse(key.substring(1)))] = List.copyOf(all);
			}
		});
	}

	/** The code times ten; -1 for what can be no code. */
	static int tenfold(double code) {
		return code >= 0 && code < LIMIT ? (int) Math.round(code * 10) : -1;
	}

	/** What the code does; empty for a code that is not known. */
	@SuppressWarnings("unchecked")
	List<Meaning> of(int tenfold) {
		List<?> known = tenfold >= 0 && tenfold < meanings.length ? meanings[tenfold] : null;
		return known == null ? UNKNOWN : (List<Meaning>) known;
	}
}
