package truelead.checker.turn;

import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.LengthUnit;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * What the block of a lathe's threading cycle says of its passes: in the form of two blocks P and Q, in that of one K and D, on RS-274
 * lathes K and J (from memory), on the diameter where X is one. A number without a decimal point counts thousandths of a millimetre, in
 * inch programs ten-thousandths of an inch (common practice, no source); K has one. Of a number that is worked out its size tells which it
 * is: no thread is ten millimetres deep, or ten thousandths of one.
 *
 * @param height height of the thread, mm on the radius
 * @param first  depth of the first pass, mm on the radius; NaN where it is not said
 * @param letter of the height: P or K; J where both may be on the diameter, and only the one as a part of the other is known
 */
public record CycleDepth(double height, double first, char letter) {

	/** Numbers that are worked out count least steps from here on, below it whole units. */
	private static final double DEEPEST = 10;

	/** Whether the height is known, and not only what part of it the first pass takes. */
	public boolean sized() {
		return letter != 'J';
	}

	/** Depth of the first pass, mm on the radius, in a thread that is {@code whole} mm deep. */
	public double firstOf(double whole) {
		return sized() ? whole - Math.max(height - first, 0) : whole * first / height;
	}

	/** Empty for a pass that is no such cycle, or whose height is not known. */
	public static Optional<CycleDepth> of(Step.Synchronised pass) {
		Block block = pass.block().file().text().block(pass.block().line());
		LengthUnit unit = pass.modal().unit();
		boolean beside = has(block, "J");
		double oneBlock = mm(pass, 'K', unit);
		char letter = Double.isNaN(oneBlock) ? 'P' : 'K';
		boolean twoBlocks = !Double.isNaN(mm(pass, 'Q', unit));
		double height = letter == 'K' ? oneBlock : twoBlocks ? mm(pass, 'P', unit) : Double.NaN;
		return isCycle(pass, block) && height > 0
				? Optional.of(new CycleDepth(height, mm(pass, beside ? 'J' : letter == 'K' ? 'D' : 'Q', unit), beside ? 'J' : letter))
				: Optional.empty();
	}

	/** Whether one motion stands for all passes of a cycle that divides the depth by itself, however it is written. */
	static boolean dividedByControl(Step.Synchronised pass) {
		Block block = pass.block().file().text().block(pass.block().line());
		return isCycle(pass, block) && (has(block, "P") && has(block, "Q") || has(block, "K") && has(block, "DJ"));
	}

	/** Whether a cycle called by name with its arguments makes the passes: its block says no place by a word. */
	static boolean calledByName(Step.Synchronised pass) {
		return pass.code() == 0 && !has(pass.block().file().text().block(pass.block().line()), "XZUW");
	}

	private static boolean isCycle(Step.Synchronised pass, Block block) {
		return pass.code() == 0 && block.words().stream().anyMatch(word -> word.address() == 'G'
				&& word.value() instanceof Expression.Number number && number.value() > 70);
	}

	private static boolean has(Block block, String letters) {
		return block.words().stream().anyMatch(word -> letters.indexOf(word.address()) >= 0);
	}

	private static double mm(Step.Synchronised pass, char letter, LengthUnit unit) {
		double least = unit == LengthUnit.INCH ? 0.0001 : 0.001;
		for (Element.Word word : pass.block().file().text().block(pass.block().line()).words()) {
			if (word.address() == letter && word.value() instanceof Expression.Number number) {
				return Math.abs(number.value()) * unit.mm() * (number.point() || letter == 'K' ? 1 : least);
			}
		}
		double computed = Math.abs(pass.computed().getOrDefault(letter, Double.NaN));
		return computed * unit.mm() * (computed >= DEEPEST && letter != 'K' ? least : 1);
	}
}
