package truelead.checker.callout;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import truelead.checker.thread.DataFile;

/** Threads that no table here holds and that are known by name: VG8, 1/4-26 BSB. */
public final class NamedFamily {
	private static final Map<String, String> WHAT = new HashMap<>();

	static {
		DataFile.rows(NamedFamily.class, "other-families.csv").forEach(r -> WHAT.put(r.get("word"), r.get("what")));
	}

	private NamedFamily() {
	}

	/** Why a callout is not taken, to stand behind it: the family that it names, or the nearest spellings, so many. */
	public static String refusal(String callout, int suggestions) {
		return of(callout).orElseGet(() -> "is no thread that is known here; the nearest spellings: "
				+ String.join(", ", NearestSpelling.of(callout, suggestions)));
	}

	/** What the callout names, and what can be done; empty where it names no such family. */
	static Optional<String> of(String callout) {
		return CommentParts.of(callout.length() > 200 ? callout.substring(0, 200) : callout).stream().filter(p -> p instanceof Part.Word w
				&& w.meaning() == Meaning.OTHER_THREAD).map(p -> WHAT.get(((Part.Word) p).text())).filter(what -> what != null).findFirst()
				.map(what -> "names " + what
						+ " (from memory), which no table here holds; its feed is checked all the same where the thread is written by "
						+ "diameter and pitch, " + "such as M5.2x0.8 or .305-32");
	}
}
