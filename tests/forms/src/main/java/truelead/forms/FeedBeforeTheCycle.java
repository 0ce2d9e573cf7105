package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** F is modal: said in a block of its own before the cycle it is in force in it. */
final class FeedBeforeTheCycle extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.says('G', 93, 95), program.calls());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		List<Element.Word> feeds = block.words().stream().filter(word -> word.address() == 'F').toList();
		return Words.cycle(block) > 0 && before.cycle() == 0 && feeds.size() == 1 ? Words.written(block, feeds.get(0)) + "\n"
				+ Words.without(block, "F") : block.text();
	}
}
