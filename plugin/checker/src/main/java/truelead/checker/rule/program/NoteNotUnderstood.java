package truelead.checker.rule.program;

import java.util.function.Consumer;
import java.util.function.Predicate;
import truelead.checker.job.Allowance;
import truelead.checker.job.Remark;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.work.Work;

/**
 * A comment that begins like a note and is not one, an acceptance without a reason or for no rule, a row of the tool list that cannot be
 * read.
 */
public final class NoteNotUnderstood implements Rule {

	private final Predicate<String> rule;

	/** @param rule tells whether a name is that of a rule */
	public NoteNotUnderstood(Predicate<String> rule) {
		this.rule = rule;
	}

	@Override
	public String name() {
		return "note-not-understood";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (Remark remark : work.trouble().notes()) {
			found.accept(Draft.of(this, Severity.WARNING, remark.at(), remark.message()).finding());
		}
		for (Remark remark : work.trouble().jobRemarks()) {
			found.accept(Draft.of(this, Severity.WARNING, remark.at(), remark.message()).finding());
		}
		for (Allowance allowance : work.trouble().allowances()) {
			if (!rule.test(allowance.rule())) {
				found.accept(Draft.of(this, Severity.WARNING, allowance.at(), "'" + allowance.rule()
						+ "' is the name of no rule: the note accepts nothing").finding());
			} else if (allowance.reason().isEmpty()) {
				found.accept(Draft.of(this, Severity.WARNING, allowance.at(),
						"no reason is given: the note accepts nothing; (ALLOW: " + allowance.rule() + ", WHY)").finding());
			}
		}
	}
}
