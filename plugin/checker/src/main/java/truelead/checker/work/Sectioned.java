package truelead.checker.work;

import java.util.List;
import truelead.checker.hole.Holes;
import truelead.checker.machine.Modal;
import truelead.checker.program.WordRef;
import truelead.checker.tool.ToolUse;

/**
 * Tells whether sections of a program may be judged by themselves: whether no finding of one depends on more of the others than on what an
 * edit leaves alone.
 */
final class Sectioned {

	private Sectioned() {
	}

	/** Of a whole program. */
	static boolean is(Work work, Holes holes) {
		return work.evaluated() && is(work.operations(), holes);
	}

	/** Of a section of it. */
	static boolean is(List<ThreadingOperation> operations, Holes holes) {
		return !holes.unknownPlaces() && !holes.crowded() && operations.stream().allMatch(operation -> operation.notEvaluated().isEmpty()
				&& placed(operation));
	}

	private static boolean placed(ThreadingOperation operation) {
		boolean[] known = {true};
		HoleStays.numbers(operation, number -> known[0] &= number >= 0);
		return known[0];
	}

	/** Whether the rules of other tools know the same of a stay before and after an edit. */
	static boolean same(ToolUse before, ToolUse now) {
		return before.tool().equals(now.tool()) && before.facts().equals(now.facts()) && before.comments().equals(now.comments())
				&& before.summary().idle() == now.summary().idle() && before.summary().cutWithCoolant() == now.summary().cutWithCoolant()
				&& before.summary().cutDry() == now.summary().cutDry()
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
	 * @param codeOfToolBefore whether it stands without a G43 of this tool's
	 */
	private record Offset(double value, char address, boolean leftOver, boolean codeOfToolBefore) {
	}

	private static List<Offset> offsets(ToolUse tool) {
		return tool.summary().lengthOffsets().stream()
				.map(offset -> new Offset(offset.value(), offset.word().map(WordRef::address).orElse((char) 0),
						offset.word().filter(word -> tool.change().filter(word.block()::above).isPresent()).isPresent(),
						offset.why().equals(Modal.CODE_OF_TOOL_BEFORE))).toList();
	}
}
