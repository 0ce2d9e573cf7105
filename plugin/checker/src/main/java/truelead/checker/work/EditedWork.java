package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import truelead.checker.comment.ChangedLines;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.machine.Interpreter;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.tool.CompensationLog;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/**
 * The work of a program that is being edited: after an edit only those stays of tools are followed again that it can change. Not for
 * several threads at once.
 */
public final class EditedWork {

	/**
	 * A stay that is this part of the program is followed again and again at the cost of all: once from the beginning, and edits are short
	 * again.
	 */
	private static final double MUCH = 0.25;
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
	private final EditedPlaces places = new EditedPlaces();
	private Work work;
	/**
	 * The holes after edits of single blocks, known when they are first needed; such edits and those of {@link #sections} are not mixed.
	 */
	private Optional<EditedHoles> holes = Optional.empty();
	private boolean apart = true;
	/** Whether whole stays were followed again by themselves, so that the holes are not those that were followed from the beginning. */
	private boolean byStays;
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

	/**
	 * Takes another text of the program; empty where it may be another work in all, or after many edits, and has to be followed from its
	 * beginning.
	 */
	public Optional<Changed> follow(ProgramFile program, ProgramFolder folder, Budget budget) {
		if (places.worn()) {
			return Optional.empty();
		}
		Optional<ChangedLines> changed = ChangedLines.between(work.shop().program().text(), program.text());
		if (changed.isEmpty()) {
			return Optional.empty();
		}
		places.edited();
		if (changed.get().last() < 0) {
			return taken(program, changed.get());
		}
		if (!Interpreter.isOne(program)) {
			return Optional.empty();
		}
		boolean numbersAlone = changed.get().numbersAlone(work.shop().program().text(), program.text());
		Optional<Trace> within = trace.within(program, folder, work.shop().profile(), changed.get(), numbersAlone, budget)
				.filter(this::sound);
		if (within.isPresent()) {
			Recorded here = trace.part(within.get());
			if (!within.get().recorded().names(changed.get()) && here.same(within.get().recorded())) {
				trace.takeRests(within.get());
				places.followed(within.get().fromLine(), false);
				return taken(program, changed.get());
			}
			Optional<Part> part = numbersAlone && here.sameButHoles(within.get().recorded()) ? holes(program, within.get())
					: Optional.empty();
			if (part.isPresent()) {
				return Optional.of(new Changed(changed.get(), part));
			}
			if (byStays && EditedHoles.suits(work) && size(within.get()) >= MUCH * trace.recorded().size()) {
				return Optional.empty();
			}
		}
		return holes.isPresent() ? Optional.empty() : stays(program, folder, changed.get(), numbersAlone, budget);
	}

	/** Takes a text that makes the same holes and threads by the same words. */
	private Optional<Changed> taken(ProgramFile program, ChangedLines changed) {
		work = work.by(program);
		return Optional.of(new Changed(changed, Optional.empty()));
	}

	/** Takes another text by following whole stays of tools. */
	private Optional<Changed> stays(ProgramFile program, ProgramFolder folder, ChangedLines changed, boolean numbersAlone, Budget budget) {
		Optional<Trace> again = trace.again(program, folder, work.shop().profile(), changed, numbersAlone, budget).filter(this::sound);
		if (again.isEmpty()) {
			return Optional.empty();
		}
		Recorded before = trace.recorded().stays(again.get().firstStay(), again.get().behind());
		if (!again.get().recorded().names(changed) && before.same(again.get().recorded())) {
			trace.takeBeginnings(again.get());
			places.followed(again.get().fromLine(), false);
			return taken(program, changed);
		}
		boolean apart = numbersAlone && again.get().recorded().size() <= StaySorting.MOST;
		return apart ? part(program, again.get()).map(part -> new Changed(changed, Optional.of(part))) : Optional.empty();
	}

	/** Whether a part still holds the text of many edits ago. */
	public boolean aged() {
		return places.aged();
	}

	/**
	 * Follows the part anew that was followed longest ago, so that the text of then is let go; empty where all has to be followed from the
	 * beginning.
	 */
	public Optional<Changed> refresh(ProgramFolder folder, Budget budget) {
		ProgramFile program = work.shop().program();
		int line = places.oldest();
		ChangedLines from = new ChangedLines(line, line);
		ChangedLines none = new ChangedLines(line, line - 1);
		if (places.part(line) && holes.isEmpty()) {
			return trace.again(program, folder, work.shop().profile(), from, true, budget).flatMap(again -> part(program, again))
					.map(part -> new Changed(none, Optional.of(part)));
		}
		Optional<Trace> within = trace.within(program, folder, work.shop().profile(), from, true, budget);
		if (within.isPresent() && places.part(line)) {
			return holes(program, within.get()).map(part -> new Changed(none, Optional.of(part)));
		}
		within.ifPresent(trace::takeRests);
		places.followed(line, false);
		return within.map(rests -> new Changed(none, Optional.empty()));
	}

	/** The work with other holes where a part of a stay was followed again; it has all operations. */
	private Optional<Part> holes(ProgramFile program, Trace again) {
		if (apart && holes.isEmpty()) {
			if (size(again) < LONG_STAY) {
				return Optional.empty();
			}
			holes = EditedHoles.of(work, reading);
			apart = holes.isPresent();
		}
		Recorded before = trace.recorded();
		EditedPasses.Part part = trace.edited(again, work.tools().get(again.firstStay()));
		boolean counted = before.openArcs().size() < OpenArcs.MOST && before.compensation().size() < CompensationLog.MOST;
		if (!apart || !counted || !holes.get().change(part, before)) {
			return Optional.empty();
		}
		trace.takePart(again);
		places.followed(again.fromLine(), true);
		EditedHoles now = holes.get();
		Recorded all = trace.recorded();
		if (all.openArcs().size() >= OpenArcs.MOST || all.compensation().size() >= CompensationLog.MOST) {
			return Optional.empty();
		}
		List<ToolUse> uses = work.tools();
		work = work.by(program, new Later<>(() -> reading.sorted(all, uses).holes()), now.operations(),
				WorkReader.Reading.openArcs(all.openArcs(), now.operations()), part.before().compensatedAs(part.now())
				? work.course().compensation() : CompensationLog.with(all.compensation(), uses));
		Holes places = now.holes();
		List<Hole> open = now.unthreaded();
		return Optional.of(new Part(work.at(places, () -> open), new BitSet(), true));
	}

	/** How many holes, turns and strokes were recorded of the stays that a trace is of. */
	private int size(Trace again) {
		return trace.recorded().stays(again.firstStay(), again.behind()).size();
	}

	private boolean sound(Trace again) {
		return again.recorder().trouble().isEmpty()
				&& trace.recorder().trouble().stream().noneMatch(lost -> lost.tool().index() >= again.firstStay()
						&& lost.tool().index() < again.behind());
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
		byStays = true;
		trace.take(again);
		places.followed(again.fromLine(), true);
		Optional<StaySorting.Sorted> sorted = new StaySorting(trace, reading, sections.get(), uses).sort(work, program, again, stays);
		sorted.ifPresent(now -> work = now.work());
		return sorted.map(now -> new Part(now.part(), now.lines(), false));
	}

	/** Whether the program has sections. */
	private boolean sections() {
		if (sections.isEmpty() && sectioned) {
			Holes holes = work.everyHole();
			sectioned = !work.isWhole() && Sectioned.is(work, holes);
			sections = Optional.of(holes).filter(any -> sectioned)
					.map(all -> new Sections(new HoleStays(all, work.operations(), work.tools().size()), Ties.of(work)));
		}
		return sectioned;
	}
}
