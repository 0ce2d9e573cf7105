package truelead.checker.work;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.InOrder;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.ToolUse;

/**
 * Stays of tools that are judged together though no hole is theirs in common: what one of them does is said in the other, where a feed, a
 * speed or a mode is left over from another tool, or a cycle is left on.
 */
final class Ties {

	private final List<ToolUse> tools;
	private final Map<Integer, BitSet> ties = new HashMap<>();

	/** Those of a whole program. */
	static Ties of(Work work) {
		BitSet all = new BitSet();
		all.set(0, work.tools().size());
		return new Ties(work.tools(), all, work.operations());
	}

	/**
	 * Those of some stays.
	 *
	 * @param tools      the stays of the whole program
	 * @param operations those of the stays
	 */
	Ties(List<ToolUse> tools, BitSet stays, List<ThreadingOperation> operations) {
		this.tools = tools;
		stays.stream().mapToObj(tools::get).forEach(this::add);
		operations.forEach(this::add);
	}

	/** Adds to some stays those that are tied to one of them. */
	void widen(int stay, BitSet stays) {
		BitSet tied = ties.get(stay);
		if (tied != null) {
			stays.or(tied);
		}
	}

	/** A feed that makes little sense in its mode may be due to the word for the mode. */
	private void add(ToolUse tool) {
		tool.summary().feeds().stream().filter(feed -> feed.odd().isPresent()).forEach(feed -> tie(tool.index(), feed.modeWord()));
	}

	private void add(ThreadingOperation operation) {
		if (operation instanceof Tapping tapping) {
			int stay = tapping.tool().index();
			for (TapStroke stroke : tapping.strokes().typical()) {
				tie(stay, stroke.feed());
				tie(stay, stroke.lead());
				tie(stay, stroke.feedOut());
				tie(stay, stroke.speed());
				tie(stay, stroke.modal().feedModeStated());
			}
			tapping.strays().typical().forEach(stray -> tie(stay, stray.tool().index()));
			tapping.leftOn().forEach(left -> tie(stay, left.block()));
		}
	}

	private void tie(int stay, Setting setting) {
		tie(stay, setting.word());
	}

	private void tie(int stay, Optional<WordRef> word) {
		word.ifPresent(said -> tie(stay, said.block()));
	}

	/** What is said above all tools an edit of any of them leaves alone. */
	private void tie(int stay, BlockRef block) {
		int other = InOrder.before(tools, tool -> tool.change().map(BlockRef::line).orElse(-1), block.line() + 1) - 1;
		if (other >= 0 && tools.get(other).change().isPresent()) {
			tie(stay, other);
		}
	}

	private void tie(int stay, int other) {
		if (stay != other) {
			ties.computeIfAbsent(stay, any -> new BitSet()).set(other);
			ties.computeIfAbsent(other, any -> new BitSet()).set(stay);
		}
	}
}
