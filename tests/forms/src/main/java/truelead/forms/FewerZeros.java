package truelead.forms;

import truelead.grammar.Block;

/** A zero before the point, zeros behind the last decimal and leading zeros of codes say nothing. */
final class FewerZeros extends PlainBlocks {

	@Override
	String plain(Program program, Block block, Course.State before) {
		return Words.each(block, word -> {
			String number = Words.written(block, word).substring(1).strip();
			if ("GM".indexOf(word.address()) >= 0) {
				return word.address() + Words.code(word);
			}
			if ("XYZRIJQ".indexOf(word.address()) < 0 || !Words.pointed(word)) {
				return null;
			}
			String short0 = Figures.of(Words.value(word), 9);
			return word.address() + (short0.startsWith("0.") && short0.length() > 2 ? short0.substring(1) : short0.startsWith("-0.")
					&& short0.length() > 3 ? "-" + short0.substring(2) : short0);
		});
	}
}
