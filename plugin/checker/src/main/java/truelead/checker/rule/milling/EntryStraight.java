package truelead.checker.rule.milling;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The cutter goes straight into the wall at depth, or its lead-in arc meets the wall at an angle: it grabs there and leaves a dwell mark.
 */
public final class EntryStraight implements Rule {

	/** An arc that ends within this of the helix's direction runs into the wall smoothly; the rest is rounding of the coordinates. */
	private static final double SMOOTH = Math.toRadians(10);
	/**
	 * What a straight entry may take of the wall, in pitches, about two thirds of the height of a thread, as in loops that step the radius
	 * (common practice, no source).
	 */
	private static final double LIGHT = 0.36;
	/** How much wider than its hole a cutter is that hits the edge, mm (common practice, no source). */
	private static final double CLEAR = 0.1;
	/** How much less deep a pass is that a pass before it leaves something to, mm. */
	private static final double ROUGHED = 0.01;
	/** A straight move along the wall, as it is written to start compensation, is no plunge. */
	private static final double ALONG = Math.toRadians(30);

	@Override
	public String name() {
		return "entry-straight";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_PLANE, Slip.UNIT_WORD, Slip.HOLE_MISSED, Slip.BESIDE_HOLE, Slip.NO_CENTRE, Slip.CENTRE_WITH_RADIUS,
				Slip.TURNED_ROUND, Slip.CUTTER_TOO_BIG, Slip.NO_COMPENSATION);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			if (operation.wanted().statedThread().isPresent()) {
				MillFacts.look(operation.passes(), (pass, wrong) -> look(operation, pass, wrong), found);
			}
		}
	}

	/** Whether the thread is cut in several steps outwards and this one takes little: beside the pass before, or the hole. */
	private static boolean light(ThreadMilling operation, MillPass pass) {
		List<MillPass> here = operation.passesAt(pass.hole());
		double deepest = here.stream().mapToDouble(MillPass::radius).max().orElse(0);
		double before = here.stream().filter(other -> other.order() < pass.order()).mapToDouble(MillPass::radius).max().orElse(Double.NaN);
		double least = here.stream().mapToDouble(MillPass::radius).min().orElse(0);
		double pitch = operation.wanted().statedThread().orElseThrow().value().pitch();
		if (Double.isNaN(before)) {
			OptionalDouble cutter = MillFacts.cutter(operation);
			Optional<Double> hole = pass.hole()
					.threadedBefore(pass.order(), operation.wanted().statedThread().orElseThrow().value().diameter()).flatMap(Cut::diameter)
					.map(Fact::value);
			before = cutter.isPresent() && hole.isPresent() ? (hole.get() - cutter.getAsDouble()) / 2 : pass.radius();
		}
		return deepest - least > 1e-3 && pass.radius() - before <= LIGHT * pitch;
	}

	/** The cutter goes at rapid from within the hole to the helix's start at depth, where nothing was cut before. */
	private Optional<Step.Move> atRapid(ThreadMilling operation, MillPass pass) {
		HelixForm form = HelixForm.of(pass);
		boolean cut = operation.passesAt(pass.hole()).stream().anyMatch(other -> other.order() < pass.order()
				&& other.radius() > pass.radius() - ROUGHED);
		return cut || pass.compensation() != Compensation.OFF ? Optional.empty()
				: pass.rapidIn().filter(move -> !pass.elsewhere(move.from()) && form.fromAxis(move.to()) > pass.radius() - ROUGHED
						&& form.fromAxis(move.from()) < pass.radius() / 2
						&& pass.below(move.to().along(pass.axis()), operation.wanted().surface().value()) > 0);
	}

	private Finding rapid(ThreadMilling operation, MillPass pass, Step.Move move) {
		Figures figures = new Figures(pass.modal().unit());
		String deep = figures.length(pass.below(move.to().along(pass.axis()), operation.wanted().surface().value()));
		return Draft.of(this, Severity.ERROR, MillFacts.word(move.block(), "XYZ"), "the cutter goes into the wall at rapid, " + deep
				+ " below the surface: it breaks; lead in on an arc of half a turn that climbs with the thread").on(operation)
				.programmed("level of the move", deep + " below the surface", move.block()).related(pass.block(), "the helix").finding();
	}

	/** The cutter comes down at the helix's start, where it does not fit into the hole. */
	private void downTheWall(ThreadMilling operation, MillPass pass, Consumer<Finding> found) {
		OptionalDouble cutter = MillFacts.cutter(operation);
		Optional<Fact<Double>> hole = pass.hole()
				.threadedBefore(pass.order(), operation.wanted().statedThread().orElseThrow().value().diameter()).flatMap(Cut::diameter)
				.filter(Fact::stated);
		boolean followed = operation.passesAt(pass.hole()).stream().anyMatch(other -> other.order() < pass.order());
		double reach = 2 * HelixForm.of(pass).fromAxis(pass.first().from()) + cutter.orElse(Double.NaN);
		if (hole.isEmpty() || followed || pass.compensation() != Compensation.OFF || pass.besideHole() > 0
				|| !(reach > hole.get().value() + CLEAR)) {
			return;
		}
		Figures figures = new Figures(pass.modal().unit());
		found.accept(Draft.of(this, Severity.WARNING, MillFacts.word(pass.block(), "G"),
				"the cutter comes down at the wall: its teeth reach a diameter of " + figures.length(reach) + ", the hole is "
				+ figures.length(hole.get().value()) + ": it hits the edge on the way down; go down in the middle and lead in on an arc")
				.on(operation).programmed("reach of the teeth", figures.length(reach), pass.block())
				.known("hole diameter", figures.length(hole.get().value()), hole.get()).finding());
	}

	/** Whether the move's place is worked out, as in a macro, whose writer has thought of the way in. */
	private static boolean computed(Step step) {
		return step.block().file().text().block(step.block().line()).words().stream()
				.anyMatch(word -> (word.address() == 'X' || word.address() == 'Y') && !word.literal());
	}

	/** Whether the cutter leaves as it came. */
	private static boolean straightOut(MillPass pass) {
		return pass.exit().stream().noneMatch(Step.Arc.class::isInstance);
	}

	private void look(ThreadMilling operation, MillPass pass, Consumer<Finding> found) {
		if (MillFacts.ringBeside(operation, pass)) {
			return;
		}
		double surface = operation.wanted().surface().value();
		// a pass that begins above the surface and works down meets the wall from above, without an entry at depth
		boolean atDepth = !pass.external() && HelixForm.of(pass).deepest(surface) > 0 && pass.below(pass.startLevel(), surface) > 1e-6;
		Optional<Step> last = Approach.last(pass);
		// with a path of a few hundredths the angle is rounding
		if (atDepth && last.isEmpty()) {
			atRapid(operation, pass).ifPresentOrElse(move -> found.accept(rapid(operation, pass, move)),
					() -> downTheWall(operation, pass, found));
		}
		if (!atDepth || last.isEmpty() || pass.radius() < 10 * HelixForm.of(pass).open()) {
			return;
		}
		double kink = Approach.kink(last.get(), pass);
		boolean arc = last.get() instanceof Step.Arc;
		if (Double.isNaN(kink) || kink <= (arc ? SMOOTH : ALONG)) {
			return;
		}
		String degrees = Figures.number(Math.toDegrees(kink), 0);
		String message = arc ? "the lead-in arc meets the wall at " + degrees + " degrees; end it along the helix, at 0 degrees"
				: "the cutter plunges straight into the wall, at " + degrees
				+ " degrees to the helix; lead in on an arc of half a turn that climbs with the thread";
		boolean meant = light(operation, pass) || computed(last.get()) && straightOut(pass);
		Draft draft = Draft.of(this, meant ? Severity.INFORMATION : Severity.WARNING, MillFacts.word(last.get().block(), "XYZ"), message)
				.on(operation).programmed("angle of entry", degrees + " degrees", last.get().block());
		found.accept((arc ? draft.tells(Slip.AT_AN_ANGLE) : draft).finding());
	}
}
