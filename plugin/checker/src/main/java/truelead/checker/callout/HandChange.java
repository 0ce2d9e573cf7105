package truelead.checker.callout;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import truelead.checker.thread.DataFile;
import truelead.checker.thread.Remembered;

/** Whether a comment at a stop names the tool that is put into the spindle by hand there: LOAD M6 TAP, 5.0 DRILL. */
public final class HandChange {

	/** Words that say of a tool when or how often, or that something is done to it. */
	private static final Set<Meaning> OTHERWISE = Set.of(Meaning.APART, Meaning.RATE, Meaning.VERB, Meaning.SUPPLY, Meaning.NOT,
			Meaning.ELSEWHERE, Meaning.OTHER_SIDE, Meaning.TAPPED);

	private static final class Loaded {
		static final Set<String> WORDS = DataFile.rows(HandChange.class, "hand-change-words.csv").stream()
				.flatMap(row -> row.words("words").stream()).collect(Collectors.toUnmodifiableSet());
	}

	/** Read once, however often the stop is passed. */
	private static final Remembered<String, Boolean> PUT_IN = new Remembered<>(1000, comment -> read(comment, false));
	private static final Remembered<String, Boolean> NAMED = new Remembered<>(1000, comment -> read(comment, true));

	private HandChange() {
	}

	/**
	 * Whether it does: it names one tool with its size, and says that it is put in, or nothing else.
	 *
	 * @param alone whether the tool alone is enough
	 */
	public static boolean says(String comment, boolean alone) {
		return (alone ? NAMED : PUT_IN).of(comment);
	}

	private static boolean read(String comment, boolean alone) {
		CommentReading reading = CalloutReader.readComment(comment);
		boolean sized = reading.tools().size() == 1 && (reading.tools().get(0).diameter().isPresent() || !reading.callouts().isEmpty());
		if (!sized) {
			return false;
		}
		List<Part> parts = CommentParts.of(comment);
		if (parts.stream().anyMatch(part -> part instanceof Part.Word word && OTHERWISE.contains(word.meaning()))) {
			return false;
		}
		boolean put = parts.stream().anyMatch(HandChange::put);
		return put || alone && parts.stream().noneMatch(part -> part instanceof Part.Other other && other.text().length() > 1
				&& Character.isLetter(other.text().charAt(0)));
	}

	private static boolean put(Part part) {
		return part instanceof Part.Other other && Loaded.WORDS.contains(TradeWords.fold(other.text())) || part instanceof Part.Word word
				&& Loaded.WORDS.contains(word.text());
	}
}
