package truelead.checker.callout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/** The right spellings that lie nearest to something that is none, for a message. */
public final class NearestSpelling {
	private static final int LONGEST = 24;
	private static final int MOST_LETTERS = 100;
	private static final List<String> EXAMPLES = List.of("M8x1.25-6H", "1/4-20 UNC-2B", "1/4-18 NPT", "G 1/2");

	private record Candidate(String spelling, int distance) {
	}

	private NearestSpelling() {
	}

	/** At most so many designations, the nearest by letters to change first; a few of every kind for a text that is like none. */
	static List<String> of(String text, int most) {
		String wanted = bare(text);
		List<Candidate> candidates = new ArrayList<>();
		for (ThreadSpec thread : ThreadTable.standard().all()) {
			String full = thread.designation();
			// UNC, UNF are often left out, so the distance without them counts too
			int distance = distance(wanted, bare(full));
			if (!thread.series().isEmpty()) {
				distance = Math.min(distance, distance(wanted, bare(full.substring(0, full.indexOf(' ')))));
			}
			if (bare(full).startsWith(wanted)) {
				distance = 0;
			}
			candidates.add(new Candidate(full, distance));
		}
		candidates.sort(Comparator.comparingInt(Candidate::distance));
		if (wanted.isEmpty() || candidates.get(0).distance() > wanted.length() / 2) {
			return EXAMPLES.stream().limit(most).toList();
		}
		return candidates.stream().map(Candidate::spelling).limit(most).toList();
	}

	/** Of some spellings, of which there is one at least, the first of those nearest by letters to change. */
	public static String among(String text, List<String> spellings) {
		String wanted = text.substring(0, Math.min(text.length(), MOST_LETTERS));
		return spellings.stream().min(Comparator.comparingInt(one -> distance(wanted, one))).orElseThrow();
	}

	private static String bare(String text) {
		StringBuilder bare = new StringBuilder();
		text.toUpperCase(Locale.ROOT).chars().filter(c -> !Character.isWhitespace(c) && c != '#').limit(LONGEST)
				.forEach(c -> bare.append((char) (c == ',' ? '.' : c)));
		return bare.toString();
	}

	/** The number of letters to put in, take out or change (Levenshtein). */
	private static int distance(String a, String b) {
		int[] row = new int[b.length() + 1];
		for (int j = 0; j <= b.length(); j++) {
			row[j] = j;
		}
		for (int i = 1; i <= a.length(); i++) {
			int diagonal = row[0];
			row[0] = i;
			for (int j = 1; j <= b.length(); j++) {
				int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
				diagonal = row[j];
				row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
			}
		}
		return row[b.length()];
	}
}
