package truelead.checker.tool;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import truelead.checker.callout.ToolListLine;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.FreeText;
import truelead.checker.job.Job;
import truelead.checker.job.Note;
import truelead.checker.job.ProgramComment;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.LeadForm;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ToolKind;
import truelead.grammar.ProgramText;

/** Puts together what is known of each tool: notes, its own comments, the list at the head of the program, the tool list file. */
public final class ToolBook {

	/** Lines behind a change in which comments speak of its tool. */
	private static final int BEHIND = 12;

	private static final Optional<Fact<Double>> POINT = Optional.of(Fact.of(DrillPoint.ORDINARY, FactSource.DEFAULT, "a point of 118 degrees is assumed"));

	/** Lines that differ and may list one tool; where a program says something of it at each of thousands of operations, the first of them do. */
	private static final int MOST_LINES = 100;

	private final Commentary commentary;
	private final Stays stays;
	private final Job job;
	/** Comments beside T words; one that is written again says nothing new and is left out. */
	private final Map<Pocket, Map<String, LineComment>> byToolWord = new HashMap<>();
	private final Map<Pocket, ToolFacts> list = new HashMap<>();
	private final Map<Pocket, List<LineComment>> listed = new HashMap<>();
	/** The programs of the file that have a tool list of their own. */
	private final Set<Integer> listing = new HashSet<>();
	private final Map<Integer, List<Note.OfTool>> numbered = new HashMap<>();
	private final Map<Stretch, Known> stretches = new HashMap<>();
	private final Map<Said, ToolFacts> texts = new HashMap<>();
	private final Map<Tap, Optional<Fact<Double>>> leads = new HashMap<>();

	/** A tool number in one program of the file. */
	private record Pocket(int part, int number) {
	}

	/** The text that speaks of a tool in a stay; a loop has many stays with the same. */
	private record Stretch(int part, int number, boolean changed, boolean taps, boolean drills, int change, int named, int from, int to, List<Integer> subprograms) {
	}

	/**
	 * A text that speaks of a tool.
	 *
	 * @param taps   whether the text names the tool and the tool taps
	 * @param drills whether the text names the tool and it runs canned cycles, none of them a tapping one
	 */
	private record Said(String text, boolean taps, boolean drills) {
	}

	private record Tap(ToolKind kind, Set<TapStyle> styles) {
	}

	private record Known(ToolFacts facts, List<ProgramComment> comments) {
	}

	/** Reads what notes, comments and lists say. */
	public ToolBook(Commentary commentary, Stays stays, Job job) {
		this.commentary = commentary;
		this.stays = stays;
		this.job = job;
		Set<String> said = new HashSet<>();
		for (LineComment comment : commentary.main().comments()) {
			int part = stays.partOf(comment.line());
			int tool = commentary.tool(comment);
			if (tool >= 0) {
				byToolWord.computeIfAbsent(new Pocket(part, tool), t -> new LinkedHashMap<>()).putIfAbsent(comment.text(), comment);
			}
			commentary.listLine(comment).ifPresent(line -> {
				Pocket pocket = new Pocket(part, line.number());
				listing.add(part);
				List<LineComment> lines = listed.computeIfAbsent(pocket, n -> new ArrayList<>(1));
				if (lines.size() < MOST_LINES && said.add(pocket + comment.text())) {
					lines.add(comment);
				}
				list.merge(pocket, FreeText.tool(line.text(), FactSource.TOOL_LIST, comment.comment().at(), commentary.unit()), ToolBook::join);
			});
		}
		for (Note note : commentary.allNotes()) {
			if (note instanceof Note.OfTool tool) {
				tool.number().ifPresent(number -> numbered.computeIfAbsent(number, n -> new ArrayList<>()).add(tool));
			}
		}
	}

	/** The lines of the tool list that speak of the tool of a stay, in order. */
	public List<LineComment> listed(ToolLog log) {
		return listed.getOrDefault(pocket(log), List.of());
	}

	/** Where the list speaks of a tool: in its own program's, or in the first program's where that has none; the only tool listed where none is called. */
	private Pocket pocket(ToolLog log) {
		int part = listing.contains(log.part()) ? log.part() : 0;
		boolean called = number(log) >= 0 || log.change().isPresent() || stays.changes(log.part());
		List<Pocket> all = called ? List.of() : list.keySet().stream().filter(pocket -> pocket.part() == part).limit(2).toList();
		return all.size() == 1 ? all.get(0) : new Pocket(part, number(log));
	}

