package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.LengthUnit;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * What the block of a lathe's threading cycle says of its passes: in the form of two blocks P and Q, in that of one K and D, on RS-274 lathes K and J (from memory), on the diameter where X is one. A number without a decimal point counts
 * thousandths of a millimetre, in inch programs ten-thousandths of an inch (common practice, no source); K has one.
 *
 * @param height height of the thread, mm on the radius
 * @param first  depth of the first pass, mm on the radius; NaN where it is not said
 * @param letter of the height: P or K; J where both may be on the diameter, and only the one as a part of the other is known
 */
record CycleDepth(double height, double first, char letter) {

	/** Whether the height is known, and not only what part of it the first pass takes. */
	boolean sized() {
		return letter != 'J';
	}

	/** Depth of the first pass, mm on the radius, in a thread that is {@code whole} mm deep. */
	double firstOf(double whole) {
		return sized() ? whole - Math.max(height - first, 0) : whole * first / height;
	}

	/** Empty for a pass that is no such cycle, or whose height is not said by a plain number. */
	static Optional<CycleDepth> of(Step.Synchronised pass) {
		Block block = pass.block().file().text().block(pass.block().line());
		LengthUnit unit = pass.modal().unit();
		boolean cycle = pass.code() == 0 && block.words().stream().anyMatch(word -> word.address() == 'G' && word.value() instanceof Expression.Number number && number.value() > 70);
		boolean beside = block.words().stream().anyMatch(word -> word.address() == 'J');
		double oneBlock = mm(block, 'K', unit);
		char letter = Double.isNaN(oneBlock) ? 'P' : 'K';
		boolean twoBlocks = !Double.isNaN(mm(block, 'Q', unit));
		double height = letter == 'K' ? oneBlock : twoBlocks ? mm(block, 'P', unit) : Double.NaN;
		return cycle && height > 0 ? Optional.of(new CycleDepth(height, mm(block, beside ? 'J' : letter == 'K' ? 'D' : 'Q', unit), beside ? 'J' : letter)) : Optional.empty();
	}

	private static double mm(Block block, char letter, LengthUnit unit) {
		for (Element.Word word : block.words()) {
			if (word.address() == letter && word.value() instanceof Expression.Number number) {
				double least = unit == LengthUnit.INCH ? 0.0001 : 0.001;
				return Math.abs(number.value()) * unit.mm() * (number.point() || letter == 'K' ? 1 : least);
			}
		}
		return Double.NaN;
	}
}
