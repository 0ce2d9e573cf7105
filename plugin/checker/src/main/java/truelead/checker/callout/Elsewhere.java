package truelead.checker.callout;

import java.util.List;
import java.util.Set;

/**
 * Whether a comment says of a tool or a thread that it is not made here: TAP BY HAND, REAMER IN OP20, TAPPED HOLES ON OTHER SIDE, DO NOT
 * TAP.
 */
final class Elsewhere {

	private static final Set<String> SETTINGS = Set.of("OP", "OPER", "OPERATION", "NEXT", "ANOTHER", "SECOND", "SETUP");
	/** What follows TAPPED where something else does it, or at another time. */
	private static final Set<String> NOT_HERE = Set.of("FROM", "ON", "BY", "LATER", "AFTER");

	private Elsewhere() {
	}

	/** Whether it says so of the part at i. */
	static boolean of(PartRow row, int i) {
		return row.is(i - 1, Meaning.NOT) || row.is(i - 2, Meaning.NOT) || row.is(i + 1, Meaning.INCH) && other(row.parts(), i + 2,
				SETTINGS) || behind(row, i, Meaning.ELSEWHERE) || sizeless(row.parts()) && behind(row, i, Meaning.OTHER_SIDE);
	}

	/** Whether a part behind TAPPED says that it is done at another place or time. */
	static boolean behindTapped(Part part) {
		return part instanceof Part.Other o && NOT_HERE.contains(TradeWords.fold(o.text()))
				|| part instanceof Part.Word w && (w.meaning() == Meaning.APART || w.text().equals("IN"));
	}

	private static boolean other(List<Part> parts, int i, Set<String> words) {
		return i < parts.size() && parts.get(i) instanceof Part.Other o && words.contains(TradeWords.fold(o.text()));
	}

	/** DRILL 6.8, TAP M8 BY HAND: a comma, another tool or thread parts the words from what stands before. */
	private static boolean behind(PartRow row, int i, Meaning meaning) {
		for (int j = i + 1; j < row.parts().size(); j++) {
			if (row.is(j, meaning)) {
				return true;
			}
			if (parts(row.parts().get(i), row.parts().get(j))) {
				return false;
			}
		}
		return false;
	}

	/** The thread behind TAP, and TAPPED behind a thread, belong to what is said. */
	private static boolean parts(Part said, Part part) {
		boolean tool = said instanceof Part.Word;
		return !tool && part instanceof Part.Thread || part instanceof Part.Other o && (o.text().equals(",") || o.text().equals(";"))
				|| part instanceof Part.Word w && (tool && w.meaning().threading() || w.meaning().drills());
	}

	/** TAP M8 HOLES ON BACK SIDE may well be the tool that works there. */
	private static boolean sizeless(List<Part> parts) {
		return parts.stream().noneMatch(part -> part instanceof Part.Thread || part instanceof Part.Amount amount
				&& amount.role() != Part.Role.DEPTH);
	}
}
