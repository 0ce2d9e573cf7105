package truelead.checker.work;

import java.util.LinkedHashMap;
import java.util.Map;

/** Where a program was followed anew after edits, and how many edits ago: what was followed there holds the text as it was then. */
final class EditedPlaces {

	/** Texts that are kept at most; of each there is one chunk that no other has. */
	private static final int MOST = 500;
	/**
	 * Edits behind which all is followed from the beginning: what tells kinds of cuts and strokes apart keeps something of each edit's
	 * text.
	 */
	static final int EDITS = 1_000;

	/** The edit that it was followed for, and whether more was taken of it than where it may be followed from. */
	private record Followed(int edit, boolean part) {
	}

	/** By the line that it was followed from, longest ago first. */
	private final Map<Integer, Followed> places = new LinkedHashMap<>();
	private int edits;

	/** There is another text. */
	void edited() {
		edits++;
	}

	/** Whether there have been so many texts that all that is kept of them is to be let go. */
	boolean worn() {
		return edits >= EDITS;
	}

	/** The text was followed anew from a line on. */
	void followed(int line, boolean part) {
		Followed before = places.remove(line);
		places.put(line, new Followed(edits, part || before != null && before.part()));
	}

	/** Whether the oldest of the texts is to be let go. */
	boolean aged() {
		return !places.isEmpty() && edits - places.get(oldest()).edit() >= MOST;
	}

	/** The line of the place that was followed longest ago. */
	int oldest() {
		return places.keySet().iterator().next();
	}

	/** Whether more was taken there than where it may be followed from. */
	boolean part(int line) {
		return places.get(line).part();
	}
}
