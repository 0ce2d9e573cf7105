package truelead.checker.rule;

import java.util.List;
import java.util.Optional;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;

/**
 * One thing found in a program.
 *
 * @param rule      name of the rule
 * @param severity  after settings
 * @param message   the fact first, with programmed, right and difference, what it does over the depth, and what to type
 * @param at        the word, or the block where no word is at fault
 * @param related   other blocks that matter; for a finding on an operation its cycle block and its tool change among them
 * @param fixes     best first; empty where only a person can decide
 * @param evidence  every number of the message and where it comes from
 * @param operation number of the threading operation in the program from 0, -1 where it is about none
 * @param accepted  the reason where the finding is accepted by a note or from outside
 */
public record Finding(String rule, Severity severity, String message, Location at, List<Related> related, List<Fix> fixes,
		List<Evidence> evidence, int operation, Optional<String> accepted) {

	/** The same finding in another text of a file, in which it stands in the same line. */
	public Finding in(ProgramFile text) {
		return new Finding(rule, severity, message, at.in(text), related.stream().map(other -> new Related(other.at().in(text), other.what())).toList(),
				fixes.stream().map(fix -> new Fix(fix.title(), fix.safe(), fix.why(),
						fix.edits().stream().map(edit -> new Edit(edit.at().in(text), edit.text())).toList())).toList(),
				evidence.stream().map(number -> new Evidence(number.name(), number.value(), number.origin(), number.at().map(place -> place.in(text)))).toList(),
				operation, accepted);
	}

	public Finding {
		related = List.copyOf(related);
		fixes = List.copyOf(fixes);
		evidence = List.copyOf(evidence);
	}
}
