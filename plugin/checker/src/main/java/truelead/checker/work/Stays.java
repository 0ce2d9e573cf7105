package truelead.checker.work;

import java.util.List;

/** Where in the text of the program each stay of a tool begins and ends, so that comments can be told to whom they belong. */
final class Stays {

	/** How far above a tool change a free comment still speaks of the tool. */
	private static final int ABOVE = 17;

	/** How many stays to either side are looked at; only a loop that has no end changes tools more often without going on in the text. */
	private static final int SIGHT = 100;

	private final List<ToolLog> tools;
	private final Commentary commentary;
	private final int[] changes;

	Stays(List<ToolLog> tools, Commentary commentary) {
		this.tools = tools;
		this.commentary = commentary;
		this.changes = tools.stream().mapToInt(tool -> tool.change().map(commentary::mainLine).filter(line -> line >= 0).orElse(0)).toArray();
	}

	/** The line of a tool's change in the main program; for what is in the spindle before the first change, its first line. */
	int changeLine(ToolLog tool) {
		return changes[tool.index()];
	}

	/** The first line whose notes belong to a tool: the one after the last motion of the tool before it. */
	int from(ToolLog tool) {
		int change = changeLine(tool);
		int last = -1;
		for (int i = tool.index() - 1; i >= Math.max(0, tool.index() - SIGHT) && last < 0; i--) {
			last = tools.get(i).lastMotion().map(commentary::mainLine).filter(line -> line < change).orElse(-1);
		}
		return Math.min(last + 1, change);
	}

	/** The first line whose free comments belong to a tool. */
	int freeFrom(ToolLog tool) {
		return Math.max(from(tool), changeLine(tool) - ABOVE);
	}

	/** The last line before the comments of the next tool begin. */
	int to(ToolLog tool) {
		int change = changeLine(tool);
		for (int i = tool.index() + 1; i < Math.min(tools.size(), tool.index() + SIGHT); i++) {
			int next = changes[i];
			if (next > change) {
				return Math.max(change, from(tools.get(i)) - 1);
			}
		}
		return commentary.main().file().text().lineCount() - 1;
	}

	/** The line of the first tool change of the program; its last line where there is none. */
	int firstChange() {
		return tools.stream().filter(t -> t.change().isPresent()).mapToInt(this::changeLine).findFirst()
				.orElse(commentary.main().file().text().lineCount() - 1);
	}
}
