package truelead.checker.work;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Holes;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.tool.ToolUse;

/** Tells whether sections of a program may be judged by themselves: whether no finding of one depends on more of the others than on what an edit leaves alone. */
final class Sectioned {

	private Sectioned() {
	}

	/** Of a whole program. */
	static boolean is(Work work, Holes holes) {
		int firstChange = work.tools().stream().flatMap(tool -> tool.change().stream()).mapToInt(BlockRef::line).findFirst().orElse(Integer.MAX_VALUE);
		return work.shop().unit().stated() && work.evaluated() && is(work.operations(), holes, firstChange)
				&& work.tools().stream().allMatch(tool -> modesAreOwn(tool, firstChange));
	}

	/** Of a section of it. */
	static boolean is(Work whole, List<ThreadingOperation> operations, Holes holes) {
		int firstChange = whole.tools().stream().flatMap(tool -> tool.change().stream()).mapToInt(BlockRef::line).findFirst().orElse(Integer.MAX_VALUE);
		return is(operations, holes, firstChange);
	}

	private static boolean is(List<ThreadingOperation> operations, Holes holes, int firstChange) {
		return !holes.unknownPlaces() && !holes.crowded() && operations.stream().allMatch(operation -> operation.notEvaluated().isEmpty() && placed(operation)
				&& (operation instanceof Tapping tapping ? is(tapping, firstChange) : true));
	}

	private static boolean placed(ThreadingOperation operation) {
		boolean[] known = {true};
		HoleStays.numbers(operation, number -> known[0] &= number >= 0);
		return known[0];
	}

	/** The cycle is ended in its tool's stay, and what feeds it was said there. */
	private static boolean is(Tapping tapping, int firstChange) {
		int change = tapping.tool().change().map(BlockRef::line).orElse(-1);
		return tapping.leftOn().isEmpty() && tapping.strays().isEmpty() && tapping.strokes().typical().stream()
				.allMatch(stroke -> saidFrom(change, stroke.feed()) && saidFrom(change, stroke.lead()) && saidFrom(change, stroke.feedOut())
						&& own(stroke.modal().feedModeStated(), change, firstChange));
	}

	private static boolean saidFrom(int line, Setting setting) {
		return setting.word().map(word -> word.block().line() >= line).orElse(true);
	}

	/** Each feed mode that a tool feeds in was said in its stay, or above all tools. */
	static boolean modesAreOwn(ToolUse tool, int firstChange) {
		int change = tool.change().map(BlockRef::line).orElse(-1);
		return tool.summary().feeds().stream().allMatch(feed -> own(feed.modeWord(), change, firstChange));
	}

	private static boolean own(Optional<WordRef> mode, int change, int firstChange) {
		return mode.map(word -> word.block().line() >= change || word.block().line() < firstChange).orElse(true);
	}

	/** Whether the rules of other tools know the same of a stay before and after an edit. */
	static boolean same(ToolUse before, ToolUse now) {
		return before.tool().equals(now.tool()) && before.facts().equals(now.facts()) && before.comments().equals(now.comments())
				&& before.summary().idle() == now.summary().idle() && before.summary().cutWithCoolant() == now.summary().cutWithCoolant() && before.summary().cutDry() == now.summary().cutDry()
				&& before.summary().tapping() == now.summary().tapping() && before.summary().drilling() == now.summary().drilling()
				&& before.summary().rigid().isPresent() == now.summary().rigid().isPresent()
				&& before.summary().movedWithoutOffset() == now.summary().movedWithoutOffset()
				&& offsets(before).equals(offsets(now));
	}

	/**
	 * A length offset of a stay, as other tools are measured by it.
	 *
	 * @param address  of the word that says it, G where G43 has no H; 0 where none does
	 * @param leftOver whether that word stands above the change of the tool
	 */
	private record Offset(double value, char address, boolean leftOver) {
	}

	private static List<Offset> offsets(ToolUse tool) {
		return tool.summary().lengthOffsets().stream().map(offset -> new Offset(offset.value(), offset.word().map(WordRef::address).orElse((char) 0),
				offset.word().filter(word -> tool.change().filter(word.block()::above).isPresent()).isPresent())).toList();
	}
}
