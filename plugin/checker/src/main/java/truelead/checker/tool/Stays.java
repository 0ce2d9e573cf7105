package truelead.checker.tool;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import truelead.checker.comment.Commentary;
import truelead.checker.program.BlockRef;

/** Where in the text of the program each stay of a tool begins and ends, so that comments can be told to whom they belong. */
public final class Stays {

	/** How far above a tool change a free comment still speaks of the tool. */
	private static final int ABOVE = 17;

	/** How many stays to either side are looked at; only a loop that has no end changes tools more often without going on in the text. */
	private static final int SIGHT = 100;

	private final List<ToolLog> tools;
	private final Commentary commentary;
	private final int[] changes;
	/** The first line whose notes belong to each stay. */
	private final int[] froms;
	private final int[] firstChanges;
	private final int[] changesIn;
	/** The tools of each program that run tapping cycles. */
	private final List<Set<Double>> tapping = new ArrayList<>();
	/** The first line of each program of the file. */
	private final List<Integer> begins = new ArrayList<>();

	private final Set<String> shared;
	private final Map<Line, Double> changers;

	/** @param tools all stays, in order */
	public Stays(List<ToolLog> tools, Commentary commentary) {
		this.tools = tools;
		this.commentary = commentary;
		for (ToolLog tool : tools) {
			if (tool.part() == begins.size()) {
				int before = begins.isEmpty() ? 0 : begins.get(begins.size() - 1);
				begins.add(Math.max(before, tool.behind().map(end -> commentary.mainLine(end) + 1).orElse(0)));
			}
		}
		this.changes = new int[tools.size()];
		this.froms = new int[tools.size()];
		int[] motions = new int[tools.size()];
		for (ToolLog tool : tools) {
			int line = tool.change().isPresent() ? commentary.mainLine(tool.change().get()) : -1;
			changes[tool.index()] = line >= 0 ? line : begins.get(tool.part());
			motions[tool.index()] = tool.lastMotion().isPresent() ? commentary.mainLine(tool.lastMotion().get()) : -1;
			froms[tool.index()] = firstLine(tool.index(), motions);
		}
		this.shared = shared();
		this.changers = changers();
		this.firstChanges = new int[begins.size()];
		this.changesIn = new int[begins.size()];
		Arrays.fill(firstChanges, -1);
		begins.forEach(any -> tapping.add(new HashSet<>()));
		for (ToolLog tool : tools) {
			changesIn[tool.part()] += tool.change().isPresent() ? 1 : 0;
			if (tool.taps()) {
				tapping.get(tool.part()).add(tool.tool().value());
			}
			if (tool.change().isPresent() && firstChanges[tool.part()] < 0) {
				firstChanges[tool.part()] = changeLine(tool);
			}
		}
	}

	/**
	 * The subprograms that the last motion of a stay stands in, innermost first, and that no other tool works in: their titles speak of its
	 * tool.
	 */
	List<BlockRef> subprograms(ToolLog tool) {
		return calls(tool).filter(block -> !shared.contains(name(block))).toList();
	}

	private static Stream<BlockRef> calls(ToolLog tool) {
		return Stream.iterate(tool.lastMotion(), block -> block.flatMap(BlockRef::caller).isPresent(),
				block -> block.flatMap(BlockRef::caller)).flatMap(Optional::stream);
	}

	/** Whether no other tool is changed to at the block of a tool's change, as in a subprogram that all changes call. */
	boolean changesAtItsOwnBlock(ToolLog tool) {
		return tool.change().filter(change -> changers.getOrDefault(new Line(change), Double.NaN) == tool.tool().value()).isPresent();
	}

	/** A line of a file. */
	private record Line(String file, int line) {

		Line(BlockRef block) {
			this(block.file().name(), block.line());
		}
	}

