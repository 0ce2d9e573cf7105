package truelead.checker.rule.program;

import java.util.Collection;
import java.util.OptionalDouble;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * Tells a tapping cycle under another plane whose words make a stroke in XY alone: Z below R, and along the plane's own axis no depth, one
 * that is not below R, or another at each place.
 */
final class WrittenForXy {

	/** Numbers that are the same, mm. */
	private static final double SAME = 1e-3;

	private WrittenForXy() {
	}

	/**
	 * @param holes those of the program: written for XY, drill and tap go to the same number along the plane's own axis, which is a place
	 *              and no depth
	 */
	static boolean is(ThreadingOperation operation, Collection<Hole> holes) {
		return operation instanceof Tapping tapping && !tapping.strokes().isEmpty()
				&& (tapping.strokes().typical().stream().anyMatch(WrittenForXy::upwards) || uneven(tapping))
				&& tapping.cycle().filter(cycle -> belowR(cycle.start())).isPresent()
				&& tapping.strokes().typical().stream().anyMatch(stroke -> holes.stream().anyMatch(hole -> endsAt(hole, stroke)));
	}

	private static boolean endsAt(Hole hole, TapStroke stroke) {
		return hole.place().plane() == stroke.place().plane()
				&& hole.making().stream().anyMatch(cut -> Math.abs(cut.tip() - stroke.bottom()) < SAME);
	}

	private static boolean uneven(Tapping tapping) {
		return tapping.strokes().typical().stream().map(TapStroke::bottom).distinct().count() > 1;
	}

	private static boolean upwards(TapStroke stroke) {
		return stroke.step() instanceof Step.Stroke step && !(step.bottom() < step.rLevel() - 1e-6);
	}

	/** The block of the cycle's G code says Z and R, Z the lower. */
	private static boolean belowR(BlockRef block) {
		OptionalDouble z = number(block, 'Z');
		OptionalDouble r = number(block, 'R');
		return z.isPresent() && r.isPresent() && z.getAsDouble() < r.getAsDouble();
	}

	private static OptionalDouble number(BlockRef block, char address) {
		return block.file().text().block(block.line()).words().stream().filter(word -> word.address() == address).map(Element.Word::value)
				.filter(Expression.Number.class::isInstance).mapToDouble(value -> ((Expression.Number) value).value()).findFirst();
	}
}
