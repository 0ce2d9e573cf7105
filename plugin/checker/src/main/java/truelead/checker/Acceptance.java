package truelead.checker;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
		Map<String, String> everywhere = new HashMap<>();
		work.programAllowances().forEach(note -> accept(note, everywhere));
		return findings.stream().map(finding -> accepted(finding, work, everywhere)).toList();
	}

	/** The first reason for each rule counts. */
	private static void accept(Allowance note, Map<String, String> reasons) {
		if (!note.reason().isEmpty()) {
			reasons.putIfAbsent(note.rule(), note.reason());
		}
	}

	private static Finding accepted(Finding finding, Work work, Map<String, String> everywhere) {
		Map<String, String> here = new HashMap<>();
		if (finding.operation() >= 0 && finding.operation() < work.operations().size()) {
			work.operations().get(finding.operation()).wanted().allowances().forEach(note -> accept(note, here));
		}
		String reason = here.getOrDefault(finding.rule(), everywhere.get(finding.rule()));
		return reason == null || finding.accepted().isPresent() ? finding : finding.acceptedFor(reason);
	}
}
