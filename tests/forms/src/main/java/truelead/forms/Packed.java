package truelead.forms;

import truelead.grammar.Block;
import truelead.grammar.Element;

/** Words need no space between them. */
final class Packed extends PlainBlocks {

	@Override
	String plain(Program program, Block block, Course.State before) {
		if (Words.head(block)) {
			return block.text();
		}
		if (block.words().stream().anyMatch(word -> Character.isLetter(Words.written(block, word).charAt(1)))) {
			return block.text(); // a word of two letters, ER2, is told from two words by the space before it
		}
		StringBuilder text = new StringBuilder();
		for (Element element : block.elements()) {
			text.append(element instanceof Element.Word word ? Words.written(block, word).replace(" ", "") : Words.written(block, element));
		}
		return text.toString();
	}
}
