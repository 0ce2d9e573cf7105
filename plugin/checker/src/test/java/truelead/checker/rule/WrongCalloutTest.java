package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A comment that names another thread than drill and feed make: one finding, whose fix is in the comment. */
class WrongCalloutTest {

	private static String program(String drill, String callout, String feed) {
		return "G21 G90 G94 G17\nT2 M6 (DRILL " + drill + ")\nG54 G0 X10 Y10 S2500 M3\nG43 H2 Z10\nG81 Z-25 R3 F300\nG80\nT3 M6 (" + callout
				+ " TAP)\nG0 X10 Y10 S500 M3\nG43 H3 Z10\nG84 Z-18 R5 " + feed + "\nG80\nM30\n";
	}

	private static List<Finding> loud(String program) {
		return SampleCheck.of(program).stream().filter(f -> f.severity() != Severity.INFORMATION).toList();
	}

	@Test
	void feedAndDrillAgreeAgainstTheCallout() {
		assertThat(loud(program("6.8", "M8X1", "F625"))).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("feed-off-pitch");
			assertThat(finding.message()).endsWith("F500 and another drill, or mend the callout: feed and the drill of 6.8 mm "
					+ "make M8x1.25");
			assertThat(finding.fixes()).singleElement().satisfies(fix -> {
				assertThat(fix.safe()).isFalse();
				assertThat(fix.edits()).singleElement().satisfies(edit -> assertThat(edit.text()).isEqualTo("M8x1.25"));
			});
		});
		assertThat(loud(program("6.8", "M8x1.25", "F625"))).as("with the callout mended").isEmpty();
	}

	@Test
	void anotherToolIsCalledThanTheOneThatFeedDrillAndHBelongTo() {
		String program = program("5.0", "M6X1", "F500").replace("O1\n", "").replace("T3 M6 (M6X1 TAP)", "T4 M6 (M10X1.5 TAP)");

		assertThat(loud(program)).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("feed-off-pitch");
			assertThat(finding.message()).endsWith("; T3, as H3 says, or F750 and another drill, or mend the callout: feed and the drill "
					+ "of 5 mm make M6x1");
		});
	}

	@Test
	void feedAndDrillOfAnInchThreadUnderAMetricTap() {
		assertThat(loud(program("4.0386", "M8X1.25", "F396.875"))).singleElement().satisfies(finding -> assertThat(finding.message())
				.endsWith("make #10-32 UNF"));
	}

	@Test
	void aHoleOfAnotherThreadIsOneFinding() {
		assertThat(loud(program("4.0", "M8X1.25", "F625").replace("Z-25", "Z-17"))).as("no word of the depth").extracting(Finding::rule)
				.containsExactly("drill-too-small");
		assertThat(loud(program("8.5", "M8X1.25", "F625").replace("Z-25", "Z-17"))).singleElement()
				.satisfies(finding -> assertThat(finding.message()).contains(", 0 % of thread left;"));
	}

	@Test
	void aWrongFeedAloneIsAFeed() {
		assertThat(loud(program("6.8", "M8X1.25", "F500"))).singleElement().satisfies(finding -> assertThat(finding.fixes().get(0).title())
				.isEqualTo("Change F500 to F625"));
	}

	@Test
	void aDrillThatSuitsNeitherIsSaidToo() {
		assertThat(loud(program("6.0", "M8X1", "F625"))).extracting(Finding::rule).containsExactlyInAnyOrder("drill-too-small",
				"feed-off-pitch");
	}
}
