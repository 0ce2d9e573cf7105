package truelead.checker.work;

import truelead.checker.job.ProgramComment;
import truelead.checker.thread.ToolListLine;

/**
 * A comment and the line it stands on.
 *
 * @param tool   number of the T word on the same line, -1 without one
 * @param name   whether it is no comment but the name in a T word
 * @param code   whether words other than block numbers stand on the line
 */
record LineComment(ProgramComment comment, int line, int tool, boolean name, boolean code) {

	String text() {
		return comment.text();
	}

	/** The text with blanks in place of the tool number that it begins with: what TOOL 2 1/4-20 TAP says of tool 2. */
	String said() {
		return ToolListLine.read(text()).map(line -> " ".repeat(text().length() - line.text().length()) + line.text()).orElse(text());
	}

	/** Whether a T word on the line names another tool; T0202 of a turret is tool 2. */
	boolean ofAnotherTool(int number) {
		return tool >= 0 && tool != number && !(tool >= 100 && tool / 100 == number);
	}

	/** Whether a T word on the line names the tool. */
	boolean ofTool(int number) {
		return tool >= 0 && !ofAnotherTool(number);
	}
}
