package truelead.checker.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
 * @param tells     the slips that it is sure of, which explain what other rules would say
 * @param accepted  the reason where the finding is accepted by a note or from outside
 */
public record Finding(String rule, Severity severity, String message, Location at, List<Related> related, List<Fix> fixes,
		List<Evidence> evidence, int operation, Set<Slip> tells, Optional<String> accepted) {

	public Finding {
		related = List.copyOf(related);
		fixes = List.copyOf(fixes);
		evidence = List.copyOf(evidence);
		tells = Set.copyOf(tells);
	}

	/** A finding that explains no other and is not accepted. */
	public Finding(String rule, Severity severity, String message, Location at, List<Related> related, List<Fix> fixes,
			List<Evidence> evidence, int operation) {
		this(rule, severity, message, at, related, fixes, evidence, operation, Set.of(), Optional.empty());
	}

	/** The same finding, as severe as the settings say. */
	public Finding with(Severity said) {
		return said == severity ? this : new Finding(rule, said, message, at, related, fixes, evidence, operation, tells, accepted);
	}

	/** The same finding with more in its message and more places that matter. */
	Finding saying(String more, List<Related> places) {
		List<Related> all = new ArrayList<>(related);
		all.addAll(places);
		return new Finding(rule, severity, message + more, at, all, fixes, evidence, operation, tells, accepted);
	}

	/** The same finding for several places: another message, the other places, and the fixes that mend all of them. */
	public Finding forAll(String said, Collection<Related> places, List<Fix> mends) {
		return new Finding(rule, severity, said, at, List.copyOf(places), mends, evidence, operation, tells, accepted);
	}

	/** The same finding, accepted for a reason. */
	public Finding acceptedFor(String reason) {
		return new Finding(rule, severity, message, at, related, fixes, evidence, operation, tells, Optional.of(reason));
	}

	/** Whether it may explain what is found anywhere in the program. */
	public boolean reachesAll() {
		return tells.stream().anyMatch(slip -> slip.reach() == Slip.Reach.PROGRAM);
	}

	/** The same finding in another text of a file, in which it stands in the same line. */
	public Finding in(ProgramFile text) {
		return new Finding(rule, severity, message, at.in(text),
				related.stream().map(other -> new Related(other.at().in(text), other.what())).toList(),
				fixes.stream().map(fix -> new Fix(fix.title(), fix.safe(), fix.why(),
						fix.edits().stream().map(edit -> new Edit(edit.at().in(text), edit.text())).toList())).toList(),
				evidence.stream().map(number -> new Evidence(number.name(), number.value(), number.origin(),
						number.at().map(place -> place.in(text)))).toList(),
				operation, tells, accepted);
	}
}
