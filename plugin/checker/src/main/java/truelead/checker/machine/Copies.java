package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import truelead.checker.arithmetic.Evaluator;
import truelead.checker.arithmetic.Variables;
import truelead.checker.chunk.Refrain;
import truelead.checker.program.BlockRef;
import truelead.grammar.Block;
import truelead.grammar.Chunk;

/**
 * The motions of the turns of a refrain, which differ in place and block alone. They are made when they are asked for, by running the turn
 * before and the turn itself again, so that they are to the last bit what they are if every block is followed.
 */
public final class Copies {

	/** Turns before the first of the copies: two are followed block by block to see that nothing but the place changes. */
	static final int BEFORE = 2;

	private final Refrain refrain;
	private final int count;
	/** The state at the start of the turn before the first of the copies. */
	private final MachineState start;
	private final BlockRef first;
	private final Chunk chunk;
	private final int base;
	private final List<Step> firstSteps;

	/**
	 * @param count how many turns are copies, {@link #BEFORE} turns being before them
	 * @param start the state one turn before the first of them, a value of its own
	 * @param first the first block of the refrain
	 * @param chunk the chunk that the refrain is in
	 */
	Copies(Refrain refrain, int count, MachineState start, BlockRef first, Chunk chunk) {
		this.refrain = refrain;
		this.count = count;
		this.start = start;
		this.first = first;
		this.chunk = chunk;
		this.base = first.line() - refrain.from();
		this.firstSteps = List.copyOf(made(0));
	}

	/** How many there are, 1 or more. */
	public int count() {
		return count;
	}

	/** How many motions each makes. */
	public int stepsEach() {
		return firstSteps.size();
	}

	/** The X that one begins at, from 0, mm. */
	public double x(int index) {
		return refrain.x(index + BEFORE) * start.unit.mm();
	}

	/** The Y that one begins at, mm. */
	public double y(int index) {
		return refrain.y(index + BEFORE) * start.unit.mm();
	}

	/** A number that those have in common whose blocks are written with as many decimals. */
	public int decimals(int index) {
		return refrain.decimals(index + BEFORE);
	}

	/** The motions of one, from 0. */
	public List<Step> steps(int index) {
		return index == 0 ? firstSteps : made(index);
	}

	private List<Step> made(int index) {
		List<Step> steps = new ArrayList<>();
		Run run = new Run(index);
		run.turn(index - 1, step -> { });
		run.turn(index, steps::add);
		return steps;
	}

	/** Hands out the motions of all, in order. */
	public void all(Consumer<Step> steps) {
		Run run = new Run(0);
		run.turn(-1, step -> { });
		for (int index = 0; index < count; index++) {
			run.turn(index, steps);
		}
	}

	/** The line that one begins at, from 0. */
	public int line(int index) {
		return base + refrain.line(index + BEFORE);
	}

	/** The last block. */
	public BlockRef last() {
		return block(refrain.line(BEFORE + count) - 1);
	}

	private BlockRef block(int line) {
		return new BlockRef(first.file(), base + line, first.caller(), first.skippable());
	}

	/** A machine that runs some of the turns again, from the one before a copy on. */
	private final class Run {

		private final MachineState state = new MachineState(start);
		private final List<Step> made = new ArrayList<>();
		private final BlockExecutor executor;
		private final Words words;

		Run(int index) {
			Output out = new Output(made::add, state, Output.memory());
			executor = new BlockExecutor(state, out, Meter.free(), () -> false, () -> false);
			words = new Words(new Evaluator(new Variables(number -> null, false, () -> false), true));
			if (index > 0) {
				state.place.moveTo(new Point(x(index - 2), y(index - 2), state.place.here().z()));
			}
		}

		void turn(int index, Consumer<Step> steps) {
			int from = refrain.line(index + BEFORE);
			for (int line = from; line < from + refrain.period(); line++) {
				Block block = chunk.block(line);
				words.load(block(line), block.text(), block.elements());
				executor.execute(words, () -> false);
			}
			made.forEach(steps);
			made.clear();
		}
	}
}
