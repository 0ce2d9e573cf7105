package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.WordText;

/**
 * The word that says at what level an arc ends, where it is a plain number of the level itself, so that another level can be typed in its
 * place: not in increments, nor where a shift, a rotation or a scale is in force.
 *
 * @param word the word
 * @param unit the program's unit, mm
 */
record EndLevel(WordRef word, double unit) {

	/** Decimals that a level needs at most, in mm and in inches. */
	private static final int MM = 3;
	private static final int INCH = 4;

	/** The word of an arc's level along an axis; empty where it has none such. */
	static Optional<EndLevel> of(Step.Arc arc, int axis) {
		double unit = arc.modal().unit().mm();
		char letter = MillFacts.axisLetter(axis).charAt(0);
		return arc.inChords() ? Optional.empty() : WordText.saying(arc.block(), letter, arc.to().along(axis), unit)
				.map(word -> new EndLevel(word, unit));
	}

	/** The word with another level in mm: {@code Z-16.125}. */
	String said(double level) {
		return WordText.shown(word, level / unit, unit == 1 ? MM : INCH);
	}

	/** The level of another word beside it, as a message shows it. */
	String fresh(double level) {
		return word.address() + Figures.number(level / unit, unit == 1 ? MM : INCH);
	}

	/** Another level in its place. */
	Optional<Fix> fix(double level, String why) {
		return Draft.change(word, level / unit, unit == 1 ? MM : INCH, false, why);
	}
}
