package truelead.checker.work;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.callout.ToolListLine;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.job.FactSource;
import truelead.checker.job.FreeText;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.Setting;
import truelead.checker.tool.ToolLog;

/**
 * Tool lists at the head of a program that number their tools without a letter, {@code (1: DRILL 6.8)}. The numbers may as well be those of
 * steps or sizes: they are taken for tools where every tool that the program calls is among them, and where those called taps, and no others, tap;
 * one that does not is taken for a slip where the program calls all that the list has.
 */
final class BareLists {

	private final Commentary commentary;
	private final Stays stays;
	private final Recorder recorder;

	BareLists(Commentary commentary, Stays stays, Recorder recorder) {
		this.commentary = commentary;
		this.stays = stays;
		this.recorder = recorder;
	}

	/** Marks the lines of such lists. */
	void take() {
		Map<LineComment, ToolListLine> taken = new HashMap<>();
		for (int part = 0; part < stays.parts(); part++) {
			taken.putAll(list(part));
		}
		if (!taken.isEmpty()) {
			commentary.main().list(taken);
		}
	}

	private Map<LineComment, ToolListLine> list(int part) {
		Map<LineComment, ToolListLine> first = list(part, false);
		return first.isEmpty() ? list(part, true) : first;
	}

	/** @param second whether the tool's number stands in the second column, behind that of the line */
	private Map<LineComment, ToolListLine> list(int part, boolean second) {
		Map<LineComment, ToolListLine> lines = new HashMap<>();
		Map<Integer, ToolFacts> tools = new HashMap<>();
		List<LineComment> head = commentary.main().between(stays.begin(part), stays.firstChange(part) - 1);
		for (LineComment comment : head) {
			Optional<ToolListLine> line = comment.code() ? Optional.empty() : second ? ToolListLine.secondColumn(comment.text()) : ToolListLine.bare(comment.text());
			if (line.isPresent()) {
				lines.put(comment, line.get());
				ToolFacts facts = FreeText.tool(line.get().text(), FactSource.TOOL_LIST, comment.comment().at(), commentary.unit());
				if (tools.put(line.get().number(), facts) != null) {
					return Map.of();
				}
			}
		}
		return lines.size() > 1 && fits(part, tools) ? lines : Map.of();
	}

	private boolean fits(int part, Map<Integer, ToolFacts> tools) {
		Set<Integer> called = new HashSet<>();
		Set<Integer> tapping = new HashSet<>();
		for (ToolLog log : recorder.tools) {
			if (log.part() == part && log.change().isPresent()) {
				called.add(number(log.tool()));
			}
		}
		for (Recorder.TimedStroke stroke : recorder.strokes) {
			if (stroke.tool().part() == part && stroke.stroke().cycle().kind().taps()) {
				tapping.add(number(stroke.tool().tool()));
			}
		}
		recorder.axisRuns.stream().filter(run -> run.tool().part() == part && run.synchronised()).forEach(run -> tapping.add(number(run.tool().tool())));
		if (!tools.keySet().containsAll(called)) {
			return false;
		}
		long odd = called.stream().filter(tool -> tools.get(tool).isTap() != tapping.contains(tool)).count();
		// numbers of steps would be wrong for two tools, the tap and the one taken for it: one alone runs the wrong cycle
		return odd == 0 || odd == 1 && called.equals(tools.keySet());
	}

	private static int number(Setting tool) {
		return tool.known() ? (int) Math.round(tool.value()) : -1;
	}
}
