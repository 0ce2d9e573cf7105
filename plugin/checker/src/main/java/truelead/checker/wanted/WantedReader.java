package truelead.checker.wanted;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.HoleEnd;
import truelead.checker.comment.Commentary;
import truelead.checker.job.Allowance;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.Holder;
import truelead.checker.job.Job;
import truelead.checker.job.Note;
import truelead.checker.job.ProgramComment;
import truelead.checker.job.Stock;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolBook;
import truelead.checker.tool.ToolUse;

/** Finds out what is wanted at the holes of an operation: notes, callouts, tool, tool list, project, and what the numbers imply. */
public final class WantedReader {

	/** What an operation's comments say, and where the callout that governs it stands. */
	public record Result(Wanted wanted, Optional<Location> governing) {
	}

	/** What notes at the head of a program of the file say of all its operations, the last first. */
	private record Head(List<Note.OfThread> threads, List<Note.OfHole> holes, Optional<Note.OfSurface> surface) {

		/** The one note about a thread that comments name nearer to their tool; empty where several are of its size. */
		Optional<Note.OfThread> of(Optional<Fact<ThreadSpec>> wanted) {
			Optional<ThreadSpec> size = wanted.map(Fact::value).map(ThreadSpec::withoutClass);
			List<Note.OfThread> same = threads.stream()
					.filter(note -> size.isPresent() && note.thread().map(Fact::value).map(ThreadSpec::withoutClass).equals(size)).toList();
			return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
		}
	}

	/** Of a tool's comments as many are asked. */
	private static final int MOST_COMMENTS = 20;

	private final Commentary commentary;
	private final Stays stays;
	private final NearbyCallouts callouts;
	private final Job job;
	/** The holder of a tool that does not say its own. */
	private final Fact<Holder> holder;
	private final Map<Integer, Head> heads = new HashMap<>();
	private final NavigableMap<Integer, Note.OfStock> stock = new TreeMap<>();

