package truelead.checker.job;

/** Where a fact of the job comes from, nearest to the spindle first. */
public enum FactSource {
	/** One of our notes in a comment. */
	NOTE("called out in a note"),
	/** A free callout in a comment of the operation. */
	CALLOUT("called out in a comment"),
	/** A comment above the first tool, which speaks of the whole part. */
	TITLE("called out in the program's title"),
	/** The comment of the tool itself: on its T line or at its tool change. */
	TOOL_COMMENT("tool comment"),
	/** The tool list in the comments at the head of the program. */
	TOOL_LIST("tool list of the program"),
	/** The tool list file. */
	TOOL_FILE("tool list file"),
	/** The settings of the project. */
	PROJECT("project settings"),
	/** The words of the program: G21, or the axis words by which a lathe bores. */
	PROGRAMMED("programmed"),
	/** Worked out from other numbers of the program; never a reason for a warning by itself. */
	IMPLIED("implied by the program"),
	/** The machine profile. */
	PROFILE("machine profile"),
	/** A stated default, where nobody says anything. */
	DEFAULT("default");

	private final String words;

	FactSource(String words) {
		this.words = words;
	}

	/** How a message names it. */
	public String words() {
		return words;
	}

	/** Whether a person said it for this job, as against something worked out or assumed. */
	public boolean stated() {
		return this != IMPLIED && this != PROFILE && this != DEFAULT;
	}
}
