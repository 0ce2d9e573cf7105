package truelead.forms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** A control takes the words of a block together, whatever their order. */
final class WordsInAnotherOrder extends PlainBlocks {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.says('G', 65, 66));
	}

	@Override
	String plain(Program program, Block block, Course.State before) {
		boolean kept = Words.head(block) || Words.end(block) || Words.call(block) || Words.says(block, 'G', 52, 92)
				|| block.elements().size() != block.words().size() && !ends(block);
		if (kept) {
			return block.text();
		}
		List<String> words = new ArrayList<>();
		block.words().stream().filter(word -> word.address() != 'N').forEach(word -> words.add(Words.written(block, word)));
		Collections.shuffle(words, new Random(block.text().hashCode()));
		StringBuilder text = new StringBuilder();
		block.words().stream().filter(word -> word.address() == 'N').forEach(word -> text.append(Words.written(block, word)).append(' '));
		return text.append(String.join(" ", words)).append(' ').append(Words.comments(block)).toString().strip();
	}

	/** Whether what is no word stands behind all words, so that it still does. */
	private static boolean ends(Block block) {
		return block.elements().subList(0, block.words().size()).stream().allMatch(Element.Word.class::isInstance)
				&& block.elements().stream().skip(block.words().size()).allMatch(Element.Comment.class::isInstance);
	}
}
