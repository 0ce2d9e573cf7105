package truelead.checker.rule;

import truelead.checker.program.Location;

/** Another place that matters to a finding, and what it is: {@code the drill block}, {@code the callout}. */
public record Related(Location at, String what) {

	/** How the tool change of the operation is named, before the name of the tool. */
	public static final String TOOL_CHANGE = "the tool change to ";
}