	/** The stay with everything that is known of its tool. */
	public ToolUse use(ToolLog log) {
		Stretch stretch = new Stretch(log.part(), number(log), log.change().isPresent(), log.tapsAlone(), log.drillsAlone(), stays.changeLine(log), namedAt(log), stays.from(log), stays.to(log),
				stays.subprograms(log).stream().map(BlockRef::line).toList());
		Known known = stretches.computeIfAbsent(stretch, fresh -> known(log, fresh));
		return new ToolUse(log.index(), log.tool(), log.change(), log.firstOrder(), log.lastOrder(), known.comments(), known.facts(), log.summary());
	}

	private Known known(ToolLog log, Stretch stretch) {
		List<LineComment> own = own(log, stretch);
		ToolFacts facts = notes(log, stretch);
		for (LineComment comment : own) {
			boolean named = log.change().isPresent() && (comment.line() == stretch.change() || comment.ofTool(number(log)));
			facts = join(facts, said(comment, named && log.tapsAlone(), named && log.drillsAlone()));
		}
		int number = number(log);
		facts = join(facts, list.getOrDefault(pocket(log), ToolFacts.NONE));
		facts = join(facts, job.tool(number));
		if (facts.diameter().isEmpty() && log.change().isPresent()) {
			for (LineComment comment : besideCuts(log)) {
				facts = join(facts, said(comment, log.tapsAlone(), log.drillsAlone()));
			}
		}
		if (facts.kind().isEmpty() && facts.diameter().isEmpty()) {
			for (LineComment comment : inItsSubprogram(log)) {
				facts = join(facts, said(comment, log.tapsAlone(), log.drillsAlone()));
			}
		}
		if (facts.kind().isEmpty() && facts.diameter().isEmpty()) {
			facts = Stream.concat(own.stream(), listed(log).stream()).map(c -> FreeText.bareSize(c.said(), FactSource.TOOL_COMMENT, c.comment().at(), commentary.unit()))
					.reduce(facts, ToolFacts::or);
		}
		List<ProgramComment> comments = new ArrayList<>(1);
		for (LineComment comment : commentary.free(commentary.main().file(), stays.freeFrom(log), stretch.to())) {
			comments.add(comment.comment());
		}
		return new Known(defaults(facts), comments);
	}

	/** Remarks behind the blocks of a tool of which nobody else says the size: G83 Z-19 R2 F250 (BOHRER 5.0). */
	private List<LineComment> besideCuts(ToolLog log) {
		int change = stays.changeLine(log);
		List<LineComment> beside = new ArrayList<>(commentary.free(commentary.main().file(), change + 1, Math.min(stays.to(log), change + BEHIND)));
		beside.removeIf(comment -> !comment.code() || !mine(comment, number(log)));
		return beside;
	}

	/** Comments at the head of a subprogram that this tool alone works in, of which the program itself says nothing: O1001 (DRILL 8.5). */
	private List<LineComment> inItsSubprogram(ToolLog log) {
		return stays.subprograms(log).stream().flatMap(block -> commentary.above(block, Optional.empty()).stream().limit(BEHIND)).filter(comment -> mine(comment, number(log))).toList();
	}

	/** What a comment says of its tool: each text is read once, since a program comes back to the same tools. */
	private ToolFacts said(LineComment comment, boolean taps, boolean drills) {
		Location at = comment.comment().at();
		return texts.computeIfAbsent(new Said(comment.said().strip(), taps, drills), said -> FreeText.tool(said.text(), FactSource.TOOL_COMMENT, at, commentary.unit(),
				kind -> said.taps() ? kind.tap() : said.drills() && !kind.threading())).at(at);
	}

	/** The number of the tool; -1 where it is not known. */
	private static int number(ToolLog log) {
		return log.tool().known() ? (int) Math.round(log.tool().value()) : -1;
	}