	/** The tool of each block of a subprogram that changes to one; NaN where several are changed to there. */
	private Map<Line, Double> changers() {
		Map<Line, Double> changers = new HashMap<>();
		for (ToolLog tool : tools) {
			tool.change().filter(change -> change.caller().isPresent())
					.ifPresent(change -> changers.merge(new Line(change), tool.tool().value(), (first, other) -> first.equals(other) ? first
							: Double.valueOf(Double.NaN)));
		}
		return changers;
	}

	private String name(BlockRef block) {
		return commentary.of(block.file()).startOf(block.line()) + " " + block.file().name();
	}

	/** The subprograms that several tools work in. */
	private Set<String> shared() {
		Map<String, Double> users = new HashMap<>();
		Set<String> several = new HashSet<>();
		for (ToolLog tool : tools) {
			calls(tool).map(this::name).filter(name -> users.merge(name, tool.tool().value(), (first, any) -> first) != tool.tool().value())
					.forEach(several::add);
		}
		return several;
	}

	/** How many programs the file has. */
	int parts() {
		return begins.size();
	}

	/** The first line of a program of the file, counted from 0. */
	public int begin(int part) {
		return begins.get(part);
	}

	/** The program of the file that a line belongs to, counted from 0. */
	int partOf(int line) {
		int found = Collections.binarySearch(begins, line);
		return Math.max(0, found >= 0 ? found : -found - 2);
	}

	/**
	 * The line of a tool's change in the main program; for what is in the spindle before a program's first change, that program's first
	 * line.
	 */
	public int changeLine(ToolLog tool) {
		return changes[tool.index()];
	}

	/** The first line whose notes belong to a tool: the one after the last motion of the tool before it. */
	public int from(ToolLog tool) {
		return froms[tool.index()];
	}

	/** @param motions the line of the last motion of each stay up to this one; -1 for none in the program itself */
	private int firstLine(int stay, int[] motions) {
		int change = changes[stay];
		int last = -1;
		for (int i = stay - 1; i >= Math.max(0, stay - SIGHT) && last < 0; i--) {
			last = motions[i] < change ? motions[i] : -1;
		}
		return Math.min(last + 1, change);
	}

	/** The first line whose free comments belong to a tool. */
	public int freeFrom(ToolLog tool) {
		return Math.max(from(tool), changeLine(tool) - ABOVE);
	}

	/**
	 * The last line before the comments of the next tool begin, or a subprogram that stands behind the program: its title says what it
	 * does, whoever calls it.
	 */
	public int to(ToolLog tool) {
		return Math.min(toNext(tool), commentary.main().nextStart(changeLine(tool)) - 1);
	}

	private int toNext(ToolLog tool) {
		int change = changeLine(tool);
		for (int i = tool.index() + 1; i < Math.min(tools.size(), tool.index() + SIGHT); i++) {
			int next = changes[i];
			if (next > change) {
				return Math.max(change, froms[i] - 1);
			}
		}
		return commentary.main().file().text().lineCount() - 1;
	}

	/** Whether a tool is the only one of its program that runs tapping cycles. */
	public boolean onlyTap(ToolLog tool) {
		return tool.taps() && tapping.get(tool.part()).size() == 1;
	}

	/** Whether a program of the file changes tools. */
	boolean changes(int part) {
		return changesIn[part] > 0;
	}

	/** Whether a tool's program of the file changes to no other tool. */
	boolean onlyTool(ToolLog tool) {
		return changesIn[tool.part()] == 1;
	}

	/** Whether a later tool of its program of the file taps in a tapping cycle. */
	boolean tappedLater(ToolLog tool) {
		return tools.subList(tool.index() + 1, tools.size()).stream().anyMatch(later -> later.part() == tool.part() && later.taps()
				&& later.tool().value() != tool.tool().value());
	}

	/** The line of the first tool change of a program of the file; its last line where there is none. */
	public int firstChange(int part) {
		int next = part + 1 < begins.size() ? begins.get(part + 1) : commentary.main().file().text().lineCount();
		return firstChanges[part] >= 0 ? firstChanges[part] : next - 1;
	}
}
