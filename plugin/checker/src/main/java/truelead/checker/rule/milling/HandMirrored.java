package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A mirror in force turns the hand of a helix round, and that of a tapping cycle where the profile says that the control does so. */
public final class HandMirrored implements Rule {

	@Override
	public String name() {
		return "hand-mirrored";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.MIRROR);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> wanted = operation.wanted().statedThread();
			wanted.flatMap(thread -> operation.passes().typical().stream()
					.filter(pass -> pass.modal().mirrored() && HelixWrongHand.wrong(pass, thread.value())).findFirst())
					.ifPresent(pass -> found.accept(helix(operation, pass, wanted.orElseThrow())));
		}
		if (work.shop().profile().yes(ProfileKey.MIRROR_FLIPS_CYCLE)) {
			work.tappings().forEach(operation -> tapping(operation, found));
		}
	}

	private Finding helix(ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread) {
		return draft(operation, pass, thread, "the mirror in force turns the helix round: it cuts a " + (pass.rightHand()
				? "right" : "left"));
	}

	private Finding draft(ThreadingOperation operation, MillPass pass, Fact<ThreadSpec> thread, String fact) {
		return Draft.of(this, Severity.ERROR, MillFacts.word(pass.block(), "G"), fact + "-hand thread, " + thread.value().designation()
				+ " is " + hand(thread) + "-hand; cancel the mirror, or program this side by itself").on(operation)
				.known("the callout", thread.value().designation(), thread).finding();
	}

	private void tapping(Tapping operation, Consumer<Finding> found) {
		Optional<Fact<ThreadSpec>> wanted = operation.wanted().statedThread();
		Optional<TapStroke> mirrored = operation.strokes().typical().stream().filter(stroke -> stroke.modal().mirrored()).findFirst();
		if (wanted.isPresent() && mirrored.isPresent() && operation.cycle().isPresent()) {
			found.accept(Draft.of(this, Severity.ERROR, Location.of(mirrored.get().block()),
					"the mirror in force turns the tapping cycle round on this machine, " + wanted.get().value().designation() + " is "
							+ hand(wanted.get()) + "-hand; cancel the mirror before the cycle").on(operation)
					.known("the callout", wanted.get().value().designation(), wanted.get())
					.from("mirror turns the cycle round", "yes", "machine profile").finding());
		}
	}

	private static String hand(Fact<ThreadSpec> thread) {
		return thread.value().hand() == Hand.RIGHT ? "right" : "left";
	}
}
