package truelead.checker.rule.hole;

import truelead.checker.program.BlockRef;
import truelead.checker.work.Work;

/** Blocks of the program that could not be read: a hole that lacks may stand in one of them, and the finding there says enough. */
final class Unread {

	private Unread() {
	}

	/** How many stand before a block in its file. */
	static long before(BlockRef block, Work work) {
		return between(work, block, 0, block.line());
	}

	/** How many stand from a block up to the next change of the tool. */
	static long from(BlockRef block, Work work) {
		if (between(work, block, block.line(), Integer.MAX_VALUE) == 0) {
			return 0;
		}
		int next = work.tools().stream().flatMap(tool -> tool.change().stream())
				.filter(change -> change.file().name().equals(block.file().name())).mapToInt(BlockRef::line)
				.filter(line -> line > block.line()).min().orElse(Integer.MAX_VALUE);
		return between(work, block, block.line(), next);
	}

	private static long between(Work work, BlockRef block, int from, int to) {
		return work.troubleOfProgram().problems().stream().filter(problem -> problem.at().file().name().equals(block.file().name()))
				.mapToInt(problem -> problem.at().line()).filter(line -> line >= from && line < to).distinct().count();
	}
}
