package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import truelead.checker.rule.RulePage.Heading;
import truelead.checker.rulebook.Rules;

/** Every sample of every page is run: found where it says so and nothing else there, silent where it is right, silent after the fix. */
class PageSamplesTest {

	@TestFactory
	Stream<DynamicTest> findsWhatTheCaretsMark() {
		return samples(Heading.FOUND).map(sample -> DynamicTest.dynamicTest(sample.toString(), () -> {
			List<Finding> findings = SampleCheck.findings(sample, sample.program());
			assertThat(findings.stream().filter(f -> loud(f) || f.rule().equals(sample.page()))).as("found in\n" + sample.program())
					.extracting(f -> said(f, sample)).containsExactlyElementsOf(sample.expected().stream()
							.map(PageSamplesTest::said).toList());
			assertThat(findings).as("this rule speaks").anyMatch(f -> f.rule().equals(sample.page()));
		}));
	}

	@TestFactory
	Stream<DynamicTest> isSilentWhereItIsRight() {
		return samples(Heading.RIGHT).map(sample -> DynamicTest.dynamicTest(sample.toString(),
				() -> assertSilent(sample, sample.program())));
	}

	@TestFactory
	Stream<DynamicTest> isSilentAfterEachFix() {
		return samples(Heading.FOUND).map(sample -> DynamicTest.dynamicTest(sample.toString(), () -> {
			for (Finding finding : SampleCheck.findings(sample, sample.program())) {
				for (Fix fix : finding.fixes()) {
					if (finding.rule().equals(sample.page())) {
						assertSilent(sample, apply(sample.program(), fix));
					}
				}
			}
		}));
	}

	private static void assertSilent(PageSample sample, String program) {
		assertThat(SampleCheck.findings(sample, program).stream().filter(f -> loud(f) || f.rule().equals(sample.page())))
				.as("in\n" + program).extracting(f -> (f.at().line() + 1) + " " + f.severity() + " " + f.rule() + " "
						+ f.message()).isEmpty();
	}

	private static Stream<PageSample> samples(Heading heading) {
		return Rules.pages().stream().flatMap(page -> PageSample.of(page, heading).stream());
	}

	private static boolean loud(Finding finding) {
		return finding.severity() != Severity.INFORMATION;
	}

	private static String said(Finding f, PageSample sample) {
		// a finding that nobody expects is told with its message, to be copied
		boolean withMessage = sample.expected().stream().noneMatch(e -> e.rule().equals(f.rule()) && e.line() == f.at().line()
				&& e.message().isEmpty());
		return said(new PageSample.Expected(f.rule(), f.severity(), f.at().line(), f.at().span().start(), f.at().span().end(),
				withMessage ? f.message() : ""));
	}

	private static String said(PageSample.Expected e) {
		return "line " + (e.line() + 1) + ", columns " + (e.start() + 1) + " to " + e.end() + ": " + e.rule() + " "
				+ e.severity() + (e.message().isEmpty() ? "" : ": " + e.message());
	}

	private static String apply(String program, Fix fix) {
		List<Edit> edits = new ArrayList<>(fix.edits());
		edits.sort(Comparator.comparingInt((Edit e) -> e.at().offset()).reversed());
		StringBuilder text = new StringBuilder(program);
		edits.forEach(edit -> text.replace(edit.at().offset(), edit.at().offset() + edit.at().span().length(), edit.text()));
		return text.toString();
	}
}
