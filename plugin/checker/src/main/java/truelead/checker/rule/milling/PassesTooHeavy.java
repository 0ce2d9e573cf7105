package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The full profile in one pass, or most of it in the first one on a lathe: hard stock wants two or three; in other stock a pitch above 1.5
 * mm is worth a thought (common practice, no source).
 */
public final class PassesTooHeavy implements Rule {

	private static final double HARD = 40;
	private static final double COARSE = 1.5;

	@Override
	public String name() {
		return "passes-too-heavy";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread();
			if (thread.isPresent() && operation.cutAtOnce().size() == thread.get().value().starts()) {
				look(work, operation, thread.get(), found);
			}
		}
		work.course().singlePoints().forEach(turned -> TurnedDepth.of(this, work, turned).map(Draft::finding).ifPresent(found));
	}

	private void look(Work work, ThreadMilling operation, Fact<ThreadSpec> thread, Consumer<Finding> found) {
		Optional<Fact<Stock>> stock = operation.wanted().stock();
		boolean hard = stock.isPresent() && stock.get().value().hardness().orElse(0) >= HARD;
		if (!hard && thread.value().pitch() <= COARSE + 1e-6) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		double height = thread.value().system().profileOverPitch() * thread.value().pitch();
		String message = "the whole profile, " + figures.fine(height) + " deep, is cut in one pass"
				+ (hard ? " in stock of " + Figures.number(stock.orElseThrow().value().hardness().getAsDouble(), 0) + " HRC" : "")
				+ "; two passes take " + figures.fine(height * 0.65) + " and " + figures.fine(height * 0.35);
		Draft draft = Draft.of(this, hard ? Severity.WARNING : Severity.INFORMATION, MillFacts.word(operation.block(), "G"), message)
				.on(operation).known("the callout", thread.value().designation(), thread)
				.from("height of the profile", figures.fine(height), Figures.number(thread.value().system().profileOverPitch(), 4)
						+ " P, the form of the thread's standard");
		stock.filter(s -> hard).ifPresent(s -> draft.known("stock", s.value().words(), s));
		found.accept(draft.finding());
	}
}
