package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import truelead.checker.comment.ChangedLines;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.tool.CompensationLog;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/** The work of a program that is being edited: after an edit only those stays of tools are followed again that it can change. Not for several threads at once. */
public final class EditedWork {

	/** More holes and turns than these are not sorted by themselves. */
	private static final int MOST = 10_000;
	/** Where a tool's stay has fewer, it is sorted again as a whole, with others that have to do with it. */
	private static final int LONG_STAY = 200;

	/**
	 * What an edit has changed.
	 *
	 * @param lines the lines that differ
	 * @param part  the part of the work that is another one now; empty where it makes the same holes and threads by the same words
	 */
	public record Changed(ChangedLines lines, Optional<Part> part) {
	}

	/**
	 * A part of the work that may be judged by itself.
	 *
	 * @param lines those of the stays of its tools
	 * @param all   whether it is the whole work, all of which may be another one
	 */
	public record Part(Work work, BitSet lines, boolean all) {
	}

	private final Trace trace;
	private final WorkReader.Reading reading;
	private Work work;
	/** The holes after edits of single blocks, known when they are first needed; such edits and those of {@link #sections} are not mixed. */
	private Optional<EditedHoles> holes = Optional.empty();
	private boolean apart = true;
	/** Known when they are first needed; of no use where a program has none. */
	private Optional<Sections> sections = Optional.empty();
	private boolean sectioned = true;

	private EditedWork(Trace trace, WorkReader.Reading reading) {
		this.trace = trace;
		this.reading = reading;
		this.work = reading.work();
	}

	/** The work of a program, followed from its first block to its last. */
	public static EditedWork of(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, Budget budget) {
		Trace trace = Trace.of(program, folder, profile, budget);
		return new EditedWork(trace, new WorkReader.Reading(program, job, profile, trace.recorder()));
	}

	/** The work. */
	public Work work() {
		return work;
	}

	/** Takes another text of the program; empty where it may be another work in all, and has to be followed from its beginning. */
	public Optional<Changed> follow(ProgramFile program, ProgramFolder folder, Budget budget) {
		Optional<ChangedLines> changed = ChangedLines.between(work.shop().program().text(), program.text());
		if (changed.isEmpty()) {
			return Optional.empty();
		}
		if (changed.get().last() < 0) {
			work = work.by(program);
			return changed.map(lines -> new Changed(lines, Optional.empty()));
		}
		Optional<Trace> within = trace.within(program, folder, work.shop().profile(), changed.get(), budget).filter(this::sound);
		if (within.isPresent()) {
			Recorded here = trace.part(within.get());
			if (!within.get().recorded().names(changed.get()) && here.same(within.get().recorded())) {
				trace.takeRests(within.get());
				work = work.by(program);
				return changed.map(lines -> new Changed(lines, Optional.empty()));
			}
			if (changed.get().numbersAlone(work.shop().program().text(), program.text()) && here.sameButHoles(within.get().recorded())) {
				Optional<Part> part = holes(program, within.get());
				if (part.isPresent()) {
					return Optional.of(new Changed(changed.get(), part));
				}
			}
		}
		if (holes.isPresent()) {
			return Optional.empty();
		}
		Optional<Trace> again = trace.again(program, folder, work.shop().profile(), changed.get(), budget).filter(this::sound);
		if (again.isEmpty()) {
			return Optional.empty();
		}
		Recorded before = trace.recorded().stays(again.get().firstStay(), again.get().behind());
		if (!again.get().recorded().names(changed.get()) && before.same(again.get().recorded())) {
			trace.takeBeginnings(again.get());
			work = work.by(program);
			return changed.map(lines -> new Changed(lines, Optional.empty()));
		}
		boolean apart = before.openArcs().isEmpty() && again.get().recorded().size() <= MOST
				&& changed.get().numbersAlone(work.shop().program().text(), program.text());
		return apart ? part(program, again.get()).map(part -> new Changed(changed.get(), Optional.of(part))) : Optional.empty();
	}

	/** The work with other holes where a part of a stay was followed again; it has all operations. */
	private Optional<Part> holes(ProgramFile program, Trace again) {
		if (apart && holes.isEmpty()) {
			if (trace.recorded().stays(again.firstStay(), again.behind()).size() < LONG_STAY) {
				return Optional.empty();
			}
			holes = EditedHoles.of(work, reading);
			apart = holes.isPresent();
		}
		Recorded before = trace.recorded();
		EditedPasses.Part part = trace.edited(again, work.tools().get(again.firstStay()));
		boolean counted = before.openArcs().size() < Recorder.MOST_OPEN_ARCS && before.compensation().size() < CompensationLog.MOST;
		if (!apart || !counted || !holes.get().change(part, before)) {
			return Optional.empty();
		}
		trace.takePart(again);
		EditedHoles now = holes.get();
		Recorded all = trace.recorded();
		if (all.openArcs().size() >= Recorder.MOST_OPEN_ARCS || all.compensation().size() >= CompensationLog.MOST) {
			return Optional.empty();
		}
		List<ToolUse> uses = work.tools();
		work = work.by(program, new Later<>(() -> reading.sorted(all, uses).holes()), now.operations(), WorkReader.Reading.openArcs(all.openArcs(), now.operations()),
				part.before().compensatedAs(part.now()) ? work.course().compensation() : CompensationLog.with(all.compensation(), uses));
		Holes places = now.holes();
		List<Hole> open = now.unthreaded();
		return Optional.of(new Part(work.at(places, () -> open), new BitSet(), true));
	}

