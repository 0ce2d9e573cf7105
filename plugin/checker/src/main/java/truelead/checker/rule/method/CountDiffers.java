package truelead.checker.rule.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A callout names a count of holes, {@code 4X M6}, and another number of holes is threaded under it. */
public final class CountDiffers extends OperationRule {

	/** As many places as are compared with each other. */
	private static final int MOST_COMPARED = 2_000;
	/** Places that lie within this of each other are one, mm. */
	private static final double SAME = 0.01;

	public CountDiffers() {
		super("count-differs");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.PART_UNKNOWN, Slip.OTHER_AXIS, Slip.DISTANCE_MODE, Slip.HOLE_MISSED, Slip.HOLE_LEFT_OVER, Slip.PLACE_AGAIN, Slip.NO_CENTRE, Slip.CENTRE_WITH_RADIUS);
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		if (operation.wanted().count().isEmpty() || !firstOfGroup(operation, work)) {
			return;
		}
		Fact<Integer> count = operation.wanted().count().get();
		List<ThreadingOperation> counted = count.source() == FactSource.TITLE ? work.derived(ByThread.class, ByThread::of).with(operation) : work.group(operation);
		if (counted.get(0).index() != operation.index()) {
			return;
		}
		boolean open = counted.stream().anyMatch(o -> !o.notEvaluated().isEmpty() || o.holes().stream().anyMatch(hole -> !hole.place().known()));
		long threaded = counted.stream().flatMap(o -> o.holes().stream()).map(hole -> position(hole.place())).distinct().count();
		if (!open && threaded != count.value() && threaded <= MOST_COMPARED) {
			threaded = apart(operation, counted);
		}
		if (open || threaded == count.value() || threaded == 0 || count.source() == FactSource.TITLE && mayBePart(threaded, count.value())) {
			return;
		}
		boolean elsewhere = count.source() == FactSource.TITLE && 2 * threaded < count.value();
		found.accept(Draft.of(this, elsewhere ? Severity.INFORMATION : Severity.WARNING, Location.of(operation.block()),
				threaded + (threaded == 1 ? " hole is" : " holes are") + " threaded, the " + (count.source() == FactSource.TITLE ? "title" : "callout")
						+ " says " + count.value() + ": "
						+ Math.abs(threaded - count.value()) + (threaded < count.value() ? " missing" : " too many")
						+ (elsewhere ? ": made in another setting?" : "; compare the positions with the drawing, or mend the callout"))
				.known("holes called out", count.value().toString(), count)
				.programmed("holes threaded", Long.toString(threaded), operation.block()));
	}

	/** All that a title's count is for: what makes the same thread, by whatever tool. */
	private record ByThread(Map<Optional<ThreadSpec>, List<ThreadingOperation>> operations) {

		static ByThread of(Work work) {
			work.dependsOnAll();
			return new ByThread(work.operations().stream().collect(Collectors.groupingBy(ByThread::thread)));
		}

		List<ThreadingOperation> with(ThreadingOperation operation) {
			return operations.get(thread(operation));
		}

		private static Optional<ThreadSpec> thread(ThreadingOperation operation) {
			return operation.wanted().thread().map(fact -> fact.value().withoutClass());
		}
	}

	/** How many places lie farther from each other than half the thread's diameter: a turn about another centre makes no other hole. */
	private static long apart(ThreadingOperation operation, List<ThreadingOperation> counted) {
		double reach = operation.wanted().thread().map(thread -> thread.value().diameter() / 2).orElse(0.0);
		List<Place> places = new ArrayList<>();
		counted.stream().flatMap(one -> one.holes().stream()).map(Hole::place).forEach(place -> {
			if (places.stream().noneMatch(other -> other.comparable(place) && other.distance(place) < Math.max(reach, SAME))) {
				places.add(place);
			}
		});
		return places.size();
	}

	/** A title counts the holes of the part: several parts have more of them, and one side of it, or one of its faces, a whole share. */
	private static boolean mayBePart(long threaded, int count) {
		return threaded > count || count % threaded == 0;
	}

	/** Places that lie within a hundredth of each other are one. */
	private static Place position(Place place) {
		return place.at(Math.rint(place.u() * 100), Math.rint(place.v() * 100));
	}
}
