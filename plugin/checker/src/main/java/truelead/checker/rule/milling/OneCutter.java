package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Related;
import truelead.checker.work.Work;

/** Helices of several threads by one tool that are all wrong by the same: the cutter is another one than said, and one finding says it. */
final class OneCutter {

	/** Evidence of the cutter that the path would suit. */
	static final String SUITS = "cutter that the path suits";

	private record Cutter(int tool, String suits) {
	}

	private OneCutter() {
	}

	/** The findings, with those of several operations of one tool that one other cutter explains as the first of them. */
	static List<Finding> fold(Work work, List<Finding> sized) {
		Map<Cutter, List<Finding>> same = new LinkedHashMap<>();
		for (Finding finding : sized) {
			String suits = finding.evidence().stream().filter(number -> number.name().equals(SUITS)).map(Evidence::value)
					.findFirst().orElse("");
			same.computeIfAbsent(new Cutter(work.operationsOfProgram().get(finding.operation()).tool().index(), suits),
					any -> new ArrayList<>()).add(finding);
		}
		List<Finding> folded = new ArrayList<>();
		same.forEach((cutter, findings) -> {
			long operations = findings.stream().mapToInt(Finding::operation).distinct().count();
			folded.addAll(operations > 1 ? List.of(first(cutter, findings, operations)) : findings);
		});
		return folded;
	}

	private static Finding first(Cutter cutter, List<Finding> findings, long operations) {
		Set<Related> related = new LinkedHashSet<>(findings.get(0).related());
		findings.stream().skip(1).forEach(finding -> related.add(new Related(finding.at(), "off by the same")));
		return findings.get(0).forAll(findings.get(0).message() + ", or the cutter is another: " + cutter.suits() + " suits all "
				+ operations + " threads of this tool", related, List.of());
	}
}
