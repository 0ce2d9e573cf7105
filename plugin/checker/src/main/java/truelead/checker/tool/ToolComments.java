package truelead.checker.tool;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.callout.ToolListLine;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.FreeText;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.ToolKind;
import truelead.grammar.ProgramText;

/** Which free comments of a program speak of the tool of a stay. */
final class ToolComments {

	/** Lines behind a change in which comments speak of its tool. */
	private static final int BEHIND = 12;

	/** A tool number in one program of the file. */
	private record Word(int part, int number) {
	}

	private final Commentary commentary;
	private final Stays stays;
	/** Comments beside T words; one that is written again says nothing new and is left out. */
	private final Map<Word, Map<String, LineComment>> besideT = new HashMap<>();

	ToolComments(Commentary commentary, Stays stays) {
		this.commentary = commentary;
		this.stays = stays;
		for (LineComment comment : commentary.main().comments()) {
			int tool = commentary.tool(comment);
			if (tool >= 0) {
				besideT.computeIfAbsent(new Word(stays.partOf(comment.line()), tool), t -> new LinkedHashMap<>())
						.putIfAbsent(comment.text(), comment);
			}
		}
	}

	/**
	 * Comments that speak of the tool, nearest to its change first: with its T word, above it, behind the change up to its first cut; a
	 * title last.
	 *
	 * @param named       line of the T word that calls it by its name, from 0; -1 where none does
	 * @param to          last line of its stay, from 0
	 * @param listed      what the list calls it: (MILLING) above a drill heads what live tools do on a lathe, and (DRILLING AND TAPPING)
	 *                    above a tap what the part is for
	 */
	List<LineComment> own(ToolLog log, int named, int to, Optional<ToolKind> listed) {
		int change = stays.changeLine(log);
		int number = log.number();
		ProgramFile main = commentary.main().file();
		List<LineComment> own = new ArrayList<>();
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
		for (LineComment comment : commentary.free(main, change + 1, Math.min(to, change + BEHIND))) {
			if (!comment.code() && mine(comment, number)) {
				below.add(comment);
			}
		}
		for (int part : log.part() == 0 ? new int[] {0} : new int[] {log.part(), 0}) {
			for (LineComment comment : besideT.getOrDefault(new Word(part, number), Map.of()).values()) {
				if (!own.contains(comment) && mine(comment, number)) {
					own.add(comment);
				}
			}
		}
		own.addAll(aroundInSubprogram(log));
		if (log.change().isPresent() && !(above.isEmpty() && below.isEmpty() && titles.isEmpty())) {
			List<LineComment> around = new ArrayList<>(above);
			around.addAll(below);
			boolean drill = listed.filter(ToolKind::bores).isPresent();
			around.removeIf(comment -> drill && log.drillsAlone() && names(comment, ToolKind.END_MILL) || otherWork(comment, listed));
			own.addAll(suiting(around, log));
			titles.stream().filter(c -> !otherWork(c, listed))
					.filter(c -> stays.onlyTool(log) || !threads(c) && !names(c, ToolKind.BORING)).forEach(own::add);
		} else if (log.change().isEmpty()) {
			own.addAll(below);
		}
		return own;
	}

	/** Comments right above and below a change that stands in a subprogram and changes to this tool alone. */
	private List<LineComment> aroundInSubprogram(ToolLog log) {
		if (log.change().flatMap(BlockRef::caller).isEmpty() || !stays.changesAtItsOwnBlock(log)) {
			return List.of();
		}
		BlockRef change = log.change().get();
		ProgramText text = change.file().text();
		int from = change.line();
		while (from > 0 && change.line() - from < BEHIND && remark(text, from - 1)) {
			from--;
		}
		int to = change.line();
		while (to + 1 < text.lineCount() && to - change.line() < BEHIND && remark(text, to + 1)) {
			to++;
		}
		return commentary.free(change.file(), from, to).stream().filter(comment -> !comment.code() && mine(comment, log.number())).toList();
	}

	private static boolean remark(ProgramText text, int line) {
		return text.block(line).words().isEmpty() && !text.block(line).comments().isEmpty();
	}

	/**
	 * Of the comments above a program's first tool those with code between them and its change: they speak of the program as well as of the
	 * tool. All of them do where the tool drills alone and a later one taps: (M8 TAP) stands above the spot drill.
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

	/** Remarks behind the blocks of a tool of which nobody else says the size: G83 Z-19 R2 F250 (BOHRER 5.0). */
	List<LineComment> besideCuts(ToolLog log) {
		int change = stays.changeLine(log);
		List<LineComment> beside = new ArrayList<>(commentary.free(commentary.main().file(), change + 1,
				Math.min(stays.to(log), change + BEHIND)));
		beside.removeIf(comment -> !comment.code() || !mine(comment, log.number()));
		return beside;
	}

	/** Comments at the head of a subprogram that this tool alone works in, of which the program itself says nothing: O1001 (DRILL 8.5). */
	List<LineComment> inItsSubprogram(ToolLog log) {
		return stays.subprograms(log).stream().flatMap(block -> commentary.above(block, Optional.empty()).stream().limit(BEHIND))
				.filter(comment -> mine(comment, log.number())).toList();
	}

	/**
	 * Whether a comment names a kind of tool and no size of it, as MILLING that heads a part of a program, and BORE of a title that is the
	 * part's.
	 */
	private boolean names(LineComment comment, ToolKind kind) {
		ToolFacts said = FreeText.tool(comment.said().strip(), FactSource.TOOL_COMMENT, comment.comment().at(), commentary.unit());
		return said.kind().filter(k -> k.value() == kind).isPresent() && said.diameter().isEmpty();
	}

	/** Whether a comment without a size speaks of other work than that of a tool for threads: (DRILL TO Z-18) of a tool that does both. */
	private boolean otherWork(LineComment comment, Optional<ToolKind> listed) {
		return listed.filter(ToolKind::threading).isPresent() && kind(comment).filter(kind -> !kind.threading()).filter(kind ->
				names(comment, kind)).isPresent();
	}

	private boolean threads(LineComment comment) {
		return kind(comment).filter(ToolKind::threading).isPresent();
	}

	private Optional<ToolKind> kind(LineComment comment) {
		return FreeText.tool(comment.said().strip(), FactSource.TOOL_COMMENT, comment.comment().at(), commentary.unit()).kind()
				.map(Fact::value);
	}

	/**
	 * Of comments around a change that name a tool for threads and one for none, those that suit what the tool does: (WATCH THE REAMER)
	 * stands beside (TAP M8) too.
	 */
	private List<LineComment> suiting(List<LineComment> around, ToolLog log) {
		boolean told = log.tapsAlone() || log.drillsAlone();
		if (!told || around.stream().noneMatch(this::threads) || around.stream().noneMatch(c -> kind(c).filter(k -> !k.threading())
				.isPresent())) {
			return around;
		}
		return around.stream().filter(c -> kind(c).filter(k -> k.threading() != log.taps()).isEmpty()).toList();
	}

	/**
	 * Whether the nearest of the comments is the last of a list, line under line, that names several tools without their numbers: none of
	 * them is told.
	 */
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

	private boolean mine(LineComment comment, int number) {
		if (comment.ofAnotherTool(number)) {
			return false;
		}
		Optional<ToolListLine> line = commentary.listLine(comment);
		return line.isEmpty() || line.get().number() == number;
	}
}
