package truelead.checker.work;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.tool.ToolUse;

/** Finds the threading operation that a line of a program belongs to, or else the nearest; lines count from 0 in the program itself. */
public final class NearestOperation {

	private final Work work;
	private final String program;

	private NearestOperation(Work work) {
		this.work = work;
		this.program = work.shop().program().name();
	}

	/**
	 * The operation that a line is part of: a block of its cycle or helix, in a subprogram of the program or the call of one, a line that
	 * names its thread, any line of its tool from the tool's comments on, or a block that makes one of its holes.
	 */
	public static Optional<ThreadingOperation> at(Work work, int line) {
		return new NearestOperation(work).at(line);
	}

	/** The operation that a line is part of, or the one with the nearest block; empty only where the program makes no thread. */
	public static Optional<ThreadingOperation> to(Work work, int line) {
		NearestOperation finder = new NearestOperation(work);
		return finder.at(line).or(() -> work.operations().stream()
				.min(Comparator.comparingInt(operation -> finder.distance(operation, line))));
	}

	/** The line at which the comments or the change of an operation's tool begin. */
	public static int start(Work work, ThreadingOperation operation) {
		return new NearestOperation(work).start(operation.tool());
	}

	private Optional<ThreadingOperation> at(int line) {
		return first(operation -> blocks(operation).contains(line)).or(() -> first(operation -> saysSo(operation, line)))
				.or(() -> ofTool(line)).or(() -> atHole(line));
	}

	private Optional<ThreadingOperation> first(Predicate<ThreadingOperation> condition) {
		return work.operations().stream().filter(condition).findFirst();
	}

	/** The lines of an operation's blocks: where they stand, and where the program calls them. */
	private TreeSet<Integer> blocks(ThreadingOperation operation) {
		TreeSet<Integer> lines = new TreeSet<>();
		add(lines, operation.block());
		if (operation instanceof Tapping tapping) {
			tapping.strokes().forEach(stroke -> {
				add(lines, stroke.block());
				stroke.back().ifPresent(back -> add(lines, back.block()));
			});
		} else if (operation instanceof ThreadMilling milling) {
			milling.passes().forEach(pass -> Stream.of(pass.entry(), pass.helix(), pass.exit()).flatMap(List::stream).map(Step::block)
					.forEach(block -> add(lines, block)));
		}
		return lines;
	}

	private void add(TreeSet<Integer> lines, BlockRef block) {
		if (block.file().name().equals(program)) {
			lines.add(block.line());
		}
		lines.add(block.outermost().line());
	}

	private boolean saysSo(ThreadingOperation operation, int line) {
		return Stream.concat(operation.wanted().named().stream(), operation.wanted().depth().stream()).map(Fact::at)
				.flatMap(Optional::stream).anyMatch(at -> at.line() == line && at.file().name().equals(program));
	}

	/** Of the tool that a line belongs to: the first operation that is not over before it, else the last. */
	private Optional<ThreadingOperation> ofTool(int line) {
		List<ThreadingOperation> its = work.operations().stream().filter(operation -> start(operation.tool()) <= line
				&& line <= end(operation)).toList();
		return its.stream().filter(operation -> last(operation) >= line).findFirst()
				.or(() -> its.stream().reduce((before, after) -> after));
	}

	/** Where a tool's comments or its change begin. */
	private int start(ToolUse tool) {
		int change = tool.change().map(block -> block.outermost().line()).orElse(0);
		return tool.comments().stream().filter(comment -> comment.at().file().name().equals(program))
				.mapToInt(comment -> comment.at().line()).reduce(change, Math::min);
	}

	/** The line before the next tool; of the last tool the operation's last block, as subprograms may stand behind it. */
	private int end(ThreadingOperation operation) {
		int own = start(operation.tool());
		ToIntFunction<ToolUse> start = this::start;
		return work.tools().stream().mapToInt(start).filter(line -> line > own).min().orElse(last(operation) + 1) - 1;
	}

	private static int last(ThreadingOperation operation) {
		int last = operation.block().outermost().line();
		if (operation instanceof Tapping tapping) {
			last = tapping.strokes().stream().mapToInt(stroke -> stroke.block().outermost().line()).reduce(last, Math::max);
		} else if (operation instanceof ThreadMilling milling) {
			last = milling.passes().outermost().stream().mapToInt(pass -> pass.last().block().outermost().line()).reduce(last, Math::max);
		}
		return last;
	}

	private Optional<ThreadingOperation> atHole(int line) {
		return first(operation -> operation.holes().stream().flatMap(hole -> hole.cuts().stream()).map(Cut::block)
				.anyMatch(block -> block.outermost().line() == line || block.line() == line && block.file().name().equals(program)));
	}

	private int distance(ThreadingOperation operation, int line) {
		TreeSet<Integer> lines = blocks(operation);
		Integer below = lines.floor(line);
		Integer above = lines.ceiling(line);
		return Math.min(below == null ? Integer.MAX_VALUE : line - below, above == null ? Integer.MAX_VALUE : above - line);
	}
}
