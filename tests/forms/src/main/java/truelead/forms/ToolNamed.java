package truelead.forms;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.grammar.Block;

/** What is said of a tool at its change may stand above, behind or below that block. */
final class ToolNamed implements Form {

	/** Where the comment goes. */
	enum Where {
		ABOVE, BESIDE, BELOW
	}

	private final Where where;

	ToolNamed(Where where) {
		this.where = where;
	}

	@Override
	public String name() {
		return "tool named " + where.name().toLowerCase(Locale.ROOT);
	}

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (!Words.toolChange(block) || !Words.has(block, "T")) {
				continue;
			}
			boolean beside = block.comments().size() == 1;
			boolean above = !beside && block.comments().isEmpty() && remark(program, i - 1) && !remark(program, i - 2);
			if (beside && where != Where.BESIDE && !remark(program, i - 1) && !remark(program, i + 1)) {
				put(lines, i, Words.eachComment(block, comment -> "").stripTrailing(), Words.comments(block));
			} else if (above && where != Where.ABOVE && !remark(program, i + 1)) {
				put(lines, i, block.text().stripTrailing(), lines.get(i - 1).strip());
				lines.set(i - 1, null);
			}
		}
		lines.removeIf(line -> line == null);
		return lines;
	}

	private void put(List<String> lines, int line, String change, String comment) {
		lines.set(line, switch (where) {
			case ABOVE -> comment + "\n" + change;
			case BESIDE -> change + " " + comment;
			case BELOW -> change + "\n" + comment;
		});
	}

	/** Whether a line is a single comment. */
	private static boolean remark(Program program, int line) {
		return line >= 0 && line < program.blocks().size() && program.blocks().get(line).comments().size() == 1
				&& program.blocks().get(line).elements().size() == 1;
	}
}