	/** What TOOL notes say: those with its number wherever they stand, those without one where the stay is; in the order they stand. */
	private ToolFacts notes(ToolLog log, Stretch stretch) {
		List<Note.OfTool> notes = new ArrayList<>(numbered.getOrDefault(number(log), List.of()));
		for (Note note : commentary.notes(commentary.main().file(), stretch.from(), stretch.to())) {
			if (note instanceof Note.OfTool tool && tool.number().isEmpty()) {
				notes.add(tool);
			}
		}
		notes.sort((one, other) -> Integer.compare(one.comment().at().line(), other.comment().at().line()));
		ToolFacts facts = ToolFacts.NONE;
		for (Note.OfTool note : notes) {
			facts = facts.or(note.facts());
		}
		return facts;
	}

	/** Comments that speak of the tool, nearest to its change first: with its T word, above it, behind the change up to its first cut; a title last. */
	private List<LineComment> own(ToolLog log, Stretch stretch) {
		int change = stretch.change();
		int number = stretch.number();
		ProgramFile main = commentary.main().file();
		List<LineComment> own = new ArrayList<>();
		int named = stretch.named();
		if (named >= 0 && named != change) {
			// T="DRILL" ; DRILL 6.8, and M6 below
			List<LineComment> there = commentary.free(main, named, named);
			there.stream().filter(LineComment::name).forEach(own::add);
			there.stream().filter(comment -> !comment.name() && mine(comment, number)).forEach(own::add);
		}
		for (LineComment comment : commentary.free(main, change, change)) {
			if (mine(comment, number) && (named < 0 || named == change || !comment.name())) {
				own.add(comment);
			}
		}
		List<LineComment> above = new ArrayList<>(0);
		List<LineComment> before = commentary.free(main, stays.freeFrom(log), change - 1);
		for (LineComment comment : listsSeveral(before) ? List.<LineComment>of() : before) {
			if (mine(comment, number) && (!comment.code() || comment.ofTool(number))) {
				above.add(0, comment);
			}
		}
		List<LineComment> titles = titles(log, above);
		above.removeAll(titles);
		List<LineComment> below = new ArrayList<>(0);
		for (LineComment comment : commentary.free(main, change + 1, Math.min(stretch.to(), change + BEHIND))) {
			if (!comment.code() && mine(comment, number)) {
				below.add(comment);
			}
		}
		for (int part : log.part() == 0 ? new int[] {0} : new int[] {log.part(), 0}) {
			for (LineComment comment : byToolWord.getOrDefault(new Pocket(part, number), Map.of()).values()) {
				if (!own.contains(comment) && mine(comment, number)) {
					own.add(comment);
				}
			}
		}
		if (log.change().isPresent() && !(above.isEmpty() && below.isEmpty() && titles.isEmpty())) {
			List<LineComment> around = new ArrayList<>(above);
			around.addAll(below);
			around.removeIf(comment -> heads(comment, log));
			own.addAll(suiting(around, log));
			titles.stream().filter(c -> stays.onlyTool(log) || !threads(c) && !names(c, ToolKind.BORING)).forEach(own::add);
		} else if (log.change().isEmpty()) {
			own.addAll(below);
		}
		return own;
	}

	/**
	 * Of the comments above a program's first tool those with code between them and its change: they speak of the program as well as of the tool. All of them do
	 * where the tool drills alone and a later one taps: (M8 TAP) stands above the spot drill.
	 */
	private List<LineComment> titles(ToolLog log, List<LineComment> above) {
		int change = stays.changeLine(log);
		if (above.isEmpty() || stays.firstChange(log.part()) != change) {
			return List.of();
		}
		ProgramText text = commentary.main().file().text();
		int line = change - 1;
		// a T that a block of its own selects before M6 is part of the change
		while (line >= 0 && text.block(line).words().stream().allMatch(word -> word.address() == 'T' || word.address() == 'N')) {
			line--;
		}
		int code = line;
		boolean first = log.drillsAlone() && stays.tappedLater(log);
		return above.stream().filter(c -> c.line() <= code || first && commentary.listLine(c).isEmpty()).toList();
	}

	/** Whether a comment that names milling alone stands above a tool that drills alone and is a drill by the list: (MILLING) heads what live tools do on a lathe. */
	private boolean heads(LineComment comment, ToolLog log) {
		boolean drill = log.drillsAlone() && list.getOrDefault(pocket(log), ToolFacts.NONE).kind().filter(k -> k.value().bores()).isPresent();
		return drill && names(comment, ToolKind.END_MILL);
	}

