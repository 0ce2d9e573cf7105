package truelead.checker.rule.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
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
import truelead.checker.work.Survey;
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
		return Set.of(Slip.PART_UNKNOWN, Slip.OTHER_AXIS, Slip.DISTANCE_MODE, Slip.HOLE_MISSED, Slip.HOLE_LEFT_OVER, Slip.PLACE_AGAIN,
				Slip.NO_CENTRE, Slip.CENTRE_WITH_RADIUS);
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		if (operation.wanted().count().isEmpty() || !firstOfGroup(operation, work)) {
			return;
		}
		Fact<Integer> count = operation.wanted().count().get();
		boolean title = count.source() == FactSource.TITLE;
		double reach = operation.wanted().thread().map(thread -> thread.value().diameter() / 2).orElse(0.0);
		Optional<Integer> counted = title ? work.survey(operation, Threads.OF_A_KIND, kinds -> threaded(kinds.get(Threads.kind(operation)),
				operation, count.value(), reach)) : threaded(work.group(operation).stream().map(Threads::of).toList(), operation,
						count.value(), reach);
		if (counted.isEmpty() || counted.get().intValue() == count.value() || counted.get() == 0
				|| title && mayBePart(counted.get(), count.value())) {
			return;
		}
		int threaded = counted.get();
		boolean elsewhere = title && 2 * threaded < count.value();
		found.accept(Draft.of(this, elsewhere ? Severity.INFORMATION : Severity.WARNING, Location.of(operation.block()),
				threaded + (threaded == 1 ? " hole is" : " holes are") + " threaded, the " + (title ? "title" : "callout")
						+ " says " + count.value() + ": "
						+ Math.abs(threaded - count.value()) + (threaded < count.value() ? " missing" : " too many")
						+ (elsewhere ? ": made in another setting?" : "; compare the positions with the drawing, or mend the callout"))
				.known("holes called out", count.value().toString(), count)
				.programmed("holes threaded", Integer.toString(threaded), operation.block()));
	}

	/**
	 * What an operation threads, told once for all that make the same thread under one count.
	 *
	 * @param open whether a place is not known, or something was not evaluated
	 */
	private record Threads(int operation, Optional<ThreadSpec> kind, boolean open, List<Place> places) {

		/** All that a title's count is for: what makes the same thread, by whatever tool. */
		static final Survey<Threads, Map<Optional<ThreadSpec>, List<Threads>>> OF_A_KIND = new Survey<>() {

			@Override
			public void of(Work work, BiConsumer<Integer, Threads> said) {
				work.operations().forEach(operation -> said.accept(operation.tool().index(), Threads.of(operation)));
			}

			@Override
			public Map<Optional<ThreadSpec>, List<Threads>> all(List<Threads> said) {
				return said.stream().collect(Collectors.groupingBy(Threads::kind));
			}
		};

		static Threads of(ThreadingOperation operation) {
			List<Place> places = operation.holes().stream().map(Hole::place).toList();
			return new Threads(operation.index(), kind(operation), !operation.notEvaluated().isEmpty()
					|| !places.stream().allMatch(Place::known), places);
		}

		static Optional<ThreadSpec> kind(ThreadingOperation operation) {
			return operation.wanted().thread().map(fact -> fact.value().withoutClass());
		}
	}

	/** How many holes some operations thread, of which one is to tell; empty where another one tells it, or nobody can. */
	private static Optional<Integer> threaded(List<Threads> counted, ThreadingOperation operation, int count, double reach) {
		if (counted.get(0).operation() != operation.index() || counted.stream().anyMatch(Threads::open)) {
			return Optional.empty();
		}
		int threaded = (int) counted.stream().flatMap(one -> one.places().stream()).map(CountDiffers::position).distinct().count();
		return Optional.of(threaded != count && threaded <= MOST_COMPARED ? apart(counted, reach) : threaded);
	}

	/** How many places lie farther from each other than half the thread's diameter: a turn about another centre makes no other hole. */
	private static int apart(List<Threads> counted, double reach) {
		List<Place> places = new ArrayList<>();
		counted.stream().flatMap(one -> one.places().stream()).forEach(place -> {
			if (places.stream().noneMatch(other -> other.comparable(place) && other.distance(place) < Math.max(reach, SAME))) {
				places.add(place);
			}
		});
		return places.size();
	}

	/** A title counts the holes of the part: several parts have more of them, and one side of it, or one of its faces, a whole share. */
	private static boolean mayBePart(int threaded, int count) {
		return threaded > count || count % threaded == 0;
	}

	/** Places that lie within a hundredth of each other are one. */
	private static Place position(Place place) {
		return place.at(Math.rint(place.u() * 100), Math.rint(place.v() * 100));
	}
}
