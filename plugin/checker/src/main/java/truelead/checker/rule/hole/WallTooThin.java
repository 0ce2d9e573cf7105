package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Less than a quarter of the drill's diameter is left below a blind hole. */
public final class WallTooThin extends HoleRule {

	/** Least bottom, as a part of the drill's diameter (common practice, no source). */
	private static final double LEAST = 0.25;

	public WallTooThin() {
		super("wall-too-thin");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD, Slip.HOLE_SHALLOW);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		Optional<Fact<Double>> wall = operation.wanted().wall().filter(Fact::stated);
		boolean through = operation.wanted().through().map(Fact::value).orElse(true);
		// where the R plane is taken for the surface, the hole is less deep than it seems
		boolean guessed = operation.wanted().surface().source() == FactSource.IMPLIED;
		if (wall.isEmpty() || guessed || through && operation.wanted().through().map(Fact::stated).orElse(false)) {
			return;
		}
		for (Visit visit : visits.typical()) {
			Optional<Cut> cut = visit.hole().deepestBefore(visit.order()).filter(c -> c.diameter().isPresent());
			if (cut.isPresent()) {
				double diameter = cut.get().diameter().get().value();
				double left = wall.get().value() - cut.get().direction() * (cut.get().tip() - operation.wanted().surface().value());
				if (left > 0 && left < LEAST * diameter - 1e-6) {
					found.accept(draft(operation, visit, cut.get(), wall.get(), left, diameter));
					return;
				}
			}
		}
	}

	private Draft draft(ThreadingOperation operation, Visit visit, Cut cut, Fact<Double> wall, double left, double diameter) {
		Figures figures = new Figures(visit.modal().unit());
		String message = "the drill's point leaves " + figures.length(left) + " of a wall of " + figures.length(wall.value())
				+ ", less than a quarter of its " + figures.length(diameter) + ": the bottom bulges or breaks through; "
				+ figures.length(Math.floor((wall.value() - LEAST * diameter) * 10) / 10) + " deep at most";
		return Draft.of(this, Severity.WARNING, Location.of(cut.block()), message).known("wall", figures.length(wall.value()), wall)
				.known("drill", figures.fine(diameter), cut.diameter().orElseThrow())
				.known("surface", figures.length(operation.wanted().surface().value()), operation.wanted().surface())
				.programmed("depth of the drill's tip", figures.length(wall.value() - left), cut.block())
				.from("least bottom", "a quarter of the drill's diameter", "common practice, no source");
	}
}
