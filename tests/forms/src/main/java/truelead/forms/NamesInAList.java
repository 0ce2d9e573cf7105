package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** What is said of each tool at its change may stand in a list at the head, by its number. */
final class NamesInAList implements Form {

	/** A list says what each tool is; a thread that a later comment names is told to differ from it. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("callout-conflict");
	}

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.numbersTwice(), program.toolsInComments());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		StringBuilder list = new StringBuilder();
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (Words.toolChange(block)) {
				boolean named = Words.has(block, "T") && block.comments().size() == 1
						&& block.comments().get(0).mark() == Element.CommentMark.PARENTHESES
						&& (i == 0 || program.blocks().get(i - 1).comments().isEmpty());
				if (!named) {
					return program.lines();
				}
				list.append("(T").append(Figures.code(Words.number(block, 'T', 0))).append(" - ")
						.append(block.comments().get(0).text().strip()).append(")\n");
				lines.set(i, Words.eachComment(block, comment -> "").stripTrailing());
			}
		}
		int head = 0;
		while (head < lines.size() && !Words.works(program.blocks().get(head)) || head < lines.size() && Words.head(program.blocks()
				.get(head))) {
			head++;
		}
		if (!list.isEmpty() && head < lines.size()) {
			lines.set(head, list + lines.get(head));
		}
		return lines;
	}
}
