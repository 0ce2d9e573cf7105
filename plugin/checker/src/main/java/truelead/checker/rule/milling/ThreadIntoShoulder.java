package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Work;

/**
 * A thread outside that a lathe cuts on to where a shoulder begins: behind the turned diameter, and behind any relief, the point runs into
 * the full work. At full depth h its flank is h tan(a/2) ahead of it, a third of the pitch at 60 degrees (geometry).
 */
public final class ThreadIntoShoulder implements Rule {

	/** Levels that are the same, mm. */
	private static final double SAME = 0.02;
	/** Nobody threads on so many pitches by a slip of relief: there the outside is another than this program turns. */
	private static final double STRANGE = 40;

	@Override
	public String name() {
		return "thread-into-shoulder";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		work.course().singlePoints().forEach(turned -> of(turned).map(Draft::finding).ifPresent(found));
	}

	/** The finding of the first pass that goes farthest into the shoulder; empty where none does, or nobody knows where it is. */
	private Optional<Draft> of(SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.agreed();
		if (thread.isEmpty() || turned.shaft().isEmpty() || Double.isNaN(turned.shaft().get().floor())) {
			return Optional.empty();
		}
		SinglePoint.Shaft shaft = turned.shaft().get();
		ThreadSpec spec = thread.get().value();
		SinglePoint.Pass farthest = turned.passes().get(0);
		for (SinglePoint.Pass pass : turned.passes()) {
			farthest = beyond(pass, shaft) > beyond(farthest, shaft) + SAME ? pass : farthest;
		}
		double beyond = beyond(farthest, shaft);
		double flank = spec.system().profileOverPitch() * spec.pitch() * Math.tan(spec.system().flankAngle() / 2);
		// a cycle may pull the tool out before its end
		boolean ownMotion = farthest.step().code() != 0;
		boolean touches = beyond > SAME || ownMotion && beyond > SAME - flank;
		return touches && beyond < STRANGE * spec.pitch() ? Optional.of(draft(turned, farthest, shaft, thread.get(), beyond, flank))
				: Optional.empty();
	}

	/** How far the end of a pass that lies nearer to the shoulder is behind where it begins, mm. */
	private static double beyond(SinglePoint.Pass pass, SinglePoint.Shaft shaft) {
		return Math.max(shaft.way() * (pass.step().from().z() - shaft.floor()), shaft.way() * (pass.step().to().z() - shaft.floor()));
	}

	private Draft draft(SinglePoint turned, SinglePoint.Pass pass, SinglePoint.Shaft shaft, Fact<ThreadSpec> thread, double beyond,
			double flank) {
		Figures figures = new Figures(pass.step().modal().unit());
		boolean ends = shaft.way() * (pass.step().to().z() - pass.step().from().z()) > 0;
		Step.Synchronised step = pass.step();
		BlockRef at = ends || step.code() != 0 && pass.begins().isEmpty() ? step.block() : pass.begins().orElse(step.block());
		double level = ends ? step.to().z() : step.from().z();
		String z = "Z" + figures.coordinate(level);
		String fact = "the thread " + (ends ? "goes on to " : "begins at ") + z + ", the outside is turned to its diameter as far as Z"
				+ figures.coordinate(shaft.floor());
		String what = beyond > SAME ? ": the point runs " + figures.length(beyond) + (shaft.wider() ? " into the shoulder and breaks"
				: " into the bar, if that is thicker") : ": at full depth the point's flank is " + figures.length(flank)
				+ " ahead of it and runs into the shoulder";
		String right = "; " + (ends ? "end" : "begin") + " a pitch before it, Z"
				+ figures.coordinate(shaft.floor() - shaft.way() * thread.value().pitch()) + ", or turn a relief first";
		Severity severity = !shaft.wider() ? Severity.INFORMATION : beyond > SAME ? Severity.ERROR : Severity.WARNING;
		return Draft.of(this, severity, MillFacts.word(at, "ZW"), fact + what + right)
				.programmed(ends ? "end of the thread" : "beginning of the thread", z, at)
				.programmed("end of the turned diameter", "Z" + figures.coordinate(shaft.floor()), shaft.turned().block())
				.known("the callout", thread.value().designation(), thread).related(shaft.turned().block(), "what turns the outside");
	}
}
