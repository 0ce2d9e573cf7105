package truelead.checker.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.HoleEnd;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Allowance;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.Holder;
import truelead.checker.job.Job;
import truelead.checker.job.Note;
import truelead.checker.job.ProgramComment;
import truelead.checker.job.Stock;
import truelead.checker.job.ToolFacts;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/** Finds out what is wanted at the holes of an operation: notes, callouts, tool, tool list, project, and what the numbers imply. */
final class WantedReader {

	/** What an operation's comments say, and where the callout that governs it stands. */
	record Result(Wanted wanted, Optional<Location> governing) {
	}

	/** What notes at the head of a program of the file say of all its operations, the last first. */
	private record Head(List<Note.OfHole> holes, Optional<Note.OfSurface> surface) {
	}

	/** A callout and the comment it stands in. */
	private record Called(Callout callout, LineComment comment, FactSource source) {
	}

	/** Of what is said in a tool's stay before an operation as much is read, from either end. */
	private static final int MOST_AT_END = 50;

	/** Of a tool's comments as many are asked. */
	private static final int MOST_COMMENTS = 20;

	/** A thread whose lead is nearer to what is cut by this part of it is meant rather. */
	private static final double NEARER = 0.005;

	private final Commentary commentary;
	private final Stays stays;
	private final ToolBook book;
	private final Job job;
	/** The holder of a tool that does not say its own. */
	private final Fact<Holder> holder;
	private final Map<Integer, TitleThreads> titles = new HashMap<>();
	private final Map<Integer, Head> heads = new HashMap<>();
	private final NavigableMap<Integer, Note.OfStock> stock = new TreeMap<>();

	WantedReader(Commentary commentary, Stays stays, ToolBook book, Job job, MachineProfile profile) {
		this.commentary = commentary;
		this.stays = stays;
		this.book = book;
		this.job = job;
		this.holder = job.holder().orElseGet(() -> assumedHolder(profile));
		ProgramFile main = commentary.main().file();
		for (Note note : commentary.notes(main, 0, Integer.MAX_VALUE)) {
			if (note instanceof Note.OfStock said) {
				stock.put(said.comment().at().line(), said);
			}
		}
	}

	/**
	 * What is wanted.
	 *
	 * @param after   the operation before it by the same tool, where there is one
	 * @param cut     lead that S and F make, and the hole
	 * @param surface level of the surface where no note says it
	 */
	Result read(Draft draft, Optional<Draft> after, AsCut cut, Fact<Double> surface) {
		ProgramFile main = commentary.main().file();
		int start = Math.max(0, commentary.mainLine(draft.block));
		int end = Math.max(start, commentary.mainLine(draft.lastBlock()));
		int own = after.map(d -> commentary.mainLine(d.lastBlock()) + 1).filter(line -> line <= start).orElse(stays.from(draft.log));
		int free = Math.max(own, stays.freeFrom(draft.log));
		List<Note> notes = new ArrayList<>(inside(draft));
		notes.addAll(reversed(commentary.notes(main, own, end)));
		List<Called> called = called(insideFree(draft), cut, draft);
		called.addAll(called(commentary.free(main, free, start), cut, draft));
		List<Note> tool = List.of();
		if (called.isEmpty() && first(notes, Note.OfThread.class).isEmpty() && after.isPresent()) {
			called.addAll(called(ends(commentary.free(main, stays.freeFrom(draft.log), start)), cut, draft));
			tool = reversed(ends(commentary.notes(main, stays.from(draft.log), own - 1)));
		}
		List<LineComment> listed = book.listed(draft.log);
		Set<LineComment> read = listed.isEmpty() ? Set.of() : Collections.newSetFromMap(new IdentityHashMap<>());
		for (Called one : listed.isEmpty() ? List.<Called>of() : called) {
			read.add(one.comment());
		}
		for (LineComment line : listed) {
			if (!read.contains(line)) {
				Callouts.read(line, cut).forEach(c -> called.add(new Called(c, line, FactSource.TOOL_LIST)));
			}
		}
		called.replaceAll(c -> c.callout().coarseAssumed() && !cut.suitsLead(c.callout().spec()) ? pitched(c, draft, cut) : c);
		if (called.stream().anyMatch(c -> !c.callout().certain())) {
			dropDoubtful(called, draft.tool.facts(), cut);
			dropWorse(called, draft, cut);
		}
		List<Note> all = new ArrayList<>(notes);
		all.addAll(tool);
		Optional<TitleThreads.Titled> titled = called.isEmpty() ? title(draft.log.part()).of(cut).or(() -> draft.tool.facts().thread().isEmpty() && cut.drill().isEmpty()
				? title(draft.log.part()).only(draft.strokes.stream().mapToInt(Draft.Stroke::count).sum()) : Optional.empty()) : Optional.empty();
		return result(draft, cut, notes, all, called, surface, titled, () -> SizedTap.thread(draft.tool.facts(), cut).or(() -> Implied.thread(cut)));
	}

