package truelead.checker.rule.method;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.TapStyle;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The kind of tap does not suit the hole: a spiral point pushes its chips ahead into a blind hole's bottom; a spiral flute deep in hard
 * steel chips its edges (common practice, no source).
 */
public final class TapWrongForHole extends OperationRule {

	private static final double HARD = 35;
	private static final double DEEP = 1.5;

	public TapWrongForHole() {
		super("tap-wrong-for-hole");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		if (!(operation instanceof Tapping)) {
			return;
		}
		ToolFacts tool = operation.tool().facts();
		Optional<Fact<Boolean>> blind = operation.wanted().through().filter(t -> !t.value() && t.stated());
		if (ToolName.spiralPoint(tool) && blind.isPresent()) {
			found.accept(Draft.of(this, Severity.WARNING, Location.of(operation.block()),
					"a spiral point tap pushes its chips ahead and the hole is blind: they pack at the bottom and the tap breaks; a spiral "
					+ "flute or a forming tap").known("blind", "yes", blind.get()));
		}
		Optional<Fact<Stock>> hard = operation.wanted().stock()
				.filter(s -> s.value().group().ferrous() && s.value().hardness().orElse(0) > HARD);
		double depth = depth(operation);
		double diameter = operation.wanted().thread().map(t -> t.value().diameter()).orElse(Double.NaN);
		if (tool.has(TapStyle.SPIRAL_FLUTE) && hard.isPresent() && depth > DEEP * diameter) {
			found.accept(Draft.of(this, Severity.WARNING, Location.of(operation.block()),
					"a spiral flute tap goes " + figures(work).length(depth) + " deep, " + Figures.number(depth / diameter, 1) + " D, in "
							+ hard.get().value().words() + ": its edges chip; a straight flute tap for hard steel, or a thread mill")
					.known("stock", hard.get().value().words(), hard.get())
					.from("limit", "1.5 D above 35 HRC", "common practice, no source"));
		}
	}
}
