package truelead.checker.edit;

import java.util.List;

/**
 * What a command would do to a program.
 *
 * @param replacements in the order they stand, not overlapping; empty where nothing is to change
 * @param refusal      why nothing is changed, in a sentence for the programmer; empty text where nothing speaks against it
 */
public record Change(List<Replacement> replacements, String refusal) {

	public Change {
		replacements = List.copyOf(replacements);
	}

	static Change of(List<Replacement> replacements) {
		return new Change(replacements, "");
	}

	static Change refused(String why) {
		return new Change(List.of(), why);
	}
}
