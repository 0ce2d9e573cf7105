package truelead.forms;

import java.util.Locale;
import truelead.grammar.Block;

/** G01 is G1 and M03 is M3. */
final class CodesOfTwoDigits extends PlainBlocks {

	@Override
	String plain(Program program, Block block, Course.State before) {
		return Words.each(block, word -> "GM".indexOf(word.address()) >= 0 && Words.value(word) < 10
				&& Words.value(word) == Math.rint(Words.value(word)) ? String.format(Locale.ROOT, "%c%02.0f", word.address(),
						Words.value(word)) : null);
	}
}
