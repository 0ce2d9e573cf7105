package truelead.checker.callout;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import truelead.checker.thread.TapStyle;

/** Tells from a comment how a tap is made: its point, flutes and lead, and whether it forms. */
final class TapWords {

	/** The phrases that name a tool which drills and taps. */
	private static final Set<String> WITH_DRILL = Set.of("COMBI DRILL TAP", "COMBO DRILL TAP", "COMBINED DRILL TAP", "BOHR GEWINDEBOHRER",
			"KOMBI GEWINDEBOHRER");
	private static final Set<String> DENIALS = Set.of("NO", "NOT", "NEIN", "KEIN", "KEINEN", "NON", "PAS", "GEEN", "NEE");
	private static final Set<String> YES = Set.of("YES", "JA", "OUI", "SI");

	private final PartRow row;
	private final List<Part> parts;

	TapWords(PartRow row) {
		this.row = row;
		this.parts = row.parts();
	}

	/** All that is said of it. */
	Set<TapStyle> styles() {
		Set<TapStyle> styles = EnumSet.noneOf(TapStyle.class);
		for (int i = 0; i < parts.size(); i++) {
			Optional<Meaning> meaning = row.meaning(i);
			Optional<Meaning> next = row.meaning(row.nextWord(i));
			if (meaning.isPresent()) {
				style(meaning.get(), next).ifPresent(styles::add);
			}
			if (meaning.filter(m -> m == Meaning.TAP).isPresent() && WITH_DRILL.contains(((Part.Word) parts.get(i)).text())) {
				styles.add(TapStyle.WITH_DRILL);
			}
		}
		return Set.copyOf(styles);
	}

	private static Optional<TapStyle> style(Meaning meaning, Optional<Meaning> next) {
		boolean tapNext = next.filter(m -> m == Meaning.TAP).isPresent();
		return Optional.ofNullable(switch (meaning) {
			case SPIRAL_POINT -> TapStyle.SPIRAL_POINT;
			case SPIRAL_FLUTE -> TapStyle.SPIRAL_FLUTE;
			case SPIRAL -> next.filter(m -> m == Meaning.POINT).isPresent() ? TapStyle.SPIRAL_POINT
					: next.filter(m -> m == Meaning.FLUTE).isPresent() ? TapStyle.SPIRAL_FLUTE : null;
			case STRAIGHT -> next.filter(m -> m == Meaning.FLUTE).isPresent() ? TapStyle.STRAIGHT_FLUTE : null;
			case MODIFIED -> next.filter(m -> m == Meaning.BOTTOMING).isPresent() ? TapStyle.MODIFIED_BOTTOMING_LEAD : null;
			case BOTTOMING -> tapNext ? TapStyle.BOTTOMING_LEAD : null;
			case PLUG -> tapNext ? TapStyle.PLUG_LEAD : null;
			case TAPER -> tapNext ? TapStyle.TAPER_LEAD : null;
			default -> null;
		});
	}

	/** FORM or ROLL as the way a tap works; FORM C is the form of its lead (DIN 2197). */
	boolean forming() {
		for (int i = 0; i < parts.size(); i++) {
			if (row.is(i, Meaning.FORM) && !leadForm(i + 1) && !denied(i)) {
				return true;
			}
		}
		return false;
	}

	/** Whether it is called a cutting tap as well: which of the two it is nobody knows. */
	boolean cutting() {
		for (int i = 0; i < parts.size(); i++) {
			if (row.is(i, Meaning.CUT) && row.is(row.nextWord(i), Meaning.TAP) && !denied(i)) {
				return true;
			}
		}
		return false;
	}

	/**
	 * FORM? NO - CUT TAP, FORM TAP?? NO - CUT TAP, FORM TAP - NO, CUT, NOT FORM, NOT A FORM TAP, NO FORM TAP; and a question that nobody
	 * says yes to, FORM? CUT.
	 */
	boolean denied(int i) {
		int behind = i + 1;
		boolean asked = false;
		boolean question = false;
		boolean apart = false;
		while (behind < parts.size() && (sign(behind) || row.is(behind, Meaning.TAP) && !apart)) {
			apart |= sign(behind);
			asked |= sign(behind) && "?:".indexOf(((Part.Other) parts.get(behind)).text().charAt(0)) >= 0;
			question |= sign(behind) && ((Part.Other) parts.get(behind)).text().startsWith("?");
			behind++;
		}
		boolean answered = question && !says(behind, YES) || no(behind) && (asked || apart
				&& (behind + 1 == parts.size() || sign(behind + 1)));
		return answered || no(i - 1) || no(i - 2) && parts.get(i - 1).end() - parts.get(i - 1).start() == 1 && !sign(i - 1);
	}

	private boolean sign(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Other sign
				&& sign.text().chars().noneMatch(Character::isLetterOrDigit);
	}

	private boolean no(int i) {
		return row.is(i, Meaning.NOT) || says(i, DENIALS);
	}

	private boolean says(int i, Set<String> words) {
		String text = i < 0 || i >= parts.size() ? "" : parts.get(i) instanceof Part.Other o ? o.text()
				: parts.get(i) instanceof Part.Word w ? w.text() : "";
		return words.contains(text.toUpperCase(Locale.ROOT));
	}

	private boolean leadForm(int i) {
		// in FORM C 2.5 THREADS the letter has its number
		String text = i >= parts.size() ? "" : parts.get(i) instanceof Part.Code c ? c.letter() : parts.get(i) instanceof Part.Other o
				? o.text() : parts.get(i) instanceof Part.Word w ? w.text() : "";
		return text.length() == 1 && "ABCDE".contains(text.toUpperCase(Locale.ROOT));
	}
}
