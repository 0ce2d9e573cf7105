package truelead.checker.comment;

import java.util.Optional;
import truelead.checker.callout.ToolListLine;
import truelead.checker.job.ProgramComment;

/**
 * A comment and the line it stands on.
 *
 * @param tool   number of the T word on the same line, -1 without one
 * @param name   whether it is no comment but the name in a T word
 * @param code   whether words other than block numbers stand on the line
 * @param bare   what it says of a tool, where it is a line of a list that numbers its tools without a letter
 */
public record LineComment(ProgramComment comment, int line, int tool, boolean name, boolean code, Optional<ToolListLine> bare) {

	/** The text of the comment. */
	public String text() {
		return comment.text();
	}

	/** The text with blanks in place of the tool number that it begins or ends with: what TOOL 2 1/4-20 TAP says of tool 2. */
	public String said() {
		return bare.or(() -> ToolListLine.read(text())).map(this::said).orElse(text());
	}

	private String said(ToolListLine line) {
		String blanks = " ".repeat(text().length() - line.text().length());
		return text().endsWith(line.text()) ? blanks + line.text() : line.text() + blanks;
	}

	/** The same comment as a line of such a list. */
	LineComment asListed(ToolListLine line) {
		return new LineComment(comment, this.line, tool, name, code, Optional.of(line));
	}

	/** Whether a T word on the line names another tool; T0202 of a turret is tool 2. */
	public boolean ofAnotherTool(int number) {
		return tool >= 0 && tool != number && !(tool >= 100 && tool / 100 == number);
	}

	/** Whether a T word on the line names the tool. */
	public boolean ofTool(int number) {
		return tool >= 0 && !ofAnotherTool(number);
	}
}
