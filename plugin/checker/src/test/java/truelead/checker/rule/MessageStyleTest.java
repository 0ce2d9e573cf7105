package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.rule.RulePage.Heading;
import truelead.checker.rulebook.Rules;

/**
 * All messages read alike: a phrase in small letters, unless its first word is the program's own (F500, CYCLE84, M6x1), and without a full
 * stop.
 */
class MessageStyleTest {

	@TestFactory
	Stream<DynamicTest> everySampleOfEveryPage() {
		return Rules.pages().stream().flatMap(page -> Stream.of(Heading.FOUND, Heading.RIGHT)
				.flatMap(heading -> PageSample.of(page, heading).stream()))
				.map(sample -> DynamicTest.dynamicTest(sample.toString(),
						() -> assertPhrases(SampleCheck.findings(sample, sample.program()))));
	}

	@ParameterizedTest
	@ValueSource(strings = { "G84 Z--10 R2", "GO1 Z-60", "G1 X Y5", "X[#1+2 Y5", "/10 G0 X1", "F[] X1", "01000", "(G0 X1)9", "G0 X1 @ Y2",
			"X1,5 Y2", "M3 $1200", "G0 X1.5.2" })
	void whatCannotBeRead(String block) {
		PageSample plain = new PageSample("not-understood", 1, "", List.of(), Map.of());
		assertPhrases(SampleCheck.findings(plain, "G21 G90\nT3 M6 (M6X1 TAP)\n" + block + "\nM98 P77\nG84 X0 Y0 Z-12. R3. F500\nM30\n"));
	}

	private static void assertPhrases(List<Finding> findings) {
		assertThat(findings).extracting(Finding::message).allSatisfy(message -> {
			assertThat(phrase(message)).as("begins in small letters: " + message).isTrue();
			assertThat(message.endsWith(". ") || message.matches(".*[a-z]\\.")).as("ends without a full stop: " + message).isFalse();
		});
	}

	private static boolean phrase(String message) {
		String first = message.split("[ :,;(]", 2)[0];
		boolean ofTheProgram = first.length() > 1 && first.chars().noneMatch(Character::isLowerCase)
				|| first.chars().anyMatch(Character::isDigit);
		return ofTheProgram || first.isEmpty() || !Character.isUpperCase(first.charAt(0)) || first.length() == 1 && !first.equals("A");
	}
}
