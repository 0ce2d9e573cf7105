package truelead.checker.tool;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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
 * others, tap; one that does not is taken for a slip where the program calls all that the list has.
 */
public final class BareLists {

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
		for (Form form : Form.values()) {
			Map<LineComment, ToolListLine> lines = list(part, form);
			if (!lines.isEmpty()) {
				return lines;
			}
		}
		return Map.of();
	}

	/** How the number of a tool is written. */
	private enum Form {
		/** Before a sign or a column. */
		FIRST(ToolListLine::bare),
		/** In the second column, behind the number of the line. */
		SECOND(ToolListLine::secondColumn),
		/** One blank before the tool, which may be a size, so that no tool of the list may be wrong. */
		BLANK(ToolListLine::barest);

		private final Function<String, Optional<ToolListLine>> reader;

		Form(Function<String, Optional<ToolListLine>> reader) {
			this.reader = reader;
		}
	}

	private Map<LineComment, ToolListLine> list(int part, Form form) {
		Map<LineComment, ToolListLine> lines = new HashMap<>();
		Map<Integer, ToolFacts> tools = new HashMap<>();
		List<LineComment> head = commentary.main().between(stays.begin(part), stays.firstChange(part) - 1);
		for (LineComment comment : head) {
			Optional<ToolListLine> own = form == Form.BLANK ? commentary.listLine(comment) : Optional.empty();
			Optional<ToolListLine> line = comment.code() ? Optional.empty() : own.or(() -> form.reader.apply(comment.text()));
			if (line.isPresent()) {
				lines.put(comment, line.get());
				ToolFacts facts = FreeText.tool(line.get().text(), FactSource.TOOL_LIST, comment.comment().at(), commentary.unit());
				if (tools.put(line.get().number(), facts) != null) {
					return Map.of();
				}
			}
		}
		return lines.size() > 1 && fits(part, tools, form == Form.BLANK) ? lines : Map.of();
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
		return odd == 0 && (!strict || called.equals(tools.keySet())) || !strict && odd == 1 && called.equals(tools.keySet());
	}

	private static int number(Setting tool) {
		return tool.known() ? (int) Math.round(tool.value()) : -1;
	}
}
