package truelead.checker.machine;

import java.util.HashMap;
import java.util.Map;
import truelead.checker.arithmetic.Value;
import truelead.grammar.Element;

/** Makes local variables of the letters of a macro call. */
public final class MacroArguments {

	private static final int SECOND_LIST = Words.mask("IJK");
	/** Local variables of the argument letters A to Z, first list of the usual macro languages; 0 for letters that are no argument. */
	private static final int[] ARGUMENTS = {1, 2, 3, 7, 8, 9, 0, 11, 4, 5, 6, 0, 13, 0, 0, 0, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26};

	private MacroArguments() {
	}

	/** The local variable that an argument letter sets, first list; 0 for what is no argument. */
	public static int variable(char letter) {
		return letter >= 'A' && letter <= 'Z' ? ARGUMENTS[letter - 'A'] : 0;
	}

	/** The local variables that the letters of a block set. */
	static Map<Integer, Value> of(Words words, Flow flow) {
		words.takeMBehindG();
		Map<Integer, Value> arguments = new HashMap<>();
		for (char letter = 'A'; letter <= 'Z'; letter++) {
			int variable = ARGUMENTS[letter - 'A'];
			if (variable > 0 && words.has(letter)) {
				double value = words.value(letter);
				arguments.put(variable, Double.isNaN(value) ? Value.unknown(words.why(letter)) : Value.written(value, words.given(letter)));
			}
		}
		if (words.repeats(SECOND_LIST)) {
			secondList(arguments, flow);
		}
		return arguments;
	}

	/** Second list of the usual macro languages: A, B and C, then I, J and K up to ten times, #4 to #33 in their order. */
	private static void secondList(Map<Integer, Value> arguments, Flow flow) {
		int set = 0;
		char before = 'K';
		for (Element element : flow.block().file().text().block(flow.block().line()).elements()) {
			if (element instanceof Element.Word word && word.address() >= 'I' && word.address() <= 'K') {
				set += word.address() <= before ? 1 : 0;
				before = word.address();
				if (set <= 10) {
					arguments.put(3 * set + 1 + before - 'I', flow.evaluator().value(word.value()));
				}
			}
		}
	}
}
