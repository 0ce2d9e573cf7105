package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The cutter does not go into the hole, or is so big that its flanks cut away from the profile before and behind the point they should cut.
 * At a radius r of the thread the tooth is deepest not where it touches radially but an angle P (r − e) / (2 pi t r e) further on, e being
 * the radius of the helix and t the slope of the flank, tan 30 for 60 degrees; there it takes s = P² (r − e) / (8 pi² t r e) more off each
 * flank, worth 2 s / t on the pitch diameter (geometry, for small angles). The limits 0.7 D coarse and 0.8 D fine are those of the
 * catalogue of rules: they keep s small. Cutters made for one thread are often a little larger and ground to suit: as long as the class
 * takes what is overcut, that is information.
 */
public final class CutterTooBig implements Rule {

	private static final double COARSE = 0.7;
	private static final double FINE = 0.8;
	/** Beyond this part of the diameter no cutter is made for a thread (common practice, no source). */
	private static final double LARGEST = 0.84;
	/** A hole this much below the smallest, in pitches, is an error by itself (common practice, no source). */
	private static final double FAR = 0.05;

	@Override
	public String name() {
		return "cutter-too-big";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.CUTTER_TOO_BIG);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> thread = MillFacts.cutThread(operation);
			OptionalDouble cutter = MillFacts.cutter(operation);
			if (thread.isPresent() && cutter.isPresent()) {
				operation.passes().typical().stream().filter(pass -> !pass.external()).findFirst()
						.ifPresent(pass -> look(work, operation, pass, thread.get(), cutter.getAsDouble(), found));
			}
		}
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread, double cutter, Consumer<Finding> found) {
		Figures figures = new Figures(work.shop().unit().value());
		Fact<Double> said = operation.tool().facts().diameter().orElseThrow();
		for (MillPass first : operation.firstPasses().typical()) {
			Optional<Cut> drilled = first.hole().threadedBefore(operation.firstOrder(), thread.value().diameter());
			if (drilled.isPresent() && cutter >= drilled.get().diameter().orElseThrow().value() - 1e-6) {
				Fact<Double> size = drilled.get().diameter().orElseThrow();
				if (holeTooSmall(thread.value(), cutter, size)) {
					return;
				}
				found.accept(Draft.of(this, Severity.ERROR, MillFacts.word(pass.block(), "G"), "the cutter, " + figures.length(cutter)
						+ ", does not go into the hole, " + figures.length(size.value())
						+ ": it hits the edge on the way down; a cutter of at most "
						+ figures.length(limit(thread.value()) * thread.value().diameter())).on(operation)
						.known("cutter diameter", figures.length(cutter), said).known("hole diameter", figures.length(size.value()), size)
						.related(drilled.get().block(), "the drill block").finding());
				return;
			}
		}
		double most = limit(thread.value()) * thread.value().diameter();
		boolean another = operation.allFinishing().typical().stream()
				.allMatch(one -> HelixForm.of(one).cutDiameter(thread.value().diameter(), cutter) > thread.value().diameter()
						+ thread.value().pitch());
		// a path that is far too wide with the cutter says that the cutter is another one
		if (cutter > most * (1 + 1e-3) && thread.value().taperOnDiameter() == 0 && !another) {
			double overcut = overcut(thread.value(), cutter);
			// where no other tool makes the hole, a cutter as wide as it drills it, and is made for this thread alone
			boolean drills = pass.hole().sizedBefore(operation.firstOrder()).isEmpty()
					&& cutter >= MillFacts.minor(thread.value()) - FAR * thread.value().pitch();
			boolean suits = drills || cutter <= LARGEST * thread.value().diameter() && overcut <= MillFacts.pitchTolerance(thread.value());
			found.accept(Draft.of(this, suits ? Severity.INFORMATION : Severity.WARNING, MillFacts.word(pass.block(), "G"),
					"the cutter, " + figures.length(cutter) + ", is " + Figures.percent(cutter / thread.value().diameter()) + " of "
							+ MillFacts.name(operation) + ", " + Figures.percent(limit(thread.value()))
							+ " is the limit: its flanks overcut by "
							+ figures.fine(overcut) + " on the pitch diameter; a cutter of at most " + figures.length(most)).on(operation)
					.known("cutter diameter", figures.length(cutter), said).known("the callout", thread.value().designation(), thread)
					.from("overcut", figures.fine(overcut), "geometry of the cutter in the helix").finding());
		}
	}

	/**
	 * Whether the cutter goes into the hole that the thread needs, and the drill is far from making it: what is wrong is the hole, not the
	 * cutter.
	 */
	private static boolean holeTooSmall(ThreadSpec thread, double cutter, Fact<Double> hole) {
		OptionalDouble least = ThreadTable.standard().limits(thread).map(Limits::minorMinMm).orElse(OptionalDouble.empty());
		return thread.taperOnDiameter() == 0 && hole.stated() && least.isPresent() && cutter < least.getAsDouble()
				&& hole.value() < least.getAsDouble() - FAR * thread.pitch();
	}

	/** What the flanks take off too much, worth on the pitch diameter; mm. */
	static double overcut(ThreadSpec thread, double cutter) {
		double helix = (thread.diameter() - cutter) / 2;
		double slope = Math.tan(thread.system().flankAngle() / 2);
		double pitchRadius = (thread.diameter() - thread.system().depthOverPitch() * thread.pitch()) / 2;
		double flank = thread.pitch() * thread.pitch() * (pitchRadius - helix) / (8 * Math.PI * Math.PI * slope * pitchRadius * helix);
		return 2 * flank / slope;
	}

	private static double limit(ThreadSpec thread) {
		OptionalDouble coarse = ThreadTable.standard().coarsePitch(thread.diameter());
		boolean fine = coarse.isPresent() && thread.tpi() == 0 ? thread.pitch() < coarse.getAsDouble() - 1e-6
				: !thread.series().startsWith("UNC");
		return fine ? FINE : COARSE;
	}
}
