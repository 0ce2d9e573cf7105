package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * The angle of the spindle at which a pass of a lathe's thread starts: Q in whole or thousandths of a degree, or SF in degrees (common
 * practice, no source).
 */
public final class StartAngle {

	/** Whole degrees are written up to this; more are thousandths of a degree, as Q180000. */
	private static final double WHOLE_DEGREES = 360;
	static final String BY_NAME = "SF";

	private StartAngle() {
	}

	/**
	 * The part of a turn that a pass starts later by its block, 0 where it says nothing of it; NaN where it is not known. Of a cycle of two
	 * blocks Q is a depth.
	 */
	public static double of(Step.Synchronised pass) {
		if (!Double.isNaN(pass.turned())) {
			return pass.turned();
		}
		Block block = pass.block().file().text().block(pass.block().line());
		List<Element.Word> words = block.words();
		boolean oneLine = words.stream().anyMatch(word -> word.address() == 'K' || word.address() == 'D');
		boolean minimum = !oneLine && words.stream().anyMatch(word -> word.address() == 'P');
		Optional<Expression> byName = block.elements().stream().filter(StartAngle::names).map(element -> ((Element.Assignment) element)
				.value()).findFirst();
		boolean other = block.elements().stream().anyMatch(element -> element instanceof Element.Assignment && !names(element)
				|| element instanceof Element.Opaque || element instanceof Element.Statement);
		Optional<Expression> angle = byName.or(() -> words.stream().filter(word -> word.address() == 'Q' && !minimum)
				.map(Element.Word::value).findFirst());
		if (other) {
			return Double.NaN;
		}
		double said = angle.map(value -> value instanceof Expression.Number number ? number.value()
				: pass.computed().getOrDefault('Q', Double.NaN)).orElse(0.0);
		return (said > WHOLE_DEGREES ? said / 1000 : said) / WHOLE_DEGREES;
	}

	private static boolean names(Element element) {
		return element instanceof Element.Assignment assignment && assignment.target() instanceof Expression.NamedVariable name
				&& name.name().equalsIgnoreCase(BY_NAME);
	}
}