	private Result result(Draft draft, AsCut cut, List<Note> notes, List<Note> all, List<Called> called, Fact<Double> surface,
			Optional<TitleThreads.Titled> titled, Supplier<Optional<Fact<ThreadSpec>>> elsewhere) {
		Optional<Note.OfThread> thread = first(all, Note.OfThread.class);
		List<Fact<ThreadSpec>> named = new ArrayList<>();
		of(all, Note.OfThread.class).forEach(note -> note.thread().ifPresent(named::add));
		called.forEach(c -> named.add(fact(c, c.callout().spec())));
		draft.tool.facts().thread().filter(t -> named.stream().noneMatch(n -> n.at().equals(t.at()) || sameComment(n, t))).ifPresent(named::add);
		Optional<Called> nearest = called.stream().findFirst();
		Optional<Fact<ThreadSpec>> wanted = named.stream().findFirst().or(() -> titled.map(TitleThreads.Titled::thread)).or(elsewhere);
		List<Called> alike = alike(called, wanted, titled);
		Optional<Fact<Double>> diameterOnly = named.isEmpty() && draft.tool.facts().isTap() ? draft.tool.facts().diameter() : Optional.empty();
		Head head = head(draft.log.part());
		List<Note.OfHole> here = of(all, Note.OfHole.class);
		List<Note.OfHole> hole = here.isEmpty() ? head.holes() : here;
		List<Called> sized = new ArrayList<>(alike);
		wanted.map(Fact::value).flatMap(title(draft.log.part())::same).map(WantedReader::called).ifPresent(sized::add);
		Optional<Fact<Double>> depth = pick(thread, Note.OfThread::depth)
				.or(() -> first(sized, c -> c.callout().depthMm(commentary.unit()).map(d -> fact(c, d))));
		Optional<Fact<Boolean>> through = pick(thread, Note.OfThread::through).or(() -> said(hole, Note.OfHole::through))
				.or(() -> first(sized, c -> c.callout().holeEnd().map(e -> fact(c, e == HoleEnd.THROUGH)))).or(() -> drilledThrough(cut)).or(() -> throughPart(draft, cut, depth));
		Optional<Fact<Double>> wall = pick(thread, Note.OfThread::wall).or(() -> said(hole, Note.OfHole::wall))
				.or(() -> first(sized, c -> c.callout().wall().map(d -> fact(c, d.mm(commentary.unit())))))
				.or(() -> through.filter(said -> said.stated() && said.value()).flatMap(any -> title(draft.log.part()).thickness(commentary.unit())).filter(thick -> cut.comesOut(thick.value())));
		Optional<Fact<Integer>> count = pick(thread, Note.OfThread::count)
				.or(() -> first(sized, c -> c.callout().count().isPresent() ? Optional.of(fact(c, c.callout().count().getAsInt())) : Optional.empty()));
		Fact<Double> top = first(all, Note.OfSurface.class).or(head::surface).map(Note.OfSurface::level).orElse(surface);
		Optional<Fact<Stock>> stock = first(all, Note.OfStock.class).or(() -> stockBefore(draft)).map(Note.OfStock::stock).or(job::stock);
		List<Allowance> allowances = new ArrayList<>();
		of(notes, Note.OfAllowance.class).forEach(note -> allowances.addAll(note.allowances()));
		boolean insert = nearest.map(c -> c.callout().wireInsert()).orElse(false);
		Optional<Location> governing = thread.map(t -> t.comment().at())
				.or(() -> nearest.filter(c -> c.source() == FactSource.CALLOUT).map(c -> c.comment().comment().at()));
		return new Result(new Wanted(wanted, named, diameterOnly, depth, through, said(hole, Note.OfHole::bottom), wall, top,
				count, stock, draft.tool.facts().holder().orElse(holder), insert, allowances), governing);
	}

