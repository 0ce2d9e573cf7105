package truelead.checker.tool;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.LeadForm;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ToolKind;

/** Puts together what is known of each tool: notes, its own comments, the list at the head of the program, the tool list file. */
public final class ToolBook {

	private static final Optional<Fact<Double>> POINT = Optional.of(Fact.of(DrillPoint.ORDINARY, FactSource.DEFAULT,
			"a point of 118 degrees is assumed"));

	/**
	 * Lines that differ and may list one tool; where a program says something of it at each of thousands of operations, the first of them
	 * do.
	 */
	private static final int MOST_LINES = 100;

	private final Commentary commentary;
	private final Stays stays;
	private final Job job;
	private final ToolComments comments;
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
	private record Stretch(int part, int number, boolean changed, boolean taps, boolean drills, double speed, int change, int named,
			int from, int to, List<Integer> subprograms) {
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
		this.comments = new ToolComments(commentary, stays);
		Set<String> said = new HashSet<>();
		for (LineComment comment : commentary.main().comments()) {
			int part = stays.partOf(comment.line());
			commentary.listLine(comment).ifPresent(line -> {
				Pocket pocket = new Pocket(part, line.number());
				listing.add(part);
				List<LineComment> lines = listed.computeIfAbsent(pocket, n -> new ArrayList<>(1));
				if (lines.size() < MOST_LINES && said.add(pocket + comment.text())) {
					lines.add(comment);
				}
				list.merge(pocket, FreeText.tool(line.text(), FactSource.TOOL_LIST, comment.comment().at(), commentary.unit()),
						ToolBook::join);
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

	/**
	 * Where the list speaks of a tool: in its own program's, or in the first program's where that has none; the only tool listed where none
	 * is called.
	 */
	private Pocket pocket(ToolLog log) {
		int part = listing.contains(log.part()) ? log.part() : 0;
		boolean called = log.number() >= 0 || log.change().isPresent() || stays.changes(log.part());
		List<Pocket> all = called ? List.of() : list.keySet().stream().filter(pocket -> pocket.part() == part).limit(2).toList();
		return all.size() == 1 ? all.get(0) : new Pocket(part, log.number());
	}

	/** The stay with everything that is known of its tool. */
	public ToolUse use(ToolLog log) {
		Stretch stretch = new Stretch(log.part(), log.number(), log.change().isPresent(), log.tapsAlone(), log.drillsAlone(),
				commentary.unit() == LengthUnit.INCH ? log.speed() : Double.NaN, stays.changeLine(log), namedAt(log), stays.from(log),
				stays.to(log), stays.subprograms(log).stream().map(BlockRef::line).toList());
		Known known = stretches.computeIfAbsent(stretch, fresh -> known(log, fresh));
		return new ToolUse(log.index(), log.tool(), log.change(), log.firstOrder(), log.lastOrder(), known.comments(), known.facts(),
				log.summary());
	}

	private Known known(ToolLog log, Stretch stretch) {
		Optional<ToolKind> listed = list.getOrDefault(pocket(log), ToolFacts.NONE).kind().map(Fact::value);
		List<LineComment> own = comments.own(log, stretch.named(), stretch.to(), listed);
		ToolFacts facts = notes(log, stretch);
		for (LineComment comment : own) {
			boolean named = log.change().isPresent() && (comment.line() == stretch.change() || comment.ofTool(log.number()));
			facts = join(facts, said(comment, named && log.tapsAlone(), named && log.drillsAlone()));
		}
		int number = log.number();
		facts = join(facts, list.getOrDefault(pocket(log), ToolFacts.NONE));
		facts = join(facts, job.tool(number));
		if (facts.diameter().isEmpty() && log.change().isPresent()) {
			for (LineComment comment : comments.besideCuts(log)) {
				facts = join(facts, said(comment, log.tapsAlone(), log.drillsAlone()));
			}
		}
		if (facts.kind().isEmpty() && facts.diameter().isEmpty()) {
			for (LineComment comment : comments.inItsSubprogram(log)) {
				facts = join(facts, said(comment, log.tapsAlone(), log.drillsAlone()));
			}
		}
		if (facts.kind().isEmpty() && facts.diameter().isEmpty()) {
			// T15 = 5.0 DRILL - M6 TAP: the one that does what the tool does
			for (LineComment line : listed(log)) {
				facts = join(facts, said(line, log.tapsAlone(), log.drillsAlone()));
			}
		}
		if (facts.kind().isEmpty() && facts.diameter().isEmpty()) {
			facts = Stream.concat(own.stream(), listed(log).stream())
					.map(c -> FreeText.bareSize(c.said(), FactSource.TOOL_COMMENT, c.comment().at(), commentary.unit()))
					.reduce(facts, ToolFacts::or);
		}
		if (facts.kind().isEmpty() && facts.diameter().isEmpty() && log.drillsAlone()) {
			facts = Stream.concat(own.stream().filter(c -> c.line() == stretch.change() || c.name() || c.ofTool(log.number())),
					listed(log).stream()).map(c -> FreeText.sizeOfUnknown(c.said(), FactSource.TOOL_COMMENT, c.comment().at(),
							commentary.unit())).reduce(facts, ToolFacts::or);
		}
		List<ProgramComment> around = new ArrayList<>(1);
		for (LineComment comment : commentary.free(commentary.main().file(), stays.freeFrom(log), stretch.to())) {
			around.add(comment.comment());
		}
		return new Known(defaults(DrillUnit.byTurning(facts, stretch.speed())), around);
	}

	/** What a comment says of its tool: each text is read once, since a program comes back to the same tools. */
	private ToolFacts said(LineComment comment, boolean taps, boolean drills) {
		Location at = comment.comment().at();
		return texts.computeIfAbsent(new Said(comment.said().strip(), taps, drills),
				said -> FreeText.tool(said.text(), FactSource.TOOL_COMMENT, at, commentary.unit(), kind -> said.taps() ? kind.tap()
						: said.drills() && !kind.threading())).at(at);
	}

	/** What TOOL notes say: those with its number wherever they stand, those without one where the stay is; in the order they stand. */
	private ToolFacts notes(ToolLog log, Stretch stretch) {
		List<Note.OfTool> notes = new ArrayList<>(numbered.getOrDefault(log.number(), List.of()));
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

	/**
	 * The line of the T word that calls the tool by its name, which may stand before the change; -1 where it is called by number or in
	 * another file.
	 */
	private int namedAt(ToolLog log) {
		return log.tool().word().filter(word -> !log.tool().known()).map(word -> commentary.mainLine(word.block())).orElse(-1);
	}

	private static ToolFacts join(ToolFacts nearer, ToolFacts farther) {
		return FreeText.compatible(nearer, farther) ? nearer.or(farther) : nearer;
	}

	private ToolFacts defaults(ToolFacts facts) {
		Optional<Fact<Double>> turns = Optional.empty();
		if (facts.isTap()) {
			turns = leads.computeIfAbsent(new Tap(facts.kind().orElseThrow().value(),
					facts.styles().map(Fact::value).orElse(Set.<TapStyle>of())), ToolBook::assumed);
		}
		return facts.withDefaults(turns, facts.kind().filter(k -> k.value() == ToolKind.DRILL).isPresent() ? POINT : Optional.empty());
	}

	private static Optional<Fact<Double>> assumed(Tap tap) {
		LeadForm form = LeadForm.typical(tap.kind(), tap.styles());
		return Optional.of(Fact.of(form.typicalThreads(), FactSource.DEFAULT, "a lead of " + form.typicalThreads() + " threads, form "
				+ form.name() + ", is assumed"));
	}
}