	/** @param profile says what holder there is where nobody else does */
	public WantedReader(Commentary commentary, Stays stays, ToolBook book, Job job, MachineProfile profile) {
		this.commentary = commentary;
		this.stays = stays;
		this.callouts = new NearbyCallouts(commentary, stays, book);
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
	 * @param after   the last block of the operation before it by the same tool, where there is one
	 * @param cut     lead that S and F make, and the hole
	 * @param surface level of the surface where no note says it, mm
	 */
	public Result read(Whereabouts at, Optional<BlockRef> after, AsCut cut, Fact<Double> surface) {
		ProgramFile main = commentary.main().file();
		int start = Math.max(0, commentary.mainLine(at.first()));
		int end = Math.max(start, commentary.mainLine(at.last()));
		int own = after.map(block -> commentary.mainLine(block) + 1).filter(line -> line <= start).orElse(stays.from(at.log()));
		int free = Math.max(own, stays.freeFrom(at.log()));
		List<Note> notes = new ArrayList<>(inside(at));
		notes.addAll(NotesOf.lastFirst(commentary.notes(main, own, end)));
		List<Called> called = callouts.of(at, after, free, start, cut);
		List<Note> tool = List.of();
		if (called.isEmpty() && NotesOf.first(notes, Note.OfThread.class).isEmpty() && after.isPresent()) {
			called.addAll(callouts.ofStay(at, start, cut));
			tool = NotesOf.lastFirst(NotesOf.ends(commentary.notes(main, stays.from(at.log()), own - 1)));
		}
		callouts.settle(called, at, cut);
		List<Note> all = new ArrayList<>(notes);
		all.addAll(tool);
		Optional<TitleThreads.Titled> titled = called.isEmpty() ? titled(at, cut) : Optional.empty();
		return result(at, cut, notes, all, called, surface, titled,
				() -> SizedTap.thread(at.tool().facts(), cut).or(() -> Implied.thread(cut)));
	}

	/** The thread of the title, which what is cut speaks for, or what else nothing is said of. */
	private Optional<TitleThreads.Titled> titled(Whereabouts at, AsCut cut) {
		TitleThreads title = callouts.title(at.log().part());
		return title.of(cut).or(() -> at.tool().facts().thread().isPresent() ? Optional.empty()
				: (cut.drill().isEmpty() ? title.only(at.strokes()) : Optional.<TitleThreads.Titled>empty()).or(() ->
						stays.onlyTap(at.log()) ? title.ofOnlyTap(cut, at.strokes()) : Optional.empty()));
	}

	private Result result(Whereabouts at, AsCut cut, List<Note> notes, List<Note> all, List<Called> called, Fact<Double> surface,
			Optional<TitleThreads.Titled> titled, Supplier<Optional<Fact<ThreadSpec>>> elsewhere) {
		Optional<Note.OfThread> thread = NotesOf.first(all, Note.OfThread.class);
		List<Fact<ThreadSpec>> named = new ArrayList<>();
		NotesOf.all(all, Note.OfThread.class).forEach(note -> note.thread().ifPresent(named::add));
		called.forEach(c -> named.add(c.fact(c.callout().spec())));
		at.tool().facts().thread().filter(t -> named.stream().noneMatch(n -> n.at().equals(t.at()) || sameComment(n, t)))
				.ifPresent(named::add);
		Optional<Called> nearest = called.stream().findFirst();
		Optional<Fact<ThreadSpec>> wanted = named.stream().findFirst().or(() -> titled.map(TitleThreads.Titled::thread)).or(elsewhere);
		List<Called> alike = Called.alike(called, wanted, titled);
		Optional<Fact<Double>> diameterOnly = named.isEmpty() && at.tool().facts().isTap() ? at.tool().facts().diameter()
				: Optional.empty();
		Head head = head(at.log().part());
		List<Note.OfHole> here = NotesOf.all(all, Note.OfHole.class);
		List<Note.OfHole> hole = here.isEmpty() ? head.holes() : here;
		Optional<Note.OfThread> noted = thread.or(() -> head.of(wanted));
		List<Called> sized = new ArrayList<>(alike);
		wanted.map(Fact::value).flatMap(callouts.title(at.log().part())::same).map(Called::of).ifPresent(sized::add);
		Optional<Fact<Double>> depth = noted.flatMap(Note.OfThread::depth)
				.or(() -> NotesOf.item(sized, c -> c.depth(commentary.unit())));
		Optional<Fact<Boolean>> through = noted.flatMap(Note.OfThread::through).or(() -> NotesOf.item(hole, Note.OfHole::through))
				.or(() -> NotesOf.item(sized, c -> c.callout().holeEnd().map(e -> c.fact(e == HoleEnd.THROUGH))))
				.or(() -> drilledThrough(cut)).or(() -> throughPart(at, cut.full(wanted.map(Fact::value)), depth));
		Optional<Fact<Double>> wall = noted.flatMap(Note.OfThread::wall).or(() -> NotesOf.item(hole, Note.OfHole::wall))
				.or(() -> NotesOf.item(sized, c -> c.callout().wall().map(thick -> c.fact(c.callout().mm(thick, commentary.unit())))))
				.or(() -> through.filter(said -> said.stated() && said.value()).flatMap(any -> callouts.title(at.log().part())
						.thickness(commentary.unit())).filter(thick -> cut.comesOut(thick.value())));
		Optional<Fact<Integer>> count = noted.flatMap(Note.OfThread::count)
				.or(() -> NotesOf.item(sized, c -> c.callout().count().isPresent() ? Optional.of(c.fact(c.callout().count().getAsInt()))
						: Optional.empty()));
		Fact<Double> top = NotesOf.first(all, Note.OfSurface.class).or(head::surface).map(Note.OfSurface::level).orElse(surface);
		Optional<Fact<Stock>> stock = NotesOf.first(all, Note.OfStock.class).or(() -> stockBefore(at)).map(Note.OfStock::stock)
				.or(job::stock);
		List<Allowance> allowances = new ArrayList<>();
		NotesOf.all(notes, Note.OfAllowance.class).forEach(note -> allowances.addAll(note.allowances()));
		boolean insert = nearest.map(c -> c.callout().wireInsert()).orElse(false);
		Optional<Location> governing = thread.map(t -> t.comment().at())
				.or(() -> nearest.filter(c -> c.source() == FactSource.CALLOUT).map(c -> c.comment().comment().at()));
		Optional<Wanted.Titled> another = wanted.flatMap(own -> callouts.title(at.log().part()).counted()
				.filter(only -> !only.thread().value().withoutClass().equals(own.value().withoutClass())));
		return new Result(new Wanted(wanted, named, another, diameterOnly, depth, through, NotesOf.item(hole, Note.OfHole::bottom), wall,
				top, count, stock, at.tool().facts().holder().or(() -> callouts.title(at.log().part()).holder()).orElse(holder), insert,
				allowances), governing);
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

	/**
	 * A hole that is drilled through all of a part whose thickness the title says; a thread that is to be deeper than that is elsewhere in
	 * the part.
	 */
	private Optional<Fact<Boolean>> throughPart(Whereabouts at, double full, Optional<Fact<Double>> depth) {
		return Double.isNaN(full) ? Optional.empty() : callouts.title(at.log().part()).thickness(commentary.unit()).filter(thick ->
				full >= thick.value() && depth.filter(d -> d.value() > thick.value()).isEmpty()).map(thick ->
						new Fact<>(true, FactSource.IMPLIED, thick.at(), "drilled through what the title says of the part: "
								+ thick.said()));
	}

	/** The notes at the head of a program of the file, the last first. */
	private Head head(int part) {
		return heads.computeIfAbsent(part, p -> {
			List<Note> notes = NotesOf.lastFirst(commentary.notes(commentary.main().file(), stays.begin(p), stays.firstChange(p)));
			return new Head(NotesOf.all(notes, Note.OfThread.class), NotesOf.ends(NotesOf.all(notes, Note.OfHole.class)),
					NotesOf.first(notes, Note.OfSurface.class));
		});
	}

	/** Notes in the subprogram that holds the operation. */
	private List<Note> inside(Whereabouts at) {
		BlockRef block = at.first();
		return block.caller().isEmpty() ? List.of()
				: NotesOf.lastFirst(commentary.notes(block.file(), commentary.of(block.file()).startOf(block.line()), block.line()));
	}

	/** The last STOCK note above the operation. */
	private Optional<Note.OfStock> stockBefore(Whereabouts at) {
		return Optional.ofNullable(stock.floorEntry(Math.max(0, commentary.mainLine(at.first())))).map(Map.Entry::getValue);
	}

	private static Fact<Holder> assumedHolder(MachineProfile profile) {
		String kind = profile.text("holder").orElse("rigid");
		Holder holder = new Holder(kind.equals("synchro") ? HolderKind.SYNCHRO : kind.equals("tension-compression") ? HolderKind.FLOATING
				: HolderKind.RIGID, profile.holderTravel());
		return holder.kind() == HolderKind.RIGID ? Fact.of(holder, FactSource.DEFAULT, "a rigid holder is assumed")
				: Fact.of(holder, FactSource.PROFILE, "the profile says " + kind);
	}

	private static boolean sameComment(Fact<ThreadSpec> one, Fact<ThreadSpec> other) {
		return one.at().isPresent() && other.at().isPresent() && one.at().get().line() == other.at().get().line()
				&& one.at().get().file().name().equals(other.at().get().file().name());
	}
}