	/** What is said of the hole where it is drilled. */
	private static Optional<Fact<Boolean>> drilledThrough(AsCut cut) {
		List<ProgramComment> comments = cut.drilledBy().map(ToolUse::comments).orElse(List.of());
		for (ProgramComment comment : comments.subList(0, Math.min(comments.size(), MOST_COMMENTS))) {
			if (CalloutReader.readComment(comment.text()).drillsThrough()) {
				return Optional.of(Fact.of(true, FactSource.TOOL_COMMENT, comment.at(), comment.text().strip()));
			}
		}
		return Optional.empty();
	}

	/** A hole that is drilled through all of a part whose thickness the title says; a thread that is to be deeper than that is elsewhere in the part. */
	private Optional<Fact<Boolean>> throughPart(Draft draft, AsCut cut, Optional<Fact<Double>> depth) {
		return Double.isNaN(cut.full()) ? Optional.empty() : title(draft.log.part()).thickness(commentary.unit()).filter(thick -> cut.full() >= thick.value() && depth.filter(d -> d.value() > thick.value()).isEmpty())
				.map(thick -> new Fact<>(true, FactSource.IMPLIED, thick.at(), "drilled through what the title says of the part: " + thick.said()));
	}

	/** The threads that the title of a program of the file names. */
	private TitleThreads title(int part) {
		return titles.computeIfAbsent(part, p -> new TitleThreads(commentary, stays, p));
	}

	/** The notes at the head of a program of the file, the last first. */
	private Head head(int part) {
		return heads.computeIfAbsent(part, p -> {
			List<Note> notes = reversed(commentary.notes(commentary.main().file(), stays.begin(p), stays.firstChange(p)));
			return new Head(ends(of(notes, Note.OfHole.class)), first(notes, Note.OfSurface.class));
		});
	}

	/** What names the thread that the nearest names, nearest first, since a tool's name seldom repeats depth and count; else the title. */
	private static List<Called> alike(List<Called> called, Optional<Fact<ThreadSpec>> wanted, Optional<TitleThreads.Titled> titled) {
		if (called.isEmpty()) {
			return titled.filter(t -> wanted.get().value().withoutClass().equals(t.thread().value().withoutClass()))
					.map(WantedReader::called).stream().toList();
		}
		ThreadSpec nearest = called.get(0).callout().spec().withoutClass();
		List<Called> alike = new ArrayList<>();
		for (Called one : called) {
			if (one.callout().spec().withoutClass().equals(nearest)) {
				alike.add(one);
			}
		}
		return alike;
	}

	private static Called called(TitleThreads.Titled titled) {
		return new Called(titled.callout(), titled.comment(), FactSource.TITLE);
	}

	private static <T> Optional<T> first(List<Called> called, Function<Called, Optional<T>> item) {
		return said(called, item);
	}

	/** Notes in the subprogram that holds the operation. */
	private List<Note> inside(Draft draft) {
		BlockRef block = draft.block;
		return block.caller().isEmpty() ? List.of()
				: reversed(commentary.notes(block.file(), commentary.of(block.file()).startOf(block.line()), block.line()));
	}

	private List<LineComment> insideFree(Draft draft) {
		BlockRef block = draft.block;
		return block.caller().isEmpty() ? List.of()
				: commentary.free(block.file(), commentary.of(block.file()).startOf(block.line()), block.line());
	}

	/** The last STOCK note above the operation. */
	private Optional<Note.OfStock> stockBefore(Draft draft) {
		return Optional.ofNullable(stock.floorEntry(Math.max(0, commentary.mainLine(draft.block)))).map(Map.Entry::getValue);
	}

	/** Callouts nearest first: last line first, in a line the last comment first. A list line or T word of another tool does not count. */
	private List<Called> called(List<LineComment> comments, AsCut cut, Draft draft) {
		int number = draft.tool.number();
		List<Called> called = new ArrayList<>();
		for (int i = comments.size() - 1; i >= 0; i--) {
			LineComment comment = comments.get(i);
			boolean others = comment.ofAnotherTool(number)
					|| commentary.listLine(comment).map(l -> l.number() != number).orElse(false);
			if (!others) {
				Callouts.read(comment, cut).forEach(c -> called.add(new Called(c, comment, FactSource.CALLOUT)));
			}
		}
		return called;
	}

