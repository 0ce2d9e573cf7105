package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.hole.PlaceSet;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Holes made with those that are threaded, by the same tools in the same blocks to the same depth, and never threaded. Holes that a tool
 * touches otherwise, to ream or to counterbore them, are another kind of hole.
 */
public final class HoleSkipped extends HoleRule {

	/** Threads that are as large but for rounding, mm. */
	private static final double SAME = 0.001;
	/** Plain holes are drilled in steps of half a mm or 1/32 in; 6.8, 4.2 and #7 are drilled for threads (common practice, no source). */
	private static final double STEP_MM = 0.5;
	private static final double STEP_INCH = 25.4 / 32;
	private static final double EVEN = 0.006;

	/**
	 * Holes that are left, up to which each is looked at by itself; to set up all places takes as long as many of them (a choice of ours).
	 */
	private static final int FEW = 50;
	/** Strokes of another tap that are looked at one by one: where there are more, an edit would wait for them (a choice of ours). */
	private static final int MANY = 2000;

	public HoleSkipped() {
		super("hole-skipped");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.HOLE_LEFT_OVER);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.PART_UNKNOWN, Slip.DISTANCE_MODE, Slip.OTHER_THREADS_HOLE, Slip.HOLE_MISSED, Slip.BESIDE_HOLE,
				Slip.BLOCK_LEFT_OUT);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (!work.firstOfGroup(operation) || !work.evaluated() || work.unthreaded().isEmpty()) {
			return;
		}
		Map<String, Integer> threaded = new HashMap<>();
		Set<String> ways = new HashSet<>();
		for (ThreadingOperation one : work.group(operation)) {
			Visits those = Visits.of(one, work);
			for (int kind = 0; kind < those.typical().size(); kind++) {
				Visit visit = those.typical().get(kind);
				if (visit.hole().madeBefore(visit.order())) {
					threaded.merge(LeftHoles.making(visit.hole().cuts(), visit.order(), true), those.count(kind), Integer::sum);
					ways.add(LeftHoles.making(visit.hole().cuts(), visit.order(), false));
				}
			}
		}
		int count = threaded.values().stream().mapToInt(Integer::intValue).sum();
		List<Cut> skipped = new ArrayList<>();
		LeftHoles left = work.derived(LeftHoles.class, LeftHoles::new);
		List<Hole> elsewhere = left.made(ways);
		// where drill and tap have a cycle of its own at every hole, its block says nothing
		boolean ownBlocks = count > 1 && threaded.size() == count && work.group(operation).size() == count;
		List<Hole> alike = ownBlocks ? elsewhere : left.made(threaded.keySet());
		Optional<PlaceSet> visited = alike.size() <= FEW ? Optional.empty() : Optional.of(new PlaceSet(visited(operation, work)));
		for (Hole hole : alike) {
			if (!visited.map(places -> places.beside(hole.place(), diameter(operation) / 2))
					.orElseGet(() -> beside(work, hole, operation))) {
				skipped.add(hole.making().get(0));
			}
		}
		int like = skipped.isEmpty() || count > 1 && skipped.size() < count ? count : alike(threaded.keySet(), work);
		if ((like > count || !skipped.isEmpty() && work.operationsOfProgram().size() <= FEW) && other(operation, threaded.keySet(), work)) {
			return;
		}
		List<Cut> perhaps = List.of();
		if (skipped.isEmpty() || (like == 1 || skipped.size() >= like) && !meant(operation, skipped, count) && !(skipped.size() <= like
				&& othersLeaveNone(operation, work))) {
			perhaps = List.copyOf(skipped);
			skipped.clear();
			List<Hole> twins = twins(operation, elsewhere, work);
			boolean counted = operation.wanted().count().filter(all -> all.value() == count + elsewhere.size()).isPresent();
			(twins.isEmpty() && counted ? elsewhere : twins).forEach(hole -> skipped.add(hole.making().get(0)));
		}
		if (skipped.isEmpty()) {
			mirrored(operation, elsewhere, work).forEach(hole -> skipped.add(hole.making().get(0)));
		}
		boolean sure = !skipped.isEmpty();
		if (!sure && perhaps.size() <= like) {
			skipped.addAll(perhaps);
		}
		int again = skipped.isEmpty() ? 0 : again(operation, work) + astray(operation, work);
		if (!skipped.isEmpty() && work.course().toItsEnd() && skipped.size() > again && Unread.from(operation.block(), work) == 0
				&& more(operation, skipped.size(), work)) {
			Draft draft = draft(operation, skipped, like == count ? count + " that " + operation.tool().name() + " threads" : like
					+ " that are threaded", sure, new Figures(visits.get(0).modal().unit()));
			found.accept(again > 0 ? draft.from("places threaded again", String.valueOf(again), "counted").tells(Slip.POSITION_LEFT_OUT)
					: draft);
		}
	}

	/** How many holes made in some ways all the tools of the program thread, as where taps of both hands share a drill. */
	private static int alike(Set<String> ways, Work work) {
		Set<Place> places = new HashSet<>();
		for (ThreadingOperation one : work.operations()) {
			Visits.of(one, work).where(visit -> ways.contains(LeftHoles.making(visit.hole().cuts(), visit.order(), true)))
					.forEach(visit -> places.add(visit.hole().place()));
		}
		return places.size();
	}

	/** Whether an earlier operation threads holes made in these ways: it tells of those that are left. */
	private static boolean other(ThreadingOperation operation, Set<String> ways, Work work) {
		return work.operations().stream().anyMatch(one -> one.index() < operation.index() && one.group() != operation.group()
				&& Visits.of(one, work).typical().stream().anyMatch(visit ->
						ways.contains(LeftHoles.making(visit.hole().cuts(), visit.order(), true))));
	}

	/**
	 * Whether holes are meant for threads, however many are left: a callout counts them, or they are drilled in a size that nobody drills
	 * for anything else.
	 */
	private static boolean meant(ThreadingOperation operation, List<Cut> skipped, int threaded) {
		boolean counted = operation.wanted().count().filter(count -> count.value() == threaded + skipped.size()).isPresent();
		return counted || skipped.get(0).diameter().filter(Fact::stated).map(Fact::value).filter(drill -> !even(drill, STEP_MM)
				&& !even(drill, STEP_INCH)).isPresent();
	}

	/**
	 * Whether the other taps of the program, several holes of them, thread all that their drills make: a shop that leaves none for other
	 * things.
	 */
	private static boolean othersLeaveNone(ThreadingOperation operation, Work work) {
		if (work.operationsOfProgram().size() > FEW) {
			return false;
		}
		int group = operation.group();
		return work.survey(operation, OtherHoles.THREADED,
				all -> all.stream().filter(one -> one.group() != group).noneMatch(OtherHoles.Threaded::leaves) && all.stream().filter(one ->
						one.group() != group).mapToInt(OtherHoles.Threaded::holes).sum() > 1);
	}

	private static boolean even(double diameter, double step) {
		return Math.abs(diameter / step - Math.rint(diameter / step)) * step < EVEN;
	}

	/**
	 * Whether more holes are left than places of the group have none: those were meant for as many of the holes, and are named where they
	 * stand.
	 */
	private static boolean more(ThreadingOperation operation, int skipped, Work work) {
		if (skipped <= missed(work.group(operation), work)) {
			// answered by the group alone, so that an edit of one hole of many asks no more
			return false;
		}
		double size = diameter(operation);
		int group = operation.group();
		return work.survey(operation, OtherHoles.MISSED, all -> skipped > all.stream().filter(one -> one.group() == group
				|| Math.abs(one.diameter() - size) < SAME).mapToInt(OtherHoles.Missed::places).sum());
	}

	private static long missed(List<ThreadingOperation> operations, Work work) {
		return operations.stream().mapToLong(one -> Visits.of(one, work).where(visit -> !visit.hole().madeBefore(visit.order()))
				.size()).sum();
	}

	private static Set<Place> visited(ThreadingOperation operation, Work work) {
		Set<Place> visited = new HashSet<>();
		work.group(operation).forEach(one -> Visits.of(one, work).forEach(visit -> visited.add(visit.hole().place())));
		return visited;
	}

	/**
	 * Of holes made in the way of the threaded ones those that the same part has on another side or under another work offset, where these
	 * are threaded.
	 */
	private static List<Hole> twins(ThreadingOperation operation, List<Hole> holes, Work work) {
		if (holes.isEmpty() || work.inOneFrame()) {
			return List.of();
		}
		ThreadedPlaces threaded = new ThreadedPlaces(visited(operation, work));
		return holes.stream().filter(hole -> threaded.twin(hole.place())).toList();
	}

	/** Of the holes that a mirror in force has made all, where each is the image of a threaded one at the same line; else none. */
	private static List<Hole> mirrored(ThreadingOperation operation, List<Hole> holes, Work work) {
		List<Hole> images = holes.stream().filter(hole -> hole.making().get(0).step().modal().mirrored()).toList();
		return !images.isEmpty() && new ThreadedPlaces(visited(operation, work)).mirror(images.stream().map(Hole::place).toList())
				? images : List.of();
	}

	/** How often the tool comes back to a place that it has threaded: as many as are skipped, and the places of those are typed wrong. */
	private static int again(ThreadingOperation operation, Work work) {
		if (operation instanceof Tapping tapping && work.group(operation).size() == 1) {
			return tapping.method().taps() ? tapping.strokes().size() - tapping.holes().size() : 0;
		}
		int strokes = 0;
		Set<Place> places = new HashSet<>();
		for (ThreadingOperation one : work.group(operation)) {
			if (one instanceof Tapping tapping && tapping.method().taps()) {
				strokes += tapping.strokes().size();
				tapping.holes().forEach(hole -> places.add(hole.place()));
			}
		}
		return strokes - places.size();
	}

	/** How often another tap of the size goes to a place that this one threads: that one has missed its own hole. */
	private static int astray(ThreadingOperation operation, Work work) {
		if (work.operationsOfProgram().size() > FEW) {
			return 0;
		}
		List<Tapping> others = work.operations().stream().filter(one -> one.tool().index() != operation.tool().index()
				&& Math.abs(diameter(one) - diameter(operation)) < SAME).filter(Tapping.class::isInstance).map(Tapping.class::cast)
				.filter(tapping -> tapping.strokes().size() <= MANY).toList();
		if (others.isEmpty()) {
			return 0;
		}
		List<Visits> own = work.group(operation).stream().map(one -> Visits.of(one, work)).toList();
		return others.stream().mapToInt(tapping -> (int) tapping.strokes().stream()
				.filter(stroke -> own.stream().anyMatch(visits -> visits.at(stroke.place()))).count()).sum();
	}

	/**
	 * Whether the operation visits a place that belongs to a hole beside it: asked of the hole's surroundings, for few holes among many.
	 */
	private static boolean beside(Work work, Hole hole, ThreadingOperation operation) {
		double reach = diameter(operation) / 2;
		return work.holesNear(hole.place(), reach).stream().map(Hole::place).filter(near -> !near.equals(hole.place())
				&& near.distance(hole.place()) < reach).anyMatch(near -> work.group(operation).stream()
						.anyMatch(one -> Visits.of(one, work).at(near)));
	}

	/** A warning where the holes are surely meant for threads; else they may as well be for dowels or to pass a screw. */
	private Draft draft(ThreadingOperation operation, List<Cut> skipped, String threaded, boolean sure, Figures figures) {
		Cut first = skipped.get(0);
		String message = "the hole at " + at(first.place(), figures) + " is drilled with the " + threaded + ", and never threaded"
				+ (skipped.size() > 1 ? ", nor are " + (skipped.size() - 1) + " more" : "")
				+ (sure ? "; its position here, or a drilling block of its own" : ": for something else?");
		Draft draft = Draft.of(this, sure ? Severity.WARNING : Severity.INFORMATION, Location.of(operation.block()), message)
				.programmed("place", at(first.place(), figures), first.block()).related(first.block(), "the block that makes the hole")
				.from("threaded holes of the pattern", threaded.substring(0, threaded.indexOf(' ')), "counted");
		skipped.stream().skip(1).limit(10).forEach(cut -> draft.related(cut.block(), "also never threaded"));
		return draft;
	}
}
