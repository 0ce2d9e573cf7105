package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** F in force may be said again with each motion that is fed. */
final class FeedInEachBlock implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.says('G', 93, 95));
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		List<Course.State> states = Course.of(program);
		String feed = "";
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			int motion = Words.says(block, 'G', 0, 80) || Words.cycle(block) > 0 ? -1 : Words.says(block, 'G', 1, 2, 3) ? 1
					: states.get(i).motion();
			for (Element.Word word : block.words()) {
				feed = Words.toolChange(block) ? "" : word.address() == 'F' ? Words.written(block, word) : feed;
			}
			if (!feed.isEmpty() && motion > 0 && Words.has(block, "XYZ") && !Words.has(block, "F") && !Words.call(block)) {
				lines.set(i, Words.last(lines.get(i), feed));
			}
		}
		return lines;
	}
}
