package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;

/** F a minute is the speed times F a turn. */
final class FeedPerTurn implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.says('G', 93, 95), program.lacks('G', 94), program.calls());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		double speed = Double.NaN;
		boolean on = false;
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			speed = Words.number(block, 'S', Words.toolChange(block) ? Double.NaN : speed);
			if (on && Words.says(block, 'G', 0, 1, 2, 3, 80)) {
				lines.set(i, lines.get(i) + "\nG94");
				on = false;
			} else if (on && Words.has(block, "FS")) {
				return program.lines();
			} else if (!on && Words.says(block, 'G', 84, 74) && Words.has(block, "F") && speed > 0 && !Words.says(block, 'G', 94)) {
				double turns = speed;
				lines.set(i, Words.first(Words.each(block, word -> word.address() == 'F' ? "F" + Figures.of(Words.value(word) / turns, 5)
						: null), "G95"));
				on = true;
			}
		}
		return on ? program.lines() : lines;
	}

	/** F with five decimals promises more than one that was rounded to whole numbers. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("feed-off-pitch", "feed-in-wrong-mode");
	}
}
