package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import truelead.checker.hole.Hole;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.machine.HelixPrograms;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rulebook.Rules;
import truelead.grammar.ProgramText;

/**
 * Helices that come again at hole after hole are kept as numbers and judged by kinds; the work and the findings are those of each helix by
 * itself.
 */
class CopiedHelicesTest {

	@Test
	void threadsThatAreAlikeAreOfOneKindWhereverTheyAre() {
		Work work = work(program(HelixPrograms.of(new Random(5), 200)), true);
		MillPasses passes = work.threadMillings().get(0).passes();
		assertThat(passes.size()).isGreaterThanOrEqualTo(200);
		assertThat(passes.typical().size()).isLessThan(passes.size() / 3);
		assertThat(passes.outermost().size()).isLessThan(passes.size() / 2);
	}

	@Property(tries = 120)
	void passesHolesAndFindingsAreThoseOfEachHelix(@ForAll Random random) {
		ProgramFile program = program(HelixPrograms.of(random, 10 + random.nextInt(60)));
		Work together = work(program, true);
		Work single = work(program, false);
		assertThat(together.holes().size()).isEqualTo(single.holes().size());
		assertThat(together.threadMillings().size()).isEqualTo(single.threadMillings().size());
		for (int i = 0; i < single.threadMillings().size(); i++) {
			assertSame(together.threadMillings().get(i), single.threadMillings().get(i));
		}
		assertThat(List.copyOf(together.course().compensation())).isEqualTo(List.copyOf(single.course().compensation()));
		assertThat(Rules.check(together, RuleSettings.DEFAULT)).isEqualTo(Rules.check(single, RuleSettings.DEFAULT));
	}

	private static void assertSame(ThreadMilling one, ThreadMilling other) {
		assertThat(one.wanted()).isEqualTo(other.wanted());
		assertThat(one.lastOrder()).isEqualTo(other.lastOrder());
		assertSame(one.passes(), other.passes());
		assertSame(one.firstPasses(), other.firstPasses());
		assertSame(one.allFinishing(), other.allFinishing());
		assertThat(one.cutAtOnce().size()).isEqualTo(other.cutAtOnce().size());
	}

	/** A hole that nobody drilled is where the middle of the helix is, which two ways of adding up tell to the last digit but one. */
	private static void assertSame(MillPasses passes, MillPasses others) {
		assertThat(passes.size()).isEqualTo(others.size());
		for (int i = 0; i < passes.size(); i++) {
			MillPass pass = passes.get(i);
			MillPass other = others.get(i);
			assertThat(pass.hole().cuts()).isEqualTo(other.hole().cuts());
			assertThat(pass.place().distance(other.place())).isCloseTo(0, within(1e-9));
			assertThat(at(pass, other.hole())).isEqualTo(other);
		}
	}

	private static MillPass at(MillPass pass, Hole hole) {
		return new MillPass(pass.order(), pass.tool(), pass.rapidIn(), pass.entry(), pass.helix(), pass.exit(), hole, pass.external(),
				pass.turns());
	}

	private static ProgramFile program(List<String> lines) {
		return new ProgramFile("A.NC", ProgramText.of(String.join("\n", lines)));
	}

	private static Work work(ProgramFile program, boolean together) {
		MachineProfile profile = MachineProfile.generic();
		return WorkReader.read(program, ProgramFolder.EMPTY, Job.EMPTY, profile, Budget.of(profile), together);
	}
}
