package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import truelead.checker.program.BlockRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.NamedRule;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** A rule that looks at each tapping operation by itself; every finding names the operation's block and tool change. */
abstract class TappingRule extends NamedRule {

	TappingRule(String name) {
		super(name);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (Tapping tapping : work.tappings()) {
			check(tapping, work, draft -> found.accept(draft.on(tapping).finding()));
		}
	}

	abstract void check(Tapping tapping, Work work, Consumer<Draft> found);

	/** Hands out the finding of the first stroke that has one; what is true of a typical stroke is true of all of its kind. */
	static void first(Tapping tapping, Function<TapStroke, Optional<Draft>> judged, Consumer<Draft> found) {
		for (TapStroke stroke : tapping.strokes().typical()) {
			Optional<Draft> draft = judged.apply(stroke);
			if (draft.isPresent()) {
				found.accept(draft.get());
				return;
			}
		}
	}

	/** Where a finding about a stroke stands that is about no word: the operation's first block for its first stroke. */
	static BlockRef block(Tapping tapping, TapStroke stroke) {
		return stroke.order() == tapping.strokes().get(0).order() ? tapping.block() : stroke.block();
	}
}
