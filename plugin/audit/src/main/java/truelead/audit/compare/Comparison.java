package truelead.audit.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.sheet.Sheets;

/**
 * Two states of a program side by side.
 *
 * @param before     the old one
 * @param after      the new one
 * @param operations every operation that is new, gone or different; those that stayed the same are left out
 * @param same       number of operations that stayed the same
 * @param came       findings that the old one did not have
 * @param went       findings that the new one no longer has
 * @param stayed     number of findings in both
 */
record Comparison(Audited.Checked before, Audited.Checked after, List<OperationChange> operations, int same, List<Judged> came,
		List<Judged> went, int stayed) {

	static Comparison of(Audited.Checked before, Audited.Checked after) {
		List<OperationChange> all = OperationMatch.of(Sheets.all(before.result().work()), Sheets.all(after.result().work()));
		List<OperationChange> different = all.stream().filter(OperationChange::any).toList();
		Map<String, Integer> then = new HashMap<>();
		before.findings().forEach(judged -> then.merge(judged.fingerprint(), 1, Integer::sum));
		List<Judged> came = new ArrayList<>();
		for (Judged judged : after.findings()) {
			if (then.merge(judged.fingerprint(), -1, Integer::sum) < 0) {
				came.add(judged);
			}
		}
		Map<String, Integer> now = new HashMap<>();
		after.findings().forEach(judged -> now.merge(judged.fingerprint(), 1, Integer::sum));
		List<Judged> went = before.findings().stream().filter(judged -> now.merge(judged.fingerprint(), -1, Integer::sum) < 0).toList();
		return new Comparison(before, after, different, all.size() - different.size(), came, went, after.findings().size() - came.size());
	}

	/** Whether nothing that matters to a thread is different. */
	boolean nothing() {
		return operations.isEmpty() && came.isEmpty() && went.isEmpty();
	}
}
