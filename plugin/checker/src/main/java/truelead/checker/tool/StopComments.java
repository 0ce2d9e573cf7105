package truelead.checker.tool;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import truelead.checker.callout.HandChange;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/** What is said beside a stop, M0 or M1, of what the operator does there. */
public final class StopComments {

	/** Lines of nothing but comments beside a stop that speak of it (a choice of ours). */
	private static final int LINES = 3;

	private StopComments() {
	}

	/** The comments in the line of a stop, and in lines of comments alone above and below it. */
	public static List<String> of(BlockRef stop) {
		ProgramText text = stop.file().text();
		int from = stop.line();
		int to = stop.line();
		while (from > 0 && stop.line() - from < LINES && text.block(from - 1).words().isEmpty()) {
			from--;
		}
		while (to + 1 < text.lineCount() && to - stop.line() < LINES && text.block(to + 1).words().isEmpty()) {
			to++;
		}
		return IntStream.rangeClosed(from, to).boxed().flatMap(line -> comments(text, line)).toList();
	}

	private static Stream<String> comments(ProgramText text, int line) {
		return text.block(line).elements().stream().filter(Element.Comment.class::isInstance)
				.map(element -> ((Element.Comment) element).text());
	}

	/**
	 * The stay of the tool that begins to work behind an event: of the T word's, or of one without a number that the operator puts in at
	 * M0; empty where the same goes on.
	 */
	public static Optional<ToolLog> newTool(Step.Event event, int stay, int part, int order) {
		Optional<Setting> number = event.kind() == Step.EventKind.TOOL_CHANGE ? Optional.of(event.modal().tool()) : byHand(event);
		return number.map(tool -> ToolLog.changed(stay, part, tool, event.block(), event.modal().feed(), order));
	}

	private static Optional<Setting> byHand(Step.Event event) {
		boolean byHand = event.kind() == Step.EventKind.STOP
				&& (comments(event.block().file().text(), event.block().line()).anyMatch(comment -> HandChange.says(comment, true))
						|| of(event.block()).stream().anyMatch(comment -> HandChange.says(comment, false)));
		return byHand ? Optional.of(new Setting(Double.NaN, Optional.empty(), Reason.of("the tool is put in by hand at the stop")))
				: Optional.empty();
	}
}
