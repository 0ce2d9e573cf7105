package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.ThreadMilling;

/**
 * The size of a taper pipe thread that a cutter with one row of teeth mills: inside 2 R + dc at the face, to which the taper of 1 in 16
 * leads, against the pitch diameter at the gauge plane and one height of the thread (0.8 P by ASME B1.20.1, 0.6403 P by ISO 7-1); outside 2
 * R - dc at the small end, a gauge length before that plane, against the pitch diameter there less one height.
 */
final class TaperSize {

	private static final double AMERICAN = 0.8;
	private static final double WHITWORTH = 0.640327;
	/**
	 * Part of the pitch that the size may be off: some eight turns of the gauge, more than any shop leaves to the last cut (common
	 * practice, no source).
	 */
	private static final double ALLOWED = 0.5;
	/** A cutter that goes round less often has several rows. */
	private static final int ROWS = 2;
	/** Part of a turn that closes a circle. */
	private static final double ONCE = 0.9;
	/** How far from the face the helix may end, pitches, for the face to be told. */
	private static final double NEAR = 3;

	private TaperSize() {
	}

	/** The finding of a helix of another size; empty where it is right, and where the face is not near its end. */
	static Optional<Draft> of(Rule rule, ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread) {
		ThreadSpec spec = thread.value();
		OptionalDouble gauge = ThreadTable.standard().limits(spec).map(Limits::pitchMinMm).orElse(OptionalDouble.empty());
		Optional<Fact<Double>> cutter = operation.tool().facts().diameter();
		HelixForm form = HelixForm.of(pass);
		double surface = operation.wanted().surface().value();
		boolean comb = MillFacts.comb(operation) || form.turns() < ROWS;
		boolean told = comb ? !pass.external() && form.turns() > ONCE && form.deepest(surface) > 0
				: Math.abs(form.highest(surface)) <= NEAR * spec.pitch();
		if (gauge.isEmpty() || cutter.isEmpty() || !told) {
			return Optional.empty();
		}
		boolean american = spec.system().hasFlanksOf(60);
		int out = pass.external() ? -1 : 1;
		double small = pass.external() ? ThreadTable.standard().gaugeLength(spec).orElse(Double.NaN) * ThreadSpec.PIPE_TAPER : 0;
		double wanted = gauge.getAsDouble() - small + out * (american ? AMERICAN : WHITWORTH) * spec.pitch();
		double middle = (form.highest(surface) + form.deepest(surface)) / 2;
		double taken = out * middle * ThreadSpec.PIPE_TAPER;
		boolean contour = form.onContour(wanted - taken, out * cutter.get().value());
		double cut = 2 * pass.radius() + (contour ? 0 : out * cutter.get().value()) + taken;
		// a comb goes its own length along the cone at once: whether its diameter is that of its tip or of its last row, nobody says
		double cone = comb ? form.deepest(surface) * ThreadSpec.PIPE_TAPER : 0;
		double error = comb ? Math.max(0, cut - taken - wanted) + Math.min(0, cut - taken - wanted + cone) : cut - wanted;
		if (Double.isNaN(error) || Math.abs(error) <= ALLOWED * spec.pitch() + form.diameterRounding()) {
			return Optional.empty();
		}
		Figures figures = new Figures(pass.modal().unit());
		cut = wanted + error;
		return Optional.of(Draft.of(rule, Severity.ERROR, MillFacts.radiusWord(pass.block()), "helix and cutter of "
				+ figures.fine(cutter.get().value()) + " cut " + figures.fine(cut) + " at the face, " + MillFacts.name(operation)
				+ " has about " + figures.fine(wanted) + " there: " + figures.fine(Math.abs(error)) + (error < 0 ? " too small"
						: " too large") + "; every radius " + figures.fine(Math.abs(error) / 2) + (error < 0 ? " larger" : " smaller"))
				.on(operation).programmed("mean radius", figures.fine(pass.radius()), pass.block())
				.known("cutter diameter", figures.fine(cutter.get().value()), cutter.get()).known("the callout", spec.designation(), thread)
				.from(pass.external() ? "root at the small end" : "major diameter at the face", figures.fine(wanted),
						american ? "ASME B1.20.1" : "ISO 7-1"));
	}
}
