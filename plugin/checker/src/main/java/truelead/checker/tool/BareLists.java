package truelead.checker.tool;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import truelead.checker.callout.ToolListLine;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.job.FactSource;
import truelead.checker.job.FreeText;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.Setting;

/**
 * Tool lists at the head of a program that number their tools without a letter, {@code (1: DRILL 6.8)}. The numbers may as well be those of
 * steps or sizes: they are taken for tools where every tool that the program calls is among them, and where those called taps, and no
 * others, tap; one that does not is taken for a slip where the program calls all that the list has. A single blank behind the number, as in
 * {@code (4 M6 TAP)}, may stand behind a count too, and is taken so only where the numbers rise.
 */
public final class BareLists {

	private static final int HUNDRED = 100;

	private final Commentary commentary;
	private final Stays stays;
	private final List<ToolLog> logs;
	private final Set<ToolLog> synchronised;

	/**
	 * @param logs         all stays, in order
	 * @param synchronised those that go along the axis in step with the spindle, as a tap does
	 */
	public BareLists(Commentary commentary, Stays stays, List<ToolLog> logs, Set<ToolLog> synchronised) {
		this.commentary = commentary;
		this.stays = stays;
		this.logs = logs;
		this.synchronised = synchronised;
	}

	/** Marks the lines of such lists. */
	public void take() {
		Map<LineComment, ToolListLine> taken = new HashMap<>();
		for (int part = 0; part < stays.parts(); part++) {
			taken.putAll(list(part));
		}
		if (!taken.isEmpty()) {
			commentary.main().list(taken);
		}
	}

	private Map<LineComment, ToolListLine> list(int part) {
		List<LineComment> head = commentary.main().between(stays.begin(part), stays.firstChange(part) - 1).stream()
				.filter(comment -> !comment.code()).toList();
		return Stream.<Function<LineComment, Optional<ToolListLine>>>of(comment -> ToolListLine.bare(comment.text()),
				comment -> ToolListLine.secondColumn(comment.text()), behindNumbers(head)::get).map(read -> list(part, head, read, false))
				.filter(list -> !list.isEmpty()).findFirst()
				.orElseGet(() -> list(part, head, comment -> ToolListLine.bareByBlank(comment.text()), true));
	}

	/** {@code (5) (M6 TAP)}: what stands behind a comment that is a number and no more, in the same line. */
	private static Map<LineComment, Optional<ToolListLine>> behindNumbers(List<LineComment> head) {
		Map<LineComment, Optional<ToolListLine>> lines = new HashMap<>();
		head.forEach(comment -> lines.put(comment, Optional.empty()));
		for (int i = 0; i + 1 < head.size(); i++) {
			OptionalInt number = ToolListLine.numberAlone(head.get(i).text());
			LineComment next = head.get(i + 1);
			if (number.isPresent() && next.line() == head.get(i).line()) {
				lines.put(next, ToolListLine.of(number.getAsInt(), next.text()));
			}
		}
		return lines;
	}

	/** @param strict whether the numbers rise, and every tool does as it is called */
	private Map<LineComment, ToolListLine> list(int part, List<LineComment> head, Function<LineComment, Optional<ToolListLine>> read,
			boolean strict) {
		Map<LineComment, ToolListLine> lines = new HashMap<>();
		Map<Integer, ToolFacts> tools = new LinkedHashMap<>();
		int last = -1;
		int groupsFrom = groupsFrom(part);
		for (LineComment comment : head) {
			Optional<ToolListLine> own = strict ? commentary.listLine(comment) : Optional.empty();
			Optional<ToolListLine> line = own.or(() -> read.apply(comment)).map(one -> ToolListLine.isOfGroup(comment.text())
					? one.by(one.number() + groupsFrom) : one);
			if (line.isPresent()) {
				lines.put(comment, line.get());
				ToolFacts facts = FreeText.tool(line.get().text(), FactSource.TOOL_LIST, comment.comment().at(), commentary.unit());
				if (tools.put(line.get().number(), facts) != null || strict && line.get().number() < last) {
					return Map.of();
				}
				last = line.get().number();
			}
		}
		return lines.size() > 1 && fits(part, tools, strict) ? lines : Map.of();
	}

	/** Groups of tools that wear may be called by a number above a round one that the control is told: group 3 by T103. */
	private int groupsFrom(int part) {
		return logs.stream().filter(log -> log.part() == part && log.change().isPresent()).mapToInt(log -> number(log.tool())).min()
				.orElse(0) / HUNDRED * HUNDRED;
	}

	private boolean fits(int part, Map<Integer, ToolFacts> tools, boolean strict) {
		Set<Integer> called = new HashSet<>();
		Set<Integer> tapping = new HashSet<>();
		for (ToolLog log : logs) {
			if (log.part() == part && log.change().isPresent()) {
				called.add(number(log.tool()));
			}
			if (log.part() == part && (log.taps() || synchronised.contains(log))) {
				tapping.add(number(log.tool()));
			}
		}
		if (!tools.keySet().containsAll(called)) {
			return false;
		}
		long odd = called.stream().filter(tool -> tools.get(tool).isTap() != tapping.contains(tool)).count();
		// numbers of steps would be wrong for two tools, the tap and the one taken for it: one alone runs the wrong cycle
		return odd == 0 || !strict && odd == 1 && called.equals(tools.keySet());
	}

	private static int number(Setting tool) {
		return tool.known() ? (int) Math.round(tool.value()) : -1;
	}
}
