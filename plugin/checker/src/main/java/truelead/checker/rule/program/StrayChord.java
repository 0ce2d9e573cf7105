package truelead.checker.rule.program;

import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Written;
import truelead.checker.work.ThreadMilling;

/**
 * A chord of a helix whose end lies beside the circle of all others: a straight move goes anywhere, and only the other chords tell that a
 * number is wrong.
 *
 * @param chord  the chord
 * @param off    how far its end is from the circle, mm
 * @param radius radius of the circle, mm
 */
record StrayChord(Step.Arc chord, double off, double radius) {

	/** What ends of chords may lie beside their circle beyond rounding, mm (common practice, no source). */
	private static final double ALLOWED = 0.02;
	/** More than the angle of a chord: a taper thread grows over its turns. */
	private static final double CHORD = Math.toRadians(65);

	/** The first chord of a pass that strays; empty where none does. */
	static Optional<StrayChord> of(MillPass pass) {
		for (Step.Arc arc : pass.helix()) {
			double off = Math.abs(arc.endRadius() - arc.startRadius());
			if (arc.inChords() && Math.abs(arc.sweep()) < CHORD && off > ALLOWED + 3 * Written.open(arc.resolution())) {
				return Optional.of(new StrayChord(arc, off, arc.startRadius()));
			}
		}
		return Optional.empty();
	}

	/** The finding. */
	Draft draft(ArcNotClosed rule, ThreadMilling milling) {
		Figures figures = new Figures(chord.modal().unit());
		return Draft.of(rule, Severity.ERROR, Location.of(chord.block()), "this chord ends " + figures.fine(off)
				+ " beside the circle of the others, whose radius is " + figures.fine(radius)
				+ ": the cutter leaves the thread there; see its end point").on(milling)
				.programmed("end beside the circle", figures.fine(off), chord.block());
	}
}
