package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import truelead.checker.hole.Holes;
import truelead.checker.machine.Step;
import truelead.checker.program.InOrder;
import truelead.checker.program.ProgramFile;
import truelead.checker.tool.CompensationLog;
import truelead.checker.tool.ToolUse;

/**
 * Sorts by themselves the stays of tools that were followed again after an edit, with all those that an edit of them can concern, and makes
 * their operations anew.
 */
final class StaySorting {

	/** More holes and turns than these are not sorted by themselves. */
	static final int MOST = 10_000;

	/**
	 * The work after the edit.
	 *
	 * @param part  the part of it that may be judged by itself
	 * @param lines those of the stays that it is of
	 */
	record Sorted(Work work, Work part, BitSet lines) {
	}

	/** What was recorded of some stays: their holes, and the operations that are made of it. */
	private record Made(HoleStays at, List<ThreadingOperation> operations) {
	}

	private final Trace trace;
	private final WorkReader.Reading reading;
	private final Sections sections;
	private final List<ToolUse> uses;

	/** @param uses the stays of the program, those that were followed again as they are now */
	StaySorting(Trace trace, WorkReader.Reading reading, Sections sections, List<ToolUse> uses) {
		this.trace = trace;
		this.reading = reading;
		this.sections = sections;
		this.uses = uses;
	}

	/** Sorts some stays of a work; empty where they depend on more than themselves, or are too many. */
	Optional<Sorted> sort(Work before, ProgramFile program, Trace again, BitSet stays) {
		Optional<Sorted> sorted = Optional.empty();
		Optional<BitSet> told = Optional.of(stays);
		// who asks all of the program is judged too where it is told something else now
		while (told.filter(some -> !some.isEmpty()).isPresent()) {
			stays.or(told.get());
			Optional<Made> made = made(before, stays);
			Optional<List<Step.Arc>> openArcs = made.flatMap(now -> openArcs(before, trace.recorded().lines(stays), open(stays, now)));
			if (openArcs.isEmpty()) {
				return Optional.empty();
			}
			sorted = Optional.of(taken(before, program, again, stays, made.get(), openArcs.get()));
			told = before.surveys().take(stays, sorted.get().part());
		}
		return told.isPresent() ? sorted : Optional.empty();
	}

	/**
	 * Some stays with all that are at holes of theirs or beside them, or are tied to them, sorted by themselves; empty where they depend on
	 * more, or are too many.
	 */
	private Optional<Made> made(Work before, BitSet stays) {
		int count = -1;
		Made now = null;
		while (stays.cardinality() != count) {
			whole(stays);
			count = stays.cardinality();
			Recorded some = trace.recorded().of(stays);
			if (some.size() > MOST) {
				return Optional.empty();
			}
			Sorting sorting = reading.sorted(some, uses);
			Optional<List<ThreadingOperation>> made = reading.operations(sorting).insteadOf(operations(before, stays));
			if (made.isEmpty()) {
				return Optional.empty();
			}
			now = new Made(new HoleStays(sorting.holes(), made.get(), uses.size()), made.get());
			sections.widen(stays, now.at(), new Ties(uses, stays, made.get()));
			sections.widen(stays);
		}
		return Optional.of(now).filter(some -> Sectioned.is(some.operations(), some.at().holes()));
	}

	/** The open arcs of some stays. */
	private List<Step.Arc> open(BitSet stays, Made now) {
		return WorkReader.Reading.openArcs(trace.recorded().of(stays).openArcs(), now.operations());
	}

	/** Takes stays as they are sorted now in place of what they were. */
	private Sorted taken(Work before, ProgramFile program, Trace again, BitSet stays, Made now, List<Step.Arc> openArcs) {
		sections.take(stays, now.at());
		List<ThreadingOperation> operations = new ArrayList<>(before.operations());
		now.operations().forEach(operation -> operations.set(operation.index(), operation));
		Recorded all = trace.recorded();
		Supplier<Holes> holes = new Later<>(() -> reading.sorted(all, uses).holes());
		Work work = before.by(program, uses, holes, List.copyOf(operations), course(before, again), now.at().holes().planes(), openArcs);
		return new Sorted(work, work.part(stays, now.operations(), now.at().holes(), open(stays, now)), all.lines(stays));
	}

	/** The operations of some stays, as they were. */
	private static List<ThreadingOperation> operations(Work before, BitSet stays) {
		List<ThreadingOperation> all = before.operations();
		List<ThreadingOperation> some = new ArrayList<>();
		for (int from = stays.nextSetBit(0); from >= 0; from = stays.nextSetBit(stays.nextClearBit(from))) {
			int first = InOrder.before(all, operation -> operation.tool().index(), from);
			some.addAll(all.subList(first,
					Math.max(first, InOrder.before(all, operation -> operation.tool().index(), stays.nextClearBit(from)))));
		}
		return some;
	}

	/**
	 * The open arcs of the program, those in some lines being these; empty where there may be more of them, or of events or compensation,
	 * than are kept.
	 */
	private Optional<List<Step.Arc>> openArcs(Work before, BitSet lines, List<Step.Arc> here) {
		List<Step.Arc> all = new ArrayList<>(here);
		before.trouble().openArcs().stream().filter(arc -> !lines.get(arc.block().line())).forEach(all::add);
		all.sort(Comparator.comparingInt(arc -> arc.block().line()));
		Recorded now = trace.recorded();
		boolean counted = now.openArcs().size() < OpenArcs.MOST && now.compensation().size() < CompensationLog.MOST
				&& now.events().size() < Recorder.MOST_EVENTS;
		return counted ? Optional.of(all) : Optional.empty();
	}

	/** The course with the events of the stays that were followed again. */
	private Course course(Work before, Trace again) {
		List<TimedEvent> events = new ArrayList<>(before.course().events());
		List<TimedEvent> place = events.subList(InOrder.before(events, event -> event.tool().index(), again.firstStay()),
				InOrder.before(events, event -> event.tool().index(), again.behind()));
		place.clear();
		List<TimedEvent> now = new ArrayList<>();
		again.recorded().events().forEach(event -> now.add(new TimedEvent(event.order(), event.event(), uses.get(event.tool().index()))));
		place.addAll(now);
		return new Course(events, CompensationLog.with(trace.recorded().compensation(), uses), before.course().subprogramAlone(),
				before.course().toItsEnd(), List.of(), List.of());
	}

	/** Takes all stays that are followed together. */
	private void whole(BitSet stays) {
		for (int stay = stays.nextSetBit(0); stay >= 0; stay = stays.nextSetBit(trace.to(stay))) {
			stays.set(trace.from(stay), trace.to(stay));
		}
	}
}
