package truelead.checker.program;

import java.util.Optional;

/**
 * A block as it is executed: where it stands, and which block called the subprogram, macro or loop pass it is part of.
 *
 * @param file   the program file
 * @param line   line in that file, from 0
 * @param caller the block that called the subprogram this block stands in; empty in the main program
 * @param skippable whether a block delete mark lets the operator skip it, or a call that led here
 */
public record BlockRef(ProgramFile file, int line, Optional<BlockRef> caller, boolean skippable) {

	/** A block that is always executed. */
	public BlockRef(ProgramFile file, int line, Optional<BlockRef> caller) {
		this(file, line, caller, false);
	}

	/** Whether both stand at the same place of the same file, whoever called. */
	public boolean sameBlock(BlockRef other) {
		return line == other.line && file.name().equals(other.file.name());
	}

	/** Whether both stand at the same place, and so do the blocks that called them. */
	public boolean sameCall(BlockRef other) {
		return sameBlock(other) && caller.isPresent() == other.caller.isPresent()
				&& (caller.isEmpty() || caller.get().sameCall(other.caller.get()));
	}

	/**
	 * Whether it stands above another one: both, or the blocks that led to them, in the program or subprogram where their ways part. A
	 * block stands above what it calls. False where they are of different files.
	 */
	public boolean above(BlockRef other) {
		return order(other) < 0;
	}

	/** Below 0 where it stands above another, above 0 where below, 0 where they are one or of different files. */
	private int order(BlockRef other) {
		int depth = depth();
		int others = other.depth();
		if (depth > others) {
			int known = caller.orElseThrow().order(other);
			return known == 0 && caller.get().sameBlock(other) ? 1 : known;
		}
		if (depth < others) {
			return -other.order(this);
		}
		int known = caller.isPresent() ? caller.get().order(other.caller().orElseThrow()) : 0;
		return known != 0 || !file.name().equals(other.file.name()) ? known : Integer.compare(line, other.line);
	}

	private int depth() {
		return caller.isPresent() ? 1 + caller.get().depth() : 0;
	}

	/** The block of the main program that this one is executed for; itself there. */
	public BlockRef outermost() {
		return caller.isPresent() ? caller.get().outermost() : this;
	}
}
