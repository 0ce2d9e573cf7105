package truelead.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a finding offers to type instead is right: the program with it has the finding no more, and no other above information. */
class RepairTest {

	/** One cause, one finding: what was silent behind the first finding may speak once that is mended. */
	private static final Map<String, String> NEXT = Map.of("tap-in-drilling-cycle", "rigid-mode-missing", "spindle-not-turning",
			"cycle-left-on", "plane-heights-wrong", "start-too-close");

	private record Mended(Trial faulty, Said finding, Repair repair) {
	}

	@Test
	void aRepairTakesItsFindingAwayAndBringsNoOther() {
		List<Trial> faulty = faulty(510_001, 140);
		Map<String, List<Said>> before = new Checker().check(faulty);
		Map<String, Mended> mended = new HashMap<>();
		List<Trial> repaired = new ArrayList<>();
		for (Trial trial : faulty) {
			for (Said finding : before.getOrDefault(trial.name(), List.of()).stream().filter(Said::loud).toList()) {
				for (Repair repair : finding.repairs()) {
					Trial with = new Trial(900_000 + repaired.size(), Optional.empty(), repair.of(trial.text()), List.of(),
							trial.machine());
					repaired.add(with);
					mended.put(with.name(), new Mended(trial, finding, repair));
				}
			}
		}
		Map<String, List<Said>> after = new Checker().check(repaired);
		assertThat(repaired).as("findings that offer a repair").hasSizeGreaterThan(30);
		assertThat(repaired).allSatisfy(trial -> {
			Mended one = mended.get(trial.name());
			Map<String, Long> was = loud(before.get(one.faulty().name()));
			Map<String, Long> now = loud(after.getOrDefault(trial.name(), List.of()));
			String rule = one.finding().rule();
			assertThat(now.getOrDefault(rule, 0L)).as("%s of seed %s after: %s", rule, one.faulty().seed(), one.repair().title())
					.isLessThan(was.get(rule));
			now.remove(NEXT.getOrDefault(rule, ""));
			assertThat(now).as("after %s of seed %s: %s", rule, one.faulty().seed(), one.repair().title()).allSatisfy((other, count) ->
				assertThat(count).as(other).isLessThanOrEqualTo(was.getOrDefault(other, 0L)));
		});
	}

	private static List<Trial> faulty(long first, int count) {
		List<Trial> trials = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			// each fault in its turn, and the next one that has a place where it has none
			for (int step = 0; step < Faults.ALL.size(); step++) {
				Optional<Trial> trial = Trial.bad(first + i, Faults.ALL.get((i + step) % Faults.ALL.size()));
				if (trial.isPresent()) {
					trials.add(trial.get());
					break;
				}
			}
		}
		return trials;
	}

	private static Map<String, Long> loud(List<Said> said) {
		Map<String, Long> counts = new HashMap<>();
		said.stream().filter(Said::loud).forEach(s -> counts.merge(s.rule(), 1L, Long::sum));
		return counts;
	}
}
