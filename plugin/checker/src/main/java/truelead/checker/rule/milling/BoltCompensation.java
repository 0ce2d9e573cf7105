package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.job.Fact;
import truelead.checker.machine.Compensation;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.thread.BoltRoot;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * Compensation along a path that is the root of a thread milled outside: none, so that the cutter goes to its centre's depth below the
 * root, or that for the inside. Clockwise outside the cutter is to the left of the path, G41, counter-clockwise to its right (geometry).
 */
final class BoltCompensation {

	/** How far a path may be from the usual root and be meant for it, pitches (common practice, no source). */
	private static final double NEAR = 0.4;

	private BoltCompensation() {
	}

	/** The finding of the first pass that goes along the root without the right compensation; empty where none does. */
	static Optional<Draft> of(CompMissing rule, Work work, ThreadMilling operation) {
		Optional<Fact<ThreadSpec>> thread = MillFacts.cutThread(operation).filter(any -> any.value().taperOnDiameter() == 0);
		return thread.flatMap(named -> operation.passes().typical().stream()
				.filter(pass -> isRoot(pass, named.value(), MillFacts.cutter(operation)) && pass.compensation() != right(pass)).findFirst()
				.map(pass -> draft(rule, work, operation, pass, named)));
	}

	private static Compensation right(MillPass pass) {
		return pass.counterclockwise() ? Compensation.RIGHT : Compensation.LEFT;
	}

	private static boolean isRoot(MillPass pass, ThreadSpec thread, OptionalDouble cutter) {
		double root = BoltRoot.usual(thread);
		double path = HelixForm.of(pass).pathDiameter();
		boolean known = pass.compensation() != Compensation.OFF || cutter.isPresent();
		boolean centre = cutter.isPresent() && Math.abs(path - cutter.getAsDouble() - root) <= NEAR * thread.pitch();
		return pass.external() && known && !centre && Math.abs(path - root) <= NEAR * thread.pitch() && !pass.modal().mirrored();
	}

	private static Draft draft(CompMissing rule, Work work, ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread) {
		Figures figures = new Figures(pass.modal().unit());
		String path = figures.length(HelixForm.of(pass).pathDiameter());
		String wanted = right(pass) == Compensation.LEFT ? "G41" : "G42";
		Draft draft;
		if (pass.compensation() == Compensation.OFF) {
			draft = Draft.of(rule, Severity.ERROR, MillFacts.word(pass.block(), "G"), "the path of " + path + " is the root of "
					+ MillFacts.name(operation) + " outside and no compensation is in force: the cutter, "
					+ figures.length(MillFacts.cutter(operation).orElseThrow()) + ", goes round inside the bolt by its radius; " + wanted
					+ " with D on the move before the lead-in");
		} else {
			BlockRef at = work.course().compensation().lastTo(pass.compensation(), pass.order()).map(change -> change.step().block())
					.orElse(pass.block());
			int code = pass.compensation() == Compensation.LEFT ? 41 : 42;
			draft = Draft.of(rule, Severity.ERROR, MillFacts.word(at, "G", code), "G" + code + " puts the cutter inside the root of "
					+ MillFacts.name(operation) + ": the path of " + path + " goes round " + (pass.counterclockwise() ? "counter-clockwise"
							: "clockwise") + " outside; " + wanted).related(pass.block(), "the helix");
		}
		return draft.on(operation).programmed("diameter of the path", path, pass.block())
				.known("the callout", thread.value().designation(), thread);
	}
}
