package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * In hard stock: whether the cutter climbs or cuts conventionally. Inside a hole, counter-clockwise with the spindle clockwise climbs
 * (geometry).
 */
public final class ClimbOrConventional implements Rule {

	/** Stock that makes the choice matter, HRC (common practice, no source). */
	private static final double HARD = 40;

	@Override
	public String name() {
		return "climb-or-conventional";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<Stock>> stock = operation.wanted().stock().filter(s -> s.value().hardness().orElse(0) >= HARD);
			MillPass pass = operation.finishing(operation.holes().get(0)).get(0);
			SpindleTurn spindle = pass.modal().spindle();
			if (stock.isPresent() && (spindle == SpindleTurn.CLOCKWISE || spindle == SpindleTurn.COUNTERCLOCKWISE)) {
				boolean climbs = (pass.counterclockwise() == (spindle == SpindleTurn.CLOCKWISE)) != pass.external();
				found.accept(Draft.of(this, Severity.INFORMATION, MillFacts.word(pass.block(), "G"),
						(climbs ? "the finishing pass climbs: the wall is cut from thick to thin, which hard stock ("
								: "the finishing pass cuts conventionally: the edge rubs before it cuts, which wears it fast in "
								+ "hard stock (")
								+ Figures.number(stock.get().value().hardness().getAsDouble(), 0) + " HRC)"
								+ (climbs ? " wants" : "; turn sense and axis sense round to climb")).on(operation)
						.known("stock", stock.get().value().words(), stock.get()).finding());
			}
		}
	}
}
