package truelead.checker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Allowance;
import truelead.checker.rule.Finding;
import truelead.checker.work.Work;

/**
 * Marks findings as accepted by the ALLOW notes of the program: a note in an operation accepts there, a note before the first tool change
 * that belongs to no operation accepts everywhere. A note without a reason accepts nothing.
 */
final class Acceptance {

	private Acceptance() {
	}

	static List<Finding> apply(List<Finding> findings, Work work) {
		return findings.stream().map(finding -> accepted(finding, work)).toList();
	}

	private static Finding accepted(Finding finding, Work work) {
		List<Allowance> inForce = new ArrayList<>(work.programAllowances());
		if (finding.operation() >= 0 && finding.operation() < work.operations().size()) {
			inForce.addAll(0, work.operations().get(finding.operation()).wanted().allowances());
		}
		Optional<String> reason = inForce.stream().filter(a -> a.rule().equals(finding.rule()) && !a.reason().isEmpty())
				.map(Allowance::reason).findFirst();
		if (reason.isEmpty() || finding.accepted().isPresent()) {
			return finding;
		}
		return finding.acceptedFor(reason.get());
	}
}
