package truelead.checker.work;

import java.util.BitSet;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.pass.PassStretches;
import truelead.checker.program.BlockRef;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Wanted;

/** Thread milling by one tool under one callout; a helix counts as threading only where a callout or the tool says so. */
public final class ThreadMilling implements ThreadingOperation {

	private final int index;
	private final int group;
	private final ToolUse tool;
	private final MillPasses passes;
	private final MillPass first;
	private final Wanted wanted;
	private final int lastOrder;
	private final List<NotEvaluated> notEvaluated;
	private final PassStretches stretches;
	private final List<Hole> holes;

	ThreadMilling(int index, int group, ToolUse tool, PassStretches stretches, Wanted wanted, int lastOrder,
			List<NotEvaluated> notEvaluated) {
		this.index = index;
		this.group = group;
		this.tool = tool;
		this.stretches = stretches;
		this.passes = stretches.all();
		this.first = passes.get(0);
		this.wanted = wanted;
		this.lastOrder = lastOrder;
		this.notEvaluated = List.copyOf(notEvaluated);
		this.holes = stretches.holes();
	}

	@Override
	public int index() {
		return index;
	}

	@Override
	public int group() {
		return group;
	}

	@Override
	public ToolUse tool() {
		return tool;
	}

	/** Every pass in the order of execution: roughing and finishing, several starts, one after another; never empty. */
	public MillPasses passes() {
		return passes;
	}

	@Override
	public Wanted wanted() {
		return wanted;
	}

	@Override
	public BlockRef block() {
		return first.block();
	}

	@Override
	public int firstOrder() {
		return first.order();
	}

	@Override
	public int lastOrder() {
		return lastOrder;
	}

	@Override
	public List<NotEvaluated> notEvaluated() {
		return notEvaluated;
	}

	@Override
	public List<Hole> holes() {
		return holes;
	}

	/** The first pass at each of the {@link #holes()}, in their order. */
	public MillPasses firstPasses() {
		return stretches.firstPasses();
	}

	/** The passes at one hole, in order; the middle of a pass may lie a rounding beside that of the hole. */
	public List<MillPass> passesAt(Hole hole) {
		return stretches.at(hole).<List<MillPass>>map(here -> here).orElse(List.of());
	}

	/**
	 * The passes of the largest radius at a hole, outside of the smallest: those that give the thread its size; a pass of unknown radius
	 * may be one.
	 */
	public List<MillPass> finishing(Hole hole) {
		return stretches.finishing(hole).<List<MillPass>>map(here -> here).orElse(List.of());
	}

	/** The {@link #finishing(Hole) finishing passes} at all holes, in order. */
	public MillPasses allFinishing() {
		return stretches.allFinishing();
	}

	/** The {@link #finishing(Hole) finishing passes} at each of the holes whose kind is as asked; those of holes of one kind are alike. */
	public List<List<MillPass>> finishingWhere(Predicate<List<MillPass>> asked) {
		return stretches.finishingWhere(asked);
	}

	/** The finishing passes at the first hole that has no others; empty where each is roughed. */
	public List<MillPass> cutAtOnce() {
		return stretches.cutAtOnce().<List<MillPass>>map(here -> here).orElse(List.of());
	}

	/** The passes before and behind one in the order of execution. */
	public List<MillPass> beside(MillPass pass) {
		return stretches.beside(pass.order());
	}

	/**
	 * The passes that stand by themselves which an arc is of, or leads to or away from; what comes again at place after place has no arc of
	 * its own.
	 */
	public List<MillPass> around(Step.Arc arc) {
		return stretches.around(arc);
	}

	/** Hands out the number of each hole; below 0 for one at no known place. */
	void numbers(IntConsumer numbers) {
		stretches.numbers(numbers);
	}

	/** Marks the numbers of the holes. */
	void mark(BitSet threaded) {
		numbers(hole -> {
			if (hole >= 0) {
				threaded.set(hole);
			}
		});
	}

	/** The passes in their stretches. */
	PassStretches stretches() {
		return stretches;
	}
}
