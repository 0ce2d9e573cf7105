package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import truelead.checker.thread.Hand;

/**
 * Tells whether a comment speaks of a left-hand or right-hand tool: LH TAP, LEFT HAND, M8 LINKS, but not LEFT SIDE nor FLANSCH LINKS 4X M8.
 */
final class HandWords {
	/** Common practice, no source. */
	private static final Set<String> SITES = Set.of("SIDE", "END", "FACE", "EDGE", "HALF", "CORNER", "ROW", "COLUMN", "HOLE", "HOLES",
			"PART", "PARTS", "PLATE", "FLANGE", "VISE", "VICE", "FIXTURE", "JAW", "STATION", "PALLET", "TOP", "BOTTOM", "UPPER", "LOWER",
			"FRONT", "REAR", "SEITE", "TEIL", "OBEN", "UNTEN", "VORN", "VORNE", "HINTEN", "AUSSEN", "INNEN", "FLANSCH", "HAUT", "BAS",
			"ARRIBA", "ABAJO", "ALTO", "BASSO");

	private final List<Part> parts;

	HandWords(List<Part> parts) {
		this.parts = parts;
	}

	/** The hand that is said; empty where none is, or both. */
	Optional<Hand> hand() {
		boolean left = false;
		boolean right = false;
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Word w) {
				left |= w.meaning() == Meaning.LEFT && meant(i, w) && !ofTheCutter(i) || w.text().equals("TAPLH");
				right |= w.meaning() == Meaning.RIGHT && meant(i, w) || w.text().equals("TAPRH");
			}
		}
		return left == right ? Optional.empty() : Optional.of(left ? Hand.LEFT : Hand.RIGHT);
	}

	/** Beside a word of threads: M8 LINKS, M10 A GAUCHE; LEFT SIDE is none. */
	private boolean meant(int i, Part.Word word) {
		boolean ofHandsAlone = word.text().length() == 2 || word.text().length() == 3 && word.text().charAt(1) == ' '
				|| word.text().contains(".") || word.text().endsWith("GEWINDE");
		if (ofHandsAlone || is(i + 1, Meaning.HAND) || dash(i + 1) && speaksOfThread(i + 2)) {
			return true;
		}
		return !side(i) && (speaksOfThread(i - 1) || speaksOfThread(i + 1)
				|| i > 1 && parts.get(i - 1) instanceof Part.Other o && o.text().length() == 1 && (speaksOfThread(i - 2) || pitch(i - 2)));
	}

	/**
	 * Where something is: M8 LEFT SIDE, M8 LINKS OBEN, TAP LEFT HOLES; FLANSCH LINKS M8, where no tool is named that may be HSS LINKS; LEFT
	 * 4X M8, for nobody counts between a hand and its thread (common practice, no source).
	 */
	private boolean side(int i) {
		boolean counted = i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Thread t && t.count().isPresent();
		boolean tool = parts.stream().anyMatch(p -> p instanceof Part.Word w && w.meaning().threading());
		return counted || i + 1 < parts.size() && site(text(parts.get(i + 1))) || !tool && i > 0 && parts.get(i - 1) instanceof Part.Other o
				&& o.text().length() > 2 && o.text().codePoints().allMatch(Character::isLetter);
	}

	/** Whether a word is a place on a part or a machine, of which there is a left one. */
	static boolean site(String word) {
		return SITES.contains(TradeWords.fold(word));
	}

	/** THREAD MILL M8 LEFT HAND CUTTING. */
	private boolean ofTheCutter(int at) {
		return CutterHand.meant(parts.stream().skip(at + 1).map(HandWords::text).iterator())
				&& IntStream.range(0, parts.size()).anyMatch(i -> is(i, Meaning.THREAD_MILL) || is(i, Meaning.MILL));
	}

	private static String text(Part part) {
		return part instanceof Part.Word word ? word.text() : part instanceof Part.Other other ? other.text() : "";
	}

	private boolean is(int i, Meaning meaning) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Word w && w.meaning() == meaning;
	}

	/** LEFT-HAND. */
	private boolean dash(int i) {
		return i < parts.size() && parts.get(i) instanceof Part.Other o && o.text().equals("-");
	}

	/** PAS A GAUCHE. */
	private boolean pitch(int i) {
		return parts.get(i) instanceof Part.Word w && w.meaning() == Meaning.P;
	}

	private boolean speaksOfThread(int i) {
		return i >= 0 && i < parts.size() && (parts.get(i) instanceof Part.Thread
				|| parts.get(i) instanceof Part.Word w && (w.meaning().threading() || w.meaning() == Meaning.HAND));
	}
}