	private boolean sound(Trace again) {
		return again.recorder().trouble().isEmpty()
				&& trace.recorder().trouble().stream().noneMatch(lost -> lost.tool().index() >= again.firstStay() && lost.tool().index() < again.behind());
	}

	/** The part of the work that the stays are of that were followed again, with all that are at the same holes. */
	private Optional<Part> part(ProgramFile program, Trace again) {
		List<ToolUse> uses = new ArrayList<>(work.tools());
		for (ToolLog log : again.recorded().tools()) {
			ToolUse now = reading.use(log);
			if (!Sectioned.same(uses.set(log.index(), now), now) || !log.endsAs(trace.recorded().tools().get(log.index()))) {
				return Optional.empty();
			}
		}
		if (!sections()) {
			return Optional.empty();
		}
		BitSet stays = new BitSet();
		stays.set(again.firstStay(), again.behind());
		sections.get().widen(stays);
		apart = false;
		trace.take(again);
		return sort(program, again, stays, uses);
	}

	/** Whether the program has sections. */
	private boolean sections() {
		if (sections.isEmpty() && sectioned) {
			Holes holes = work.everyHole();
			sectioned = !work.isWhole() && Sectioned.is(work, holes);
			sections = Optional.of(holes).filter(any -> sectioned).map(all -> new Sections(new HoleStays(all, work.operations(), work.tools().size())));
		}
		return sectioned;
	}

	private Optional<Part> sort(ProgramFile program, Trace again, BitSet stays, List<ToolUse> uses) {
		int before = -1;
		Sorting sorting = null;
		HoleStays at = null;
		Optional<List<ThreadingOperation>> made = Optional.empty();
		while (stays.cardinality() != before) {
			whole(stays);
			before = stays.cardinality();
			Recorded some = trace.recorded().of(stays);
			if (some.size() > MOST || !some.openArcs().isEmpty()) {
				return Optional.empty();
			}
			sorting = reading.sorted(some, uses);
			BitSet here = stays;
			made = reading.operations(sorting).insteadOf(work.operations().stream().filter(operation -> here.get(operation.tool().index())).toList());
			if (made.isEmpty()) {
				return Optional.empty();
			}
			at = new HoleStays(sorting.holes(), made.get(), uses.size());
			sections.get().widen(stays, at);
			sections.get().widen(stays);
		}
		if (!Sectioned.is(work, made.get(), sorting.holes()) || !sections.get().take(stays, at)) {
			return Optional.empty();
		}
		List<ThreadingOperation> operations = new ArrayList<>(work.operations());
		made.get().forEach(operation -> operations.set(operation.index(), operation));
		Recorded all = trace.recorded();
		Supplier<Holes> holes = new Later<>(() -> reading.sorted(all, uses).holes());
		work = work.by(program, List.copyOf(uses), holes, List.copyOf(operations), course(again, uses), sorting.holes().planes());
		return Optional.of(new Part(work.part(made.get(), sorting.holes()), all.lines(stays), false));
	}

	/** The course with the events of the stays that were followed again. */
	private Work.Course course(Trace again, List<ToolUse> uses) {
		List<TimedEvent> events = new ArrayList<>(work.course().events());
		List<TimedEvent> place = events.subList(Recorded.before(events, event -> event.tool().index(), again.firstStay()),
				Recorded.before(events, event -> event.tool().index(), again.behind()));
		place.clear();
		List<TimedEvent> now = new ArrayList<>();
		again.recorded().events().forEach(event -> now.add(new TimedEvent(event.order(), event.event(), uses.get(event.tool().index()))));
		place.addAll(now);
		return new Work.Course(events, CompensationLog.with(trace.recorded().compensation(), uses), work.course().subprogramAlone(), work.course().toItsEnd(), List.of());
	}

	/** Takes all stays that are followed together. */
	private void whole(BitSet stays) {
		for (int stay = stays.nextSetBit(0); stay >= 0; stay = stays.nextSetBit(trace.to(stay))) {
			stays.set(trace.from(stay), trace.to(stay));
		}
	}
}
