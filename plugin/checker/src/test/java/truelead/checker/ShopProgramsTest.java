package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.grammar.ProgramText;

/** Some two hundred good programs in the hands and languages of many shops and controls, and single slips of the keyboard put into them. */
class ShopProgramsTest {

	static Stream<String> programs() {
		return text("list.txt").lines();
	}

	@ParameterizedTest
	@MethodSource("programs")
	void onAGoodProgramNothingAboveInformation(String program) {
		assertThat(findings(program, text(program))).filteredOn(f -> f.severity() != Severity.INFORMATION).isEmpty();
	}

	@ParameterizedTest
	@CsvFileSource(resources = "programs/faults.csv", numLinesToSkip = 2, delimiter = ';')
	void aSlipIsNamedByTheRuleAndInTheBlock(String program, String from, String to, int which, String rules, String block) {
		String good = text(program);
		String old = from.replace("\\n", "\n");
		String written = to == null ? "" : to.replace("\\n", "\n");
		int at = good.indexOf(old);
		for (int i = 1; i < which; i++) {
			at = good.indexOf(old, at + 1);
		}
		assertThat(at).as("what is changed stands in %s", program).isNotNegative();
		String bad = which == 0 ? good.replace(old, written) : good.substring(0, at) + written + good.substring(at + old.length());
		long first = good.substring(0, at).lines().count() - (at > 0 && good.charAt(at - 1) != '\n' ? 1 : 0);
		List<String> lines = bad.lines().toList();
		Set<String> named = Set.of(rules.split("\\|"));
		assertThat(findings(program, bad)).filteredOn(f -> named.contains(f.rule())).anySatisfy(f -> {
			boolean here = f.at().line() >= first && f.at().line() < first + Math.max(1, written.lines().count());
			boolean there = block != null && Arrays.stream(block.split("\\|")).anyMatch(b -> lines.get(f.at().line()).contains(b));
			assertThat(here || there).as("at the slip or at %s, not at %s", block, lines.get(f.at().line())).isTrue();
		});
	}

	private static List<Finding> findings(String name, String text) {
		return Checker.check(new ProgramFile(name, ProgramText.of(text)), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(),
				RuleSettings.DEFAULT).findings();
	}

	private static String text(String name) {
		try (InputStream in = ShopProgramsTest.class.getResourceAsStream("programs/" + name)) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}
}
