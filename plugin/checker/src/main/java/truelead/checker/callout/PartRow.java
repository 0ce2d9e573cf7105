package truelead.checker.callout;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The parts of a comment in a row: what stands at a place of it, and beside one. A place outside the row holds nothing. */
record PartRow(List<Part> parts) {

	/** Whether a word of a meaning stands there. */
	boolean is(int i, Meaning meaning) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Word w && w.meaning() == meaning;
	}

	/** What the word there means; empty for what is no word of the trade. */
	Optional<Meaning> meaning(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Word w ? Optional.of(w.meaning()) : Optional.empty();
	}

	/** Whether a word of a meaning stands right before or behind a place. */
	boolean beside(int i, Meaning meaning) {
		return is(i - 1, meaning) || is(i + 1, meaning);
	}

	/** The same of so many places before and behind. */
	boolean near(int i, int reach, Meaning meaning) {
		for (int j = Math.max(0, i - reach); j <= Math.min(parts.size() - 1, i + reach); j++) {
			if (j != i && is(j, meaning)) {
				return true;
			}
		}
		return false;
	}

	/** Whether a word of a meaning stands anywhere. */
	boolean has(Meaning meaning) {
		return parts.stream().anyMatch(p -> p instanceof Part.Word w && w.meaning() == meaning);
	}

	/** The meanings of all words; THR is short for a thread, and not for through, before MILL or a depth. */
	Set<Meaning> said() {
		Set<Meaning> said = EnumSet.noneOf(Meaning.class);
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Word w
					&& !(w.text().equals("THR") && (is(i + 1, Meaning.MILL) || CalledDepth.follows(parts, i)))) {
				said.add(w.meaning());
			}
		}
		return said;
	}

	/** The place of the next word, behind a sign that joins them. */
	int nextWord(int i) {
		return i + 1 < parts.size() && joins(i + 1) ? i + 2 : i + 1;
	}

	/** The place of the word before, in the same way. */
	int previousWord(int i) {
		return i > 0 && joins(i - 1) ? i - 2 : i - 1;
	}

	/** Signs that join words; a comma or & parts them. */
	boolean joins(int i) {
		return parts.get(i) instanceof Part.Other o && (o.text().equals("-") || o.text().equals(".") || o.text().equals("'"));
	}
}
