package truelead.checker.rule.program;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Step;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** On a machine that has a tapping cycle for each way, along Z and along X, the one is written where the holes are made the other way. */
final class SideTap {

	private SideTap() {
	}

	/**
	 * The finding at the cycle's word; empty where another word than the cycle's is wrong.
	 *
	 * @param hole what made the holes
	 */
	static Optional<Finding> of(Rule rule, ThreadingOperation operation, Cut hole, Work work) {
		MachineProfile profile = work.shop().profile();
		Optional<WordRef> taps = operation instanceof Tapping tapping ? tapping.cycle().map(Cycle::gWord) : Optional.empty();
		Optional<WordRef> drills = hole.step() instanceof Step.Stroke stroke ? Optional.of(stroke.cycle().gWord()) : Optional.empty();
		if (taps.isEmpty() || drills.isEmpty() || profile.sideCycle(taps.get()) == profile.sideCycle(drills.get())) {
			return Optional.empty();
		}
		boolean side = profile.sideCycle(drills.get());
		return profile.tap(side).map(right -> {
			String written = Figures.written(taps.get());
			Location at = Location.of(taps.get());
			String message = written + " taps along " + axis(!side) + ", the holes are made along " + axis(side) + " by "
					+ Figures.written(drills.get()) + ": the tap goes in beside them; " + right;
			return Draft.of(rule, Severity.ERROR, at, message).from("cycle that taps along " + axis(side), right, "machine profile "
					+ profile.name()).related(hole.block(), "a block that makes a hole")
					.fix(new Fix("Change " + written + " to " + right, false, "see that the words of the cycle are those of " + right,
							List.of(new Edit(at, right)))).on(operation).finding();
		});
	}

	private static String axis(boolean side) {
		return side ? "X" : "Z";
	}
}
