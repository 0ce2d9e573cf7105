package truelead.checker.edit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.tool.ToolUse;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/** Tells which lines of a program can be folded: by tool, by operation, by program and subprogram, by loop. */
public final class Folds {

	/** A program with more holes than this is folded by tool and thread alone. */
	private static final int MOST_HOLES = 100_000;

	private final Work work;
	private final ProgramText text;
	private final List<Fold> folds = new ArrayList<>();
	private final TreeSet<Integer> ends = new TreeSet<>();

	private Folds(Work work) {
		this.work = work;
		this.text = work.shop().program().text();
	}

	/** The folds in the order of their first lines, an outer one before those in it; no two have the same first line. At most so many. */
	public static List<Fold> of(Work work, int most) {
		Folds reading = new Folds(work);
		reading.marks();
		reading.tools();
		reading.operations();
		List<Fold> sorted = reading.folds.stream().filter(fold -> fold.last() > fold.first())
				.sorted(Comparator.comparingInt(Fold::first).thenComparing(Fold::last, Comparator.reverseOrder())).toList();
		List<Fold> distinct = new ArrayList<>();
		Set<Integer> first = new HashSet<>();
		for (Fold fold : sorted) {
			if (distinct.size() < most && first.add(fold.first())) {
				distinct.add(fold);
			}
		}
		return distinct;
	}

	private void marks() {
		Deque<FoldMarks.Mark> open = new ArrayDeque<>();
		List<Integer> programs = new ArrayList<>();
		for (int chunk = 0; chunk < text.chunks().size(); chunk++) {
			int before = text.firstLine(chunk);
			for (FoldMarks.Mark mark : FoldMarks.of(text.chunks().get(chunk))) {
				int line = before + mark.line();
				switch (mark.what()) {
					case PROGRAM -> programs.add(line);
					case END -> ends.add(line);
					case PERCENT -> ends.add(Math.max(0, line - 1));
					case SUB, LOOP -> open.push(new FoldMarks.Mark(line, mark.what(), mark.name()));
					default -> close(open, mark, line);
				}
			}
		}
		for (int i = 0; i < programs.size(); i++) {
			int behind = i + 1 < programs.size() ? programs.get(i + 1) : text.lineCount();
			Integer end = ends.lower(behind);
			if (end == null || end <= programs.get(i)) {
				end = behind - 1;
				ends.add(end);
			}
			if (programs.size() > 1) {
				folds.add(new Fold(Fold.Kind.PROGRAM, programs.get(i), end));
			}
		}
	}

	private void close(Deque<FoldMarks.Mark> open, FoldMarks.Mark end, int line) {
		if (!open.isEmpty() && open.peek().name().equals(end.name())) {
			FoldMarks.Mark start = open.pop();
			folds.add(new Fold(start.what() == FoldMarks.What.SUB ? Fold.Kind.PROGRAM : Fold.Kind.LOOP, start.line(), line));
		}
	}

	private void tools() {
		TreeSet<Integer> changes = new TreeSet<>();
		for (ToolUse tool : work.tools()) {
			tool.change().filter(this::here).ifPresent(block -> changes.add(block.line()));
		}
		for (int change : changes) {
			Integer next = changes.higher(change);
			Integer end = ends.ceiling(change);
			int last = next == null ? text.lineCount() - 1 : headOf(next) - 1;
			folds.add(new Fold(Fold.Kind.TOOL, change, end == null ? last : Math.min(last, end)));
		}
	}

	/** The first of the lines without code before a tool change: what is said there is of the tool to come. */
	private int headOf(int change) {
		int line = change;
		while (line > 0 && saysOnly(text.block(line - 1))) {
			line--;
		}
		return line;
	}

	private static boolean saysOnly(Block block) {
		return block.elements().stream().allMatch(element -> element instanceof Element.Comment || element instanceof Element.Word word
				&& word.address() == 'N');
	}

	private void operations() {
		Map<Integer, Integer> lastLines = new TreeMap<>();
		for (ThreadingOperation operation : work.operations()) {
			if (operation instanceof Tapping tapping) {
				tapping.strokes().forEach(stroke -> reaches(lastLines, operation.block(), stroke.back().orElse(stroke.step()).block()));
			} else if (operation instanceof ThreadMilling milling) {
				milling.passes().outermost().forEach(pass -> reaches(lastLines, operation.block(), pass.last().block()));
			}
		}
		for (SinglePoint turned : work.course().singlePoints()) {
			turned.passes().forEach(pass -> reaches(lastLines, turned.pass().block(), pass.step().block()));
		}
		if (work.holes().size() <= MOST_HOLES) {
			for (Hole hole : work.holes()) {
				for (Cut cut : hole.cuts()) {
					if (cut.step() instanceof Step.Stroke stroke) {
						reaches(lastLines, stroke.cycle().start(), cut.block());
					}
				}
			}
		}
		lastLines.forEach((first, last) -> folds.add(new Fold(Fold.Kind.OPERATION, first, last)));
	}

	private void reaches(Map<Integer, Integer> lastLines, BlockRef first, BlockRef last) {
		if (here(first) && here(last)) {
			lastLines.merge(first.line(), last.line(), Math::max);
		}
	}

	private boolean here(BlockRef block) {
		return block.file().name().equals(work.shop().program().name());
	}
}
