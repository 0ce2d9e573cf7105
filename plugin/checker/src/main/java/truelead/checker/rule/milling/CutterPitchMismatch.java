package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** A comb cutter, whose teeth stand a pitch apart, is of another pitch than the thread: every tooth but one cuts beside the groove. */
public final class CutterPitchMismatch implements Rule {

	/** Turns that count as one turn and a little overlap. */
	private static final double ONCE = 1.6;
	/** How far a pitch may be rounded, as a part of it. */
	private static final double ROUNDED = 0.01;

	@Override
	public String name() {
		return "cutter-pitch-mismatch";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD, Slip.HELIX_AND_DRILL, Slip.NO_CENTRE);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread();
			Optional<Fact<Double>> pitch = operation.tool().facts().pitch().filter(Fact::stated);
			if (thread.isEmpty() && pitch.isPresent()) {
				MillFacts.look(operation.passes().where(pass -> goesOnceRound(operation, pass)), (pass, wrong) ->
						helix(work, operation, pass, pitch.get()).ifPresent(wrong), found);
			}
			boolean single = operation.tool().facts().comb().map(comb -> !comb.value()).orElse(false);
			if (thread.isPresent() && pitch.isPresent() && !single
					&& Math.abs(pitch.get().value() - thread.get().value().pitch()) > 0.002) {
				found.accept(finding(work, operation, thread.get(), pitch.get()));
			}
		}
	}

	/** Whether the cutter has many teeth, or nobody says and it goes round once, as those do. */
	private static boolean goesOnceRound(ThreadMilling operation, MillPass pass) {
		return operation.tool().facts().comb().map(Fact::value).orElse(HelixForm.of(pass).turns() < ONCE);
	}

	/** Of a thread that nobody names, the helix against the cutter: a turn must go on by a whole number of its pitches. */
	private Optional<Finding> helix(Work work, ThreadMilling operation, MillPass pass, Fact<Double> pitch) {
		HelixForm form = HelixForm.of(pass);
		double turns = Math.max(1, Math.rint(form.lead() / pitch.value()));
		double off = Math.abs(form.lead() - turns * pitch.value());
		if (Double.isNaN(off) || !form.goesRound() || off <= form.leadRounding() + ROUNDED * pitch.value()) {
			return Optional.empty();
		}
		Figures figures = new Figures(work.shop().unit().value());
		String axis = MillFacts.axisLetter(pass.axis());
		return Optional.of(Draft.of(this, Severity.ERROR, MillFacts.word(pass.block(), axis), "the helix advances "
				+ figures.advance(form.lead()) + " a turn, the cutter has a pitch of " + figures.advance(pitch.value()) + ": its teeth cut "
				+ figures.fine(off) + " beside each other's groove; step " + axis + " " + figures.advance(pitch.value()) + " a turn")
				.on(operation).programmed("advance a turn", figures.advance(form.lead()), pass.block())
				.known("pitch of the cutter", figures.advance(pitch.value()), pitch).finding());
	}

	private Finding finding(Work work, ThreadMilling operation, Fact<ThreadSpec> thread, Fact<Double> pitch) {
		Figures figures = new Figures(work.shop().unit().value());
		double off = Math.abs(pitch.value() - thread.value().pitch());
		return Draft.of(this, Severity.ERROR, MillFacts.word(operation.block(), "G"),
				"the cutter has a pitch of " + figures.advance(pitch.value()) + ", " + thread.value().designation() + " needs "
						+ figures.advance(thread.value().pitch()) + ": the second tooth cuts " + figures.fine(off)
						+ " beside the groove, the fifth " + figures.fine(4 * off) + "; a cutter of pitch "
						+ figures.advance(thread.value().pitch())).on(operation)
				.known("pitch of the cutter", figures.advance(pitch.value()), pitch)
				.known("the callout", thread.value().designation(), thread).finding();
	}
}
