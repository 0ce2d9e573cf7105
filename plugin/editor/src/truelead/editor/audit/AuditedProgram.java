package truelead.editor.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IAdaptable;
import truelead.audit.html.Verdict;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.ProgramThreads;

/**
 * A program in the audit view with its verdict, and its findings by rule. It holds no program text, so a folder of any size can be shown.
 *
 * @param tally what counts of this program alone
 */
record AuditedProgram(IFile file, Verdict verdict, List<OfRule> rules, Tally tally) {

	/** The findings of one rule in one program, and the worst severity among them comes first. */
	record OfRule(IFile file, String rule, List<AuditedFinding> findings) implements IAdaptable {

		OfRule {
			findings = List.copyOf(findings);
		}

		@Override
		public <T> T getAdapter(Class<T> kind) {
			return findings.get(0).getAdapter(kind);
		}

		/** Findings that nobody has accepted. */
		long open() {
			return findings.stream().filter(finding -> finding.accepted().isEmpty()).count();
		}
	}

	AuditedProgram {
		rules = List.copyOf(rules);
	}

	/** The worst severity of what nobody has accepted; empty where nothing is open. */
	Optional<Severity> worst() {
		return rules.stream().flatMap(rule -> rule.findings().stream()).filter(finding -> finding.accepted().isEmpty())
				.map(AuditedFinding::severity).min(Severity::compareTo);
	}

	/** What the view keeps of a program. */
	static AuditedProgram of(IFile file, Audited audited) {
		Map<String, List<AuditedFinding>> byRule = new LinkedHashMap<>();
		if (audited instanceof Audited.Checked checked) {
			ProgramThreads threads = new ProgramThreads(checked.result().work());
			checked.findings().stream().sorted(java.util.Comparator.comparing((Judged judged) -> judged.finding().severity()))
					.forEach(judged -> byRule.computeIfAbsent(judged.finding().rule(), any -> new ArrayList<>())
							.add(AuditedFinding.of(file, threads, judged)));
		}
		List<OfRule> rules = byRule.entrySet().stream().map(entry -> new OfRule(file, entry.getKey(), entry.getValue())).toList();
		Tally tally = new Tally(Severity.WARNING);
		tally.add(audited);
		return new AuditedProgram(file, Verdict.of(audited), rules, tally);
	}

	/**
	 * What a person looks at next when a finding of this program has been settled: the first open one from its place on, or the program
	 * where none is left.
	 *
	 * @param now this program as it is since then
	 */
	Object next(AuditedFinding settled, AuditedProgram now) {
		return now.findings().stream().skip(Math.max(0, findings().indexOf(settled))).filter(finding -> finding.accepted().isEmpty())
				.findFirst().map(Object.class::cast).orElse(now);
	}

	private List<AuditedFinding> findings() {
		return rules.stream().flatMap(rule -> rule.findings().stream()).toList();
	}
}