	/** Whether a comment names a kind of tool and no size of it, as MILLING that heads a part of a program, and BORE of a title that is the part's. */
	private boolean names(LineComment comment, ToolKind kind) {
		ToolFacts said = FreeText.tool(comment.said().strip(), FactSource.TOOL_COMMENT, comment.comment().at(), commentary.unit());
		return said.kind().filter(k -> k.value() == kind).isPresent() && said.diameter().isEmpty();
	}

	private boolean threads(LineComment comment) {
		return kind(comment).filter(ToolKind::threading).isPresent();
	}

	private Optional<ToolKind> kind(LineComment comment) {
		return FreeText.tool(comment.said().strip(), FactSource.TOOL_COMMENT, comment.comment().at(), commentary.unit()).kind().map(Fact::value);
	}

	/** Of comments around a change that name a tool for threads and one for none, those that suit what the tool does: (WATCH THE REAMER) stands beside (TAP M8) too. */
	private List<LineComment> suiting(List<LineComment> around, ToolLog log) {
		boolean told = log.tapsAlone() || log.drillsAlone();
		if (!told || around.stream().noneMatch(this::threads) || around.stream().noneMatch(c -> kind(c).filter(k -> !k.threading()).isPresent())) {
			return around;
		}
		return around.stream().filter(c -> kind(c).filter(k -> k.threading() != log.taps()).isEmpty()).toList();
	}

	/** Whether the nearest of the comments is the last of a list, line under line, that names several tools without their numbers: none of them is told. */
	private boolean listsSeveral(List<LineComment> before) {
		if (before.isEmpty()) {
			return false;
		}
		List<ToolFacts> named = new ArrayList<>();
		int line = before.get(before.size() - 1).line();
		for (int i = before.size() - 1; i >= 0 && line - before.get(i).line() <= 1 && !before.get(i).code(); i--) {
			LineComment comment = before.get(i);
			line = comment.line();
			if (commentary.listLine(comment).isEmpty()) {
				named.add(FreeText.tool(comment.said().strip(), FactSource.TOOL_COMMENT, comment.comment().at(), commentary.unit()));
			}
		}
		List<ToolFacts> tools = named.stream().filter(facts -> facts.kind().isPresent()).toList();
		// a drill below a title that speaks of taps is a drill
		boolean told = tools.size() < 3 && tools.stream().findFirst().filter(ToolFacts::isTap).isEmpty();
		return !told && tools.stream().anyMatch(one -> !FreeText.compatible(one, tools.get(0)));
	}

	/** The line of the T word that calls the tool by its name, which may stand before the change; -1 where it is called by number or in another file. */
	private int namedAt(ToolLog log) {
		return log.tool().word().filter(word -> !log.tool().known()).map(word -> commentary.mainLine(word.block())).orElse(-1);
	}

	private boolean mine(LineComment comment, int number) {
		if (comment.ofAnotherTool(number)) {
			return false;
		}
		Optional<ToolListLine> line = commentary.listLine(comment);
		return line.isEmpty() || line.get().number() == number;
	}

	private static ToolFacts join(ToolFacts nearer, ToolFacts farther) {
		return FreeText.compatible(nearer, farther) ? nearer.or(farther) : nearer;
	}

	private ToolFacts defaults(ToolFacts facts) {
		Optional<Fact<Double>> turns = Optional.empty();
		if (facts.isTap()) {
			turns = leads.computeIfAbsent(new Tap(facts.kind().orElseThrow().value(), facts.styles().map(Fact::value).orElse(Set.<TapStyle>of())), ToolBook::assumed);
		}
		return facts.withDefaults(turns, facts.kind().filter(k -> k.value() == ToolKind.DRILL).isPresent() ? POINT : Optional.empty());
	}

	private static Optional<Fact<Double>> assumed(Tap tap) {
		LeadForm form = LeadForm.typical(tap.kind(), tap.styles());
		return Optional.of(Fact.of(form.typicalThreads(), FactSource.DEFAULT, "a lead of " + form.typicalThreads() + " threads, form " + form.name() + ", is assumed"));
	}
}