	/** (HELIX M42) in a part whose title says M42X1.5, or by a cutter of pitch 1.5: the pitch is the one that is said there, where it is cut. */
	private Called pitched(Called bare, Draft draft, AsCut cut) {
		ThreadSpec spec = bare.callout().spec();
		Optional<Double> pitch = title(draft.log.part()).pitch(spec, cut).or(() -> draft.tool.facts().pitch().map(Fact::value).filter(p -> cut.suitsLead(bare.callout().withPitch(p).spec())));
		return pitch.map(p -> new Called(bare.callout().withPitch(p), bare.comment(), bare.source())).orElse(bare);
	}

	/**
	 * NULLPUNKT M8 MITTE beside TAP M10X1.25: what may be no thread at all does not count beside one that is named for certain and has the lead that is cut, nor
	 * where the tap is said to be of another diameter.
	 */
	private static void dropDoubtful(List<Called> called, ToolFacts tool, AsCut cut) {
		if (tool.isTap()) {
			tool.diameter().ifPresent(d -> called.removeIf(c -> !c.callout().certain() && Math.abs(c.callout().spec().diameter() - d.value()) > c.callout().spec().pitch()));
		}
		boolean certain = tool.thread().filter(thread -> cut.suitsLead(thread.value())).isPresent() || called.stream().anyMatch(c -> c.callout().certain() && cut.suitsLead(c.callout().spec()));
		if (certain) {
			called.removeIf(c -> !c.callout().certain());
		}
	}

	/** M8 ON in a part whose title names the very thread that is cut. */
	private void dropWorse(List<Called> called, Draft draft, AsCut cut) {
		if (called.stream().noneMatch(c -> c.callout().certain())) {
			title(draft.log.part()).of(cut).filter(t -> cut.suitsLead(t.thread().value()))
					.ifPresent(t -> called.removeIf(c -> cut.amiss(c.callout().spec()) > cut.amiss(t.thread().value()) + NEARER));
		}
	}

	private static Fact<Holder> assumedHolder(MachineProfile profile) {
		String kind = profile.text("holder").orElse("rigid");
		Holder holder = new Holder(kind.equals("synchro") ? HolderKind.SYNCHRO : kind.equals("tension-compression") ? HolderKind.FLOATING
				: HolderKind.RIGID, profile.holderTravel());
		return holder.kind() == HolderKind.RIGID ? Fact.of(holder, FactSource.DEFAULT, "a rigid holder is assumed")
				: Fact.of(holder, FactSource.PROFILE, "the profile says " + kind);
	}

	private static <T> Fact<T> fact(Called called, T value) {
		return Callouts.fact(called.comment(), called.callout(), called.source(), value);
	}

	private static boolean sameComment(Fact<ThreadSpec> one, Fact<ThreadSpec> other) {
		return one.at().isPresent() && other.at().isPresent() && one.at().get().line() == other.at().get().line()
				&& one.at().get().file().name().equals(other.at().get().file().name());
	}

	private static <N, T> Optional<T> pick(Optional<N> note, Function<N, Optional<T>> item) {
		return note.flatMap(item);
	}

	/** An item from the first of several notes that has it. */
	private static <N, T> Optional<T> said(List<N> notes, Function<N, Optional<T>> item) {
		for (N note : notes) {
			Optional<T> said = item.apply(note);
			if (said.isPresent()) {
				return said;
			}
		}
		return Optional.empty();
	}

	private static <N extends Note> List<N> of(List<Note> notes, Class<N> kind) {
		List<N> found = new ArrayList<>();
		for (Note note : notes) {
			if (kind.isInstance(note)) {
				found.add(kind.cast(note));
			}
		}
		return found;
	}

	private static <N extends Note> Optional<N> first(List<Note> notes, Class<N> kind) {
		for (Note note : notes) {
			if (kind.isInstance(note)) {
				return Optional.of(kind.cast(note));
			}
		}
		return Optional.empty();
	}

	/** Of what is said in a tool's stay before an operation the first and the nearest: where each of thousands has a comment, those between are of others. */
	private static <T> List<T> ends(List<T> said) {
		if (said.size() <= 2 * MOST_AT_END) {
			return said;
		}
		List<T> ends = new ArrayList<>(said.subList(0, MOST_AT_END));
		ends.addAll(said.subList(said.size() - MOST_AT_END, said.size()));
		return ends;
	}

	private static List<Note> reversed(List<Note> notes) {
		List<Note> reversed = new ArrayList<>(notes);
		Collections.reverse(reversed);
		return reversed;
	}
}
