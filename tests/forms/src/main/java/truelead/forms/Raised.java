package truelead.forms;

import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;

/** The zero lies lower or higher: every height is moved by the same length, so that the top of the work is no longer at zero. */
final class Raised extends BlockByBlock {

	private final double mm;

	/** All heights so many millimetres higher. */
	Raised(double mm) {
		this.mm = mm;
	}

	@Override
	public String name() {
		return mm > 0 ? "raised" : "lowered";
	}

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint(), program.says('G', 76, 87), program.heightsInComments(), program.cyclesWithI());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (Words.call(block)) {
			return block.text();
		}
		boolean cycle = Words.cycle(block) > 0 || before.cycle() > 0 && !Words.has(block, "G");
		return Words.each(block, word -> word.address() == 'Z' || word.address() == 'R' && cycle
				? word.address() + Figures.of(Words.value(word) + program.length(mm), program.decimals()) : null);
	}

	/** It looks at the signs of levels. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("plane-heights-wrong");
	}

	/** Where the top of the work is no longer at zero only a note or the R plane tells it. */
	@Override
	public Set<String> mayFallSilent() {
		return Set.of("deep-thread", "start-too-close", "thread-too-short", "not-through", "tap-through-fixture", "drill-too-deep",
				"countersink-too-small", "reach-too-short", "helix-too-short", "exit-scars-thread");
	}
}
