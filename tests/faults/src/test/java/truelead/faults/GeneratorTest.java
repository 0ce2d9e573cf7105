package truelead.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The generator itself: what it promises of its programs, without the checker. */
class GeneratorTest {

	@Test
	void theSameSeedMakesTheSameProgram() {
		assertThat(Trial.good(4711).text()).isEqualTo(Trial.good(4711).text());
	}

	@Test
	void everyFaultHasAPlaceSomewhere() {
		Set<String> put = new HashSet<>();
		for (long seed = 1; seed < 1500 && put.size() < Faults.ALL.size(); seed++) {
			for (Fault fault : Faults.ALL) {
				if (!put.contains(fault.name()) && Trial.bad(seed, fault).isPresent()) {
					put.add(fault.name());
				}
			}
		}
		assertThat(put).hasSize(Faults.ALL.size());
	}

	@Test
	void everyFaultHasABlockWhereItMayBeReported() {
		for (long seed = 1; seed < 60; seed++) {
			for (Fault fault : Faults.ALL) {
				Optional<Trial> trial = Trial.bad(seed, fault);
				trial.ifPresent(t -> assertThat(t.lines()).as(t.seed() + " " + fault.name()).isNotEmpty());
			}
		}
	}

	@Test
	void tapsAreFedByTheirPitch() {
		for (long seed = 1; seed < 300; seed++) {
			for (Op op : Planner.plan(seed).ops) {
				if (op instanceof Tapping tap) {
					assertThat(tap.advance).isEqualTo(tap.feature.size.pitch());
					assertThat(tap.plane).isGreaterThanOrEqualTo(2.9 * tap.feature.size.pitch());
				}
			}
		}
	}

	@Test
	void blindHolesAreDrilledDeeperThanTheyAreTapped() {
		for (long seed = 1; seed < 300; seed++) {
			for (Feature f : Planner.plan(seed).features) {
				if (!f.through) {
					double point = f.hole() * 0.30043;
					assertThat(f.drillTip - point - f.tip).as("seed " + seed).isGreaterThan(f.size.pitch());
				}
			}
		}
	}
}
