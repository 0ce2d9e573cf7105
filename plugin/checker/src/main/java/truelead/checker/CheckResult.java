package truelead.checker;

import java.util.List;
import truelead.checker.rule.Finding;
import truelead.checker.work.Work;

/**
 * What a check gives.
 *
 * @param findings by place in the program, then severity, then rule name; accepted ones are among them
 * @param work     tools, holes and threading operations, for reports and views
 * @param blocks   lines with code in the program
 * @param operations threading operations found, threads that a lathe cuts by a single point among them
 * @param notFollowed findings of rule not-followed at warning or worse
 * @param assumptions what had to be assumed (unit, turning or milling, profile), one sentence each
 */
public record CheckResult(List<Finding> findings, Work work, int blocks, int operations, int notFollowed, List<String> assumptions) {

	public CheckResult {
		findings = findings instanceof MovedFindings ? findings : List.copyOf(findings);
		assumptions = List.copyOf(assumptions);
	}

	/** The same with these findings in other places or in another text, of a work that has as many blocks and operations. */
	CheckResult with(List<Finding> others, Work same) {
		return new CheckResult(others, same, blocks, operations, notFollowed, assumptions);
	}
}
