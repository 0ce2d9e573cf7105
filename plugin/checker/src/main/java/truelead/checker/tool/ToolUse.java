package truelead.checker.tool;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.ProgramComment;
import truelead.checker.job.ToolFacts;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/**
 * One stay of a tool in the spindle.
 *
 * @param index     number of the stay in the program, from 0; 0 may be what is in the spindle before the first change
 * @param tool      the T number as programmed; NONE before the first change
 * @param change    the block that changes to it; empty before the first change
 * @param firstOrder number of its first step in the order of execution
 * @param lastOrder  number of its last step
 * @param comments  the comments that belong to it, in the order they stand
 * @param facts     what is known of the tool
 * @param summary   what it did besides holes and threads
 */
public record ToolUse(int index, Setting tool, Optional<BlockRef> change, int firstOrder, int lastOrder, List<ProgramComment> comments,
		ToolFacts facts, Summary summary) {

	public ToolUse {
		comments = List.copyOf(comments);
	}

	/** The T number; -1 where it is not known or there is none. */
	public int number() {
		return tool.known() ? (int) Math.round(tool.value()) : -1;
	}

	/** How a message names it: {@code T5}, by its own name, or {@code the tool in the spindle} where no number is known. */
	public String name() {
		Optional<String> called = tool.word().map(WordRef::written).filter(word -> word.indexOf('"') >= 0)
				.map(word -> word.substring(word.indexOf('"') + 1).replace("\"", ""));
		return tool.known() ? "T" + number() : called.filter(name -> !name.isBlank()).orElse("the tool in the spindle");
	}

	/**
	 * What a tool did, gathered so that a long contour costs nothing.
	 *
	 * @param moved          whether it went anywhere but home
	 * @param cutWithCoolant whether any feed move or cycle ran with coolant on
	 * @param cutDry         whether any feed move or cycle ran with coolant off
	 * @param tapping        whether it ran a tapping cycle
	 * @param drilling       whether it ran a canned cycle that does not tap
	 * @param optionalStops  M0 and M1 while it was in the spindle
	 * @param lengthOffsets  the distinct G43 H in force during its cycles and feed moves, in the order met
	 * @param movedWithoutOffset whether a cycle or feed move along the tool's axis ran without a length offset in force
	 * @param rigid          the rigid-tap code in force when it first cut under one
	 * @param feeds          the feeds it used, one entry for each feed mode word
	 * @param plunge         its first rapid down along Z, below what it had cut last, that nothing was fed behind before it went up again
	 */
	public record Summary(boolean moved, boolean cutWithCoolant, boolean cutDry, boolean tapping, boolean drilling, int optionalStops,
			List<Setting> lengthOffsets, boolean movedWithoutOffset, Optional<WordRef> rigid, List<FeedUse> feeds,
			Optional<Step.Move> plunge) {

		/** A tool that did nothing. */
		public static final Summary NOTHING = new Summary(false, false, false, false, false, 0, List.of(), false, Optional.empty(),
				List.of(), Optional.empty());

		public Summary {
			lengthOffsets = List.copyOf(lengthOffsets);
			feeds = List.copyOf(feeds);
		}

		/** Whether it moved about, and neither fed nor ran a cycle. */
		public boolean idle() {
			return moved && !cutWithCoolant && !cutDry;
		}
	}
}
