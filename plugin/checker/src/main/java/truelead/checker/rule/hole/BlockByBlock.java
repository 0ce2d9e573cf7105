package truelead.checker.rule.hole;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Holes of a row in which each block says its cycle anew, as G81 X Y Z R F: they belong together as those of one cycle do. */
final class BlockByBlock {

	/** Up to so many holes are looked at (a choice of ours): where more are left, none of them was meant for a thread. */
	private static final int FEW = 50;
	/** More threads than these are not gone over one by one, since an edit asks again. */
	private static final int MOST_THREADS = 500;

	/** A block of a file. */
	private record Line(String file, int line) {
	}

	private BlockByBlock() {
	}

	/** Of holes that are made in the way of an operation's those whose cycles all stand right beside the cycle of a hole that it threads. */
	static List<Hole> among(List<Hole> holes, ThreadingOperation operation, Work work) {
		if (holes.isEmpty() || holes.size() > FEW || work.group(operation).stream().mapToInt(one -> Visits.of(one, work).size()).sum() > MOST_THREADS) {
			return List.of();
		}
		Set<Line> threaded = new HashSet<>();
		work.group(operation).forEach(one -> Visits.of(one, work).forEach(visit -> visit.hole().making().stream().filter(BlockByBlock::ownCycle).forEach(cut -> threaded.add(at(cut.block(), 0)))));
		return holes.stream().filter(hole -> hole.making().stream().allMatch(cut -> ownCycle(cut) && (threaded.contains(at(cut.block(), -1)) || threaded.contains(at(cut.block(), 1))))).toList();
	}

	private static boolean ownCycle(Cut cut) {
		return cut.step() instanceof Step.Stroke stroke && stroke.cycle().start().equals(cut.block());
	}

	private static Line at(BlockRef block, int beside) {
		return new Line(block.file().name(), block.line() + beside);
	}
}
