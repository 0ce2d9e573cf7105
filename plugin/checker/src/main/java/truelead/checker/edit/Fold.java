package truelead.checker.edit;

/**
 * Lines that can be folded to the first of them.
 *
 * @param first first line, from 0
 * @param last  last line, behind the first
 */
public record Fold(Kind kind, int first, int last) {

	/** What the lines are. */
	public enum Kind {
		/** One of several programs of a file, or a subprogram. */
		PROGRAM,
		/** A tool's stay in the spindle. */
		TOOL,
		/** A cycle, or a threading operation, with all its places. */
		OPERATION,
		/** A loop. */
		LOOP
	}
}
