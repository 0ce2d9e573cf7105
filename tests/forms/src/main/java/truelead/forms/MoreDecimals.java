package truelead.forms;

import java.util.Set;
import truelead.grammar.Block;

/** Zeros behind the last decimal, a zero before the point and a plus sign change no number. */
final class MoreDecimals extends PlainBlocks {

	/** What is off by the rounding of F is told by its last decimal: more decimals written are more promised. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("feed-off-pitch");
	}

	@Override
	String plain(Program program, Block block, Course.State before) {
		return Words.each(block, word -> {
			if ("XYZRIJKQFUW".indexOf(word.address()) < 0 || !Words.pointed(word)) {
				return null;
			}
			String number = Words.written(block, word).substring(1).strip();
			String sign = number.startsWith("-") ? "-" : "XY".indexOf(word.address()) >= 0 ? "+" : "";
			String figures = number.startsWith("-") || number.startsWith("+") ? number.substring(1).strip() : number;
			int point = figures.indexOf('.');
			String decimals = figures.substring(point + 1);
			return word.address() + sign + (point == 0 ? "0" : "") + figures.substring(0, point + 1) + decimals
					+ "0".repeat(Math.max(0, 3 - decimals.length()));
		});
	}
}
