package truelead.checker.rule.hole;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A hole was made near the place, nearer than half the thread's diameter, but off by more than the tolerance. */
public final class HoleOffPosition extends HoleRule {

	/** Lines from a block to the next one that are looked at, those without words between them. */
	private static final int APART = 20;

	public HoleOffPosition() {
		super("hole-off-position");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.BESIDE_HOLE);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.LEFT_ON, Slip.OTHER_AXIS, Slip.UNIT_WORD, Slip.DISTANCE_MODE, Slip.STEPS_ADD_UP, Slip.NO_CENTRE,
				Slip.CENTRE_WITH_RADIUS, Slip.TURNED_ROUND, Slip.LEAD_OUT_MISSING, Slip.ABOVE_WORK, Slip.BLOCK_LEFT_OUT);
	}

	/** Whether a place has X or Y from the next block above it, of one without a hole: the slip there takes it along. */
	private static boolean follows(Visit visit, Visit missed) {
		Place place = visit.hole().place();
		Place before = missed.hole().place();
		return missed.order() < visit.order() && place.comparable(before) && next(missed.block(), visit.block())
				&& (place.u() == before.u() && !says(visit.block(), place.plane().first())
						|| place.v() == before.v() && !says(visit.block(), place.plane().second()));
	}

	private static boolean next(BlockRef block, BlockRef later) {
		return block.file().name().equals(later.file().name()) && block.line() < later.line() && later.line() - block.line() <= APART
				&& IntStream.range(block.line() + 1, later.line()).allMatch(line -> later.file().text().block(line).words().isEmpty());
	}

	private static boolean says(BlockRef block, int axis) {
		return block.file().text().block(block.line()).words().stream().anyMatch(word -> word.address() == "XYZ".charAt(axis));
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		double diameter = diameter(operation);
		List<Visit> missing = HoleState.MISSING.of(visits, work, diameter);
		List<Visit> off = HoleState.BESIDE.of(visits, work, diameter).stream()
				.filter(visit -> missing.stream().noneMatch(missed -> follows(visit, missed))).toList();
		if (off.isEmpty()) {
			return;
		}
		Visit first = off.get(0);
		Hole hole = HoleState.beside(work, first, diameter).orElseThrow();
		Figures figures = new Figures(first.modal().unit());
		BlockRef made = hole.making().get(0).block();
		boolean threadsBeside = first.off() > 0 && hole == first.hole();
		double distance = threadsBeside ? first.off() : hole.place().distance(first.hole().place());
		String message = operation.tool().name() + (threadsBeside ? " threads about a centre beside the hole"
				: " goes in at " + at(first.hole().place(), figures)) + ", the hole is at " + at(hole.place(), figures) + ": "
				+ figures.fine(distance) + " off" + more(off) + "; the same position for both";
		Draft draft = Draft.of(this, Severity.WARNING, Location.of(first.block()), message)
				.programmed("place of the thread", at(first.hole().place(), figures), first.block())
				.programmed("place of the hole", at(hole.place(), figures), made).related(made, "the block that makes the hole")
				.from("same place", "within " + figures.fine(work.shop().profile().positionTolerance()), "machine profile "
						+ work.shop().profile().name());
		found.accept(others(draft, off, "also off its hole"));
	}
}
