package truelead.faults;

import java.util.List;

/** How the checker did on one trial. */
record Verdict(Trial trial, Outcome outcome, List<Said> extra, List<Said> said) {

	/** ELSEWHERE: the right rule at a block where the fault is not. */
	enum Outcome { SILENT, FOUND, ELSEWHERE, MISSED }

	static Verdict of(Trial trial, List<Said> said) {
		if (trial.fault().isEmpty()) {
			return new Verdict(trial, Outcome.SILENT, said.stream().filter(Said::loud).toList(), said);
		}
		Fault fault = trial.fault().get();
		List<Said> right = said.stream().filter(s -> fault.rules().contains(s.rule())).toList();
		Outcome outcome = right.stream().anyMatch(s -> trial.lines().contains(s.line())) ? Outcome.FOUND
			: right.isEmpty() ? Outcome.MISSED : Outcome.ELSEWHERE;
		List<Said> extra = said.stream().filter(Said::loud)
			.filter(s -> !fault.rules().contains(s.rule()) && !fault.companions().contains(s.rule())).toList();
		return new Verdict(trial, outcome, extra, said);
	}
}
